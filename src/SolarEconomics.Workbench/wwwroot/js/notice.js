// notice.js: one line under the bar for what the reader must know now.
import { button } from "./dom.js";

export function createNotice(document, place) {
  const clear = () => { place.hidden = true; place.replaceChildren(); };
  return {
    clear,
    show(text) {
      place.replaceChildren(text, button(document, "Close", clear));
      place.hidden = false;
    },
  };
}
