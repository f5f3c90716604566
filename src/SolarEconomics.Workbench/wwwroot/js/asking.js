// asking.js: the line of text that a step waits for, given where the step stands.
import { element } from "./dom.js";
import { ask } from "./messages.js";
import { words } from "./words.js";

export function createAsking(document, say) {
  return function asking(step) {
    const label = element(document, "label", { for: `asks-${step}` });
    const field = element(document, "input", { id: `asks-${step}`, autocomplete: "off" });
    const root = element(document, "form.asking", { hidden: true, onsubmit: give }, label, field, element(document, "button", { type: "submit", class: "main" }, words.giveInput));
    let asked = null;

    function give(event) {
      event.preventDefault();
      if (asked && say(ask.giveInput, { step, input: asked.input, text: field.value })) field.value = "";
    }

    return {
      root,
      update(asks) {
        if (asks?.input === asked?.input) return;
        asked = asks;
        root.hidden = !asks;
        if (!asks) return;
        label.textContent = asks.prompt || words.asksForInput;
        field.type = asks.isSecret ? "password" : "text";
        field.focus();
      },
    };
  };
}
