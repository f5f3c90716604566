// tools.js: what can be done with a step as a whole.
import { button, element } from "./dom.js";
import { ask } from "./messages.js";

export const createTools = (document, say) => (step, kind) => element(document, "span.tools", {},
  button(document, "Add a step below", () => say(ask.addStep, { after: step, kind: "code" }), { class: "plain" }),
  button(document, "Add text below", () => say(ask.addStep, { after: step, kind: "text" }), { class: "plain" }),
  button(document, "Move up", () => say(ask.moveStep, { step, by: -1 }), { class: "plain" }),
  button(document, "Move down", () => say(ask.moveStep, { step, by: 1 }), { class: "plain" }),
  button(document, kind === "code" ? "Delete this step" : "Delete this text", () => say(ask.deleteStep, { step }), { class: "plain" }));
