// empty.js: what stands where a notebook has no step yet: the two ways to begin.
import { button, element } from "./dom.js";
import { ask } from "./messages.js";
import { words } from "./words.js";

export const nothingYet = (document, say) => element(document, "section.step", {}, element(document, "p", {}, words.noSteps), element(document, "div.tools", {},
  button(document, words.beginWithCode, () => say(ask.addStep, { kind: "code" })),
  button(document, words.beginWithText, () => say(ask.addStep, { kind: "text" }))));
