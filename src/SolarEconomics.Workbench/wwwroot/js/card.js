// card.js: one question on one card: heading with its state, prose, then each step's answer.
import { element, put } from "./dom.js";
import { stateWorthSaying } from "./words.js";

export function createCard(document) {
  return function card(id) {
    const name = element(document, "span");
    const mark = element(document, "em.mark", { hidden: true });
    const heading = element(document, "h2", {}, name);
    const header = element(document, "header", {}, heading, mark);
    const root = element(document, "section", { id: `q-${id}` }, header);
    return {
      root,
      /** @param {{heading: string, state: string|null, parts: Array}} group @param {Array<Element>} contents in reading order */
      update(group, contents) {
        // Only what differs is touched: with three hundred steps, typing in one would otherwise be felt.
        const said = stateWorthSaying(group.state);
        put(root, "className", group.parts.length === 0 ? "intro" : "step");
        put(header, "hidden", !group.heading || group.isTitle);
        put(name, "textContent", group.heading);
        put(mark, "textContent", said);
        put(mark, "hidden", said === "");
        put(mark, "className", `mark ${group.state}`);
        // Elements that already stand in the right order are left alone: moving one would take the focus away.
        const now = [...root.children].slice(1);
        if (now.length !== contents.length || now.some((child, at) => child !== contents[at])) root.replaceChildren(header, ...contents);
      },
    };
  };
}
