// tools.js: what can be done with a step as a whole.
import { button, element } from "./dom.js";
import { ask } from "./messages.js";

/** @param {{id: string, kind: string, caret: () => number, answers?: () => Array<object>}} step */
export const createTools = (document, say, means) => ({ id, kind, caret, answers }) => {
  const isCode = kind === "code";
  const plain = (label, act) => button(document, label, act, { class: "plain" });
  return element(document, "span.tools", {},
    plain("Add a step below", () => say(ask.addStep, { after: id, kind: "code" })),
    plain("Add text below", () => say(ask.addStep, { after: id, kind: "text" })),
    element(document, "details.further", {}, element(document, "summary", {}, isCode ? "More for this step" : "More for this text"), element(document, "span.tools", {},
      plain("Move up", () => say(ask.moveStep, { step: id, by: -1 })),
      plain("Move down", () => say(ask.moveStep, { step: id, by: 1 })),
      plain("Split where the cursor is", () => say(ask.splitStep, { step: id, position: caret() })),
      plain("Join with the one below", () => say(ask.joinStep, { step: id })),
      plain(isCode ? "Turn into text" : "Turn into code", () => say(ask.changeKind, { step: id })),
      isCode ? plain("Keep the answers as data", () => means.download(`${id}.json`, JSON.stringify(answers(), null, 2), "application/json")) : null,
      plain("Copy", () => say(ask.copyStep, { step: id })),
      plain("Put the copied one below", () => say(ask.putStep, { after: id })),
      plain(isCode ? "Delete this step" : "Delete this text", () => say(ask.deleteStep, { step: id })))));
};
