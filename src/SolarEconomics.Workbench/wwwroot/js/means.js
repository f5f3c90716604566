// means.js: what the browser can do with an answer: copy it, keep it as a file, show it on the whole screen.
import { element } from "./dom.js";

export function createMeans(window) {
  const { document } = window;
  return {
    later: (act, ms) => window.setTimeout(act, ms),
    copy: (text) => window.navigator.clipboard.writeText(text),
    download(name, content, kind) {
      const address = window.URL.createObjectURL(new window.Blob([content], { type: kind }));
      element(document, "a", { href: address, download: name }).click();
      window.setTimeout(() => window.URL.revokeObjectURL(address), 10000);
    },
    /** Shows an element on the whole screen; Escape ends it, as the browser says itself. */
    wholeScreen: (place) => place.requestFullscreen(),
  };
}
