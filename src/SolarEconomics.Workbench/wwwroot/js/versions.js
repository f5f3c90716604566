// versions.js: the earlier versions of a notebook, listed in the session's menu when asked for.
import { button, element } from "./dom.js";
import { ask } from "./messages.js";
import { words } from "./words.js";

export function createVersions(document, say) {
  const list = element(document, "div.versions", { hidden: true });
  const open = button(document, words.versions, (event) => {
    // The menu closes on a choice; asking for the list is none.
    event.stopPropagation();
    if (list.hidden) say(ask.askVersions); else list.hidden = true;
  });
  return {
    parts: [open, list],
    render(versions) {
      list.hidden = false;
      list.replaceChildren(...versions.map(({ name, words: when }) => button(document, when, () => say(ask.lookAtVersion, { name }))));
      if (versions.length === 0) list.append(element(document, "p", {}, words.noVersions));
    },
  };
}
