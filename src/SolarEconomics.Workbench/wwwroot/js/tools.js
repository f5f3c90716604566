// tools.js: what can be done with a step as a whole.
import { button, element } from "./dom.js";
import { ask } from "./messages.js";

/**
 * The controls of one step: two that are wanted often, the others when asked for, on a line of their own beneath.
 * @param {{id: string, kind: string, caret: () => number, answers?: () => Array<object>}} step
 * @returns {Array<Element>}
 */
export const createTools = (document, say, means) => ({ id, kind, caret, answers }) => {
  const isCode = kind === "code";
  const plain = (label, act, attributes = {}) => button(document, label, act, { class: "plain", ...attributes });
  const further = element(document, "div.tools.further", { hidden: true },
    plain("Move up", () => say(ask.moveStep, { step: id, by: -1 })),
    plain("Move down", () => say(ask.moveStep, { step: id, by: 1 })),
    plain("Split where the cursor is", () => say(ask.splitStep, { step: id, position: caret() })),
    plain("Join with the one below", () => say(ask.joinStep, { step: id })),
    plain(isCode ? "Turn into text" : "Turn into code", () => say(ask.changeKind, { step: id })),
    isCode ? plain("Keep the answers as data", () => means.download(`${id}.json`, JSON.stringify(answers(), null, 2), "application/json")) : null,
    plain("Copy", () => say(ask.copyStep, { step: id })),
    plain("Put the copied one below", () => say(ask.putStep, { after: id })),
    plain(isCode ? "Delete this step" : "Delete this text", () => say(ask.deleteStep, { step: id })));
  const more = plain(isCode ? "More for this step" : "More for this text", () => {
    further.hidden = !further.hidden;
    more.setAttribute("aria-expanded", String(!further.hidden));
  }, { "aria-expanded": "false" });
  return [
    plain("Add a step below", () => say(ask.addStep, { after: id, kind: "code" })),
    plain("Add text below", () => say(ask.addStep, { after: id, kind: "text" })),
    more, further,
  ];
};
