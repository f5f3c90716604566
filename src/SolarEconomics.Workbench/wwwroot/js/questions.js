// questions.js: draws the list of questions at the side. Reads what it is given, sends nothing.
import { element } from "./dom.js";
import { stateWords } from "./words.js";

export function renderQuestions(document, place, groups) {
  const shown = JSON.stringify(groups.map(({ id, heading, state }) => [id, heading, state]));
  if (place.dataset.shown === shown) return;
  place.dataset.shown = shown;
  const list = element(document, "ol", {}, ...groups.filter((group) => group.heading).map((group) =>
    element(document, "li", { class: group.state ?? "prose-only" },
      element(document, "a", { href: `#q-${group.id}` }, group.heading),
      group.state ? element(document, "i", {}, stateWords[group.state]) : null)));
  const before = place.querySelector("ol");
  if (before) before.replaceWith(list); else place.append(list);
  place.hidden = groups.length === 0;
}
