// shelf.js: offers the notebooks by the question that each answers.
import { element } from "./dom.js";
import { words } from "./words.js";

export async function renderShelf(document, place, fetch) {
  const entries = await (await fetch("notebooks.json")).json();
  const items = entries.map((entry) => element(document, "li", {},
    element(document, "a", { href: `?notebook=${encodeURIComponent(entry.name)}` },
      element(document, "b", {}, entry.question),
      entry.about ? element(document, "span", {}, entry.about) : null,
      element(document, "small", {}, entry.problem || entry.name))));
  place.replaceChildren(element(document, "section.shelf", {},
    element(document, "h2", {}, "What would you like to know?"),
    items.length > 0 ? element(document, "ol", {}, ...items) : element(document, "p", {}, words.noShelf)));
}
