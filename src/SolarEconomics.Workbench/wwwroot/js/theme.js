// theme.js: the look's tokens as the charts need them.

/** The light look, in which figures are made; css/tokens.css holds the same values and a test compares them. */
export const lightTokens = Object.freeze({
  paper: "#fbf8f1", card: "#fffdf8", ink: "#1d2326", soft: "#5b6468", line: "#e4ddcd",
  used: "#0a8fb5", exported: "#cf7808", stored: "#3a2aa0", paid: "#6b1420", lost: "#978a6d",
});

/** Colours of the current look, and the map from the light one. */
export function coloursOf(window) {
  const style = window.getComputedStyle(window.document.documentElement);
  const now = Object.fromEntries(Object.keys(lightTokens).map((token) => [token, style.getPropertyValue(`--${token}`).trim()]));
  return { ...now, map: Object.fromEntries(Object.entries(lightTokens).map(([token, colour]) => [colour, now[token]])) };
}

/** Calls back when the reader's light or dark setting changes. */
export function onThemeChange(window, changed) {
  window.matchMedia("(prefers-color-scheme: dark)").addEventListener("change", changed);
}
