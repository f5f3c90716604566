// acts.js: the controls in the bar: work out (it becomes stop while working), session, presenting.
import { button, element } from "./dom.js";
import { ask, extent } from "./messages.js";
import { pending } from "./groups.js";
import { words } from "./words.js";

export function createActs(document, place, { say, present }) {
  const label = document.createTextNode(words.workOut);
  const detail = element(document, "small");
  let busy = false, what = extent.everything;
  const main = button(document, "", () => busy ? say(ask.stop) : say(ask.workOut, { extent: what }), { class: "main", id: "work" });
  main.append(label, detail);
  const session = element(document, "p", { role: "status" });
  const undo = button(document, "Undo", () => say(ask.undo));
  const redo = button(document, "Redo", () => say(ask.redo));
  const again = button(document, words.again, () => say(ask.workOut, { extent: extent.everything }));
  const menu = element(document, "details.menu", {}, element(document, "summary", {}, "Session"), element(document, "div", {},
    session, again,
    button(document, words.startAfresh, () => say(ask.startAfresh)), element(document, "p", {}, words.startAfreshAbout),
    button(document, "Save now", () => say(ask.save)), undo, redo,
    element(document, "p", {}, words.rights)));
  document.addEventListener("click", (event) => { if (!menu.contains(event.target) || event.target.tagName === "BUTTON") menu.open = false; });
  menu.addEventListener("keydown", (event) => {
    if (event.key !== "Escape") return;
    menu.open = false;
    menu.querySelector("summary").focus();
  });
  place.append(main, menu, button(document, "Present", present, { id: "present", "aria-pressed": "false" }));

  return {
    render({ steps, work, session: state }) {
      const { old, all } = pending(steps);
      place.hidden = false;
      busy = work.busy;
      what = old > 0 ? extent.outOfDate : extent.everything;
      label.data = busy ? words.stop : words.workOut;
      detail.textContent = busy ? `step ${work.position} of ${work.count}` : what === extent.outOfDate ? `${old} out of date` : words.everything;
      main.disabled = all === 0;
      again.disabled = busy || all === 0;
      session.textContent = state.words;
      undo.disabled = !work.canUndo;
      redo.disabled = !work.canRedo;
    },
  };
}
