// means.js: what the browser can do with an answer: copy it, keep it as a file, show it on the whole screen.
import { button, element } from "./dom.js";
import { words } from "./words.js";

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
    /** A button that shows an element on the whole screen, and ends it again; so does Escape, as the browser says itself. */
    wholeScreen(place) {
      const isWhole = () => document.fullscreenElement === place();
      const toggle = button(document, words.wholeScreen, () => {
        if (isWhole()) return document.exitFullscreen();
        place().onfullscreenchange = () => { toggle.textContent = isWhole() ? words.backToPage : words.wholeScreen; };
        return place().requestFullscreen();
      }, { class: "plain" });
      return toggle;
    },
  };
}
