// choices.js: what the reader has to decide: whether code from elsewhere may run, and with which of two states of the notebook to go on.
import { button, element } from "./dom.js";
import { ask } from "./messages.js";
import { words } from "./words.js";

export function createChoices(document, place, say) {
  const bar = (text, ...buttons) => element(document, "div.choice", { role: "group", "aria-label": "A choice" }, element(document, "p", {}, text), element(document, "div", {}, ...buttons));

  function between({ words: text, isShown, showOther, showOwn, take, leave }) {
    const look = (label, other) => button(document, label, () => say(ask.showState, { other }), { "aria-pressed": String(isShown === other) });
    return bar(text, look(showOwn, false), look(showOther, true),
      button(document, leave, () => say(ask.leaveState)), button(document, take, () => say(ask.takeState), { class: isShown ? "main" : null }));
  }

  return {
    render({ mayRun, offer }) {
      const isElsewhere = Boolean(offer?.isShown);
      document.body.classList.toggle("shown-only", !mayRun || isElsewhere);
      document.body.classList.toggle("elsewhere", isElsewhere);
      place.replaceChildren(...[
        offer ? between(offer) : null,
        mayRun || isElsewhere ? null : bar(words.fromElsewhere, button(document, words.letRun, () => say(ask.letCodeRun), { class: "main" })),
      ].filter(Boolean));
      place.hidden = place.children.length === 0;
    },
  };
}
