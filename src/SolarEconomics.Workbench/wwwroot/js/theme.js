// theme.js: the reader's light or dark look, as charts need it.

const dark = "(prefers-color-scheme: dark)";

/** The look, and the two of its colours that a chart takes from the page. */
export function lookOf(window) {
  const style = window.getComputedStyle(window.document.documentElement);
  const token = (name) => style.getPropertyValue(`--${name}`).trim();
  return { look: window.matchMedia(dark).matches ? "dark" : "light", ink: token("ink"), paper: token("card") };
}

/** Calls back when the reader's setting changes. */
export const onLookChange = (window, changed) => window.matchMedia(dark).addEventListener("change", changed);
