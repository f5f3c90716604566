// main.js: wires the modules together and does nothing else.
import { renderShelf } from "./shelf.js";
import { openPage } from "./page.js";

const notebook = new URLSearchParams(window.location.search).get("notebook");
if (notebook === null) {
  await renderShelf(document, document.getElementById("answers"), (name) => window.fetch(name));
} else {
  openPage(window, notebook);
}
