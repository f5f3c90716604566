// acts.js: the controls in the bar: work out (it becomes stop while working), session, presenting.
import { button, element } from "./dom.js";
import { ask, extent } from "./messages.js";
import { pending } from "./groups.js";
import { memory, soFar, words } from "./words.js";

/** A menu that closes on a choice, on Escape, and when something else is clicked. */
function createMenu(document, label, ...parts) {
  const menu = element(document, "details.menu", {}, element(document, "summary", {}, label), element(document, "div", {}, ...parts));
  document.addEventListener("click", (event) => { if (!menu.contains(event.target) || event.target.closest("button, a")) menu.open = false; });
  menu.addEventListener("keydown", (event) => {
    if (event.key !== "Escape") return;
    menu.open = false;
    menu.querySelector("summary").focus();
  });
  return menu;
}

/** Control (or Command) with Z takes a change of steps back, with Shift it comes again; in a field these keys belong to the field. */
function listenForUndo(document, undo, redo) {
  document.addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || event.key.toLowerCase() !== "z" || event.target.closest("input, textarea, .cm-editor, .presenting")) return;
    event.preventDefault();
    (event.shiftKey ? redo : undo).click();
  });
}

export function createActs(document, place, { say, present, versions, addressOf }) {
  const label = document.createTextNode(words.workOut);
  const detail = element(document, "small");
  let busy = false, leavesOut = false, what = extent.everything;
  const main = button(document, "", () => busy ? say(ask.stop) : say(ask.workOut, { extent: what }), { class: "main", id: "work" });
  main.append(label, detail);
  const session = element(document, "p", { role: "status" });
  const meter = element(document, "meter", { min: 0, "aria-label": "Memory of the session" });
  const used = element(document, "p", { hidden: true }, element(document, "span"), meter);
  const undo = button(document, "Undo", () => say(ask.undo), { "aria-keyshortcuts": "Control+Z Meta+Z", title: words.undoKey });
  const redo = button(document, "Redo", () => say(ask.redo), { "aria-keyshortcuts": "Control+Shift+Z Meta+Shift+Z", title: words.redoKey });
  listenForUndo(document, undo, redo);
  const answers = button(document, words.answersOut, () => say(ask.saveAnswers, { wanted: leavesOut }));
  const startAfresh = button(document, words.startAfresh, () => say(ask.startAfresh));
  const again = button(document, words.again, () => say(ask.workOut, { extent: extent.everything }));
  // A file that the browser saves where its reader likes: also when the notebook's own folder takes nothing.
  const menu = (title, ...parts) => createMenu(document, title, ...parts);
  const keep = (what, label) => element(document, "a.act", { href: addressOf(what), download: "" }, label);
  const menus = [menu("Session", session, used, again,
    startAfresh, element(document, "p", {}, words.startAfreshAbout), element(document, "p", {}, words.rights)),
  menu("Notebook", undo, redo, button(document, "Save now", () => say(ask.save)), answers, ...versions, keep("copy", words.keepCopy), keep("report", words.report))];
  place.append(main, ...menus, button(document, "Present", present, { id: "present", "aria-pressed": "false" }));

  return {
    render({ steps, work, session: state, mayRun, leavesAnswersOut, offer }) {
      const { old, all } = pending(steps);
      place.hidden = false;
      busy = work.busy;
      what = old > 0 ? extent.outOfDate : extent.everything;
      label.data = busy ? words.stop : words.workOut;
      detail.textContent = busy ? [`step ${work.position} of ${work.count}`, soFar(work.count === 1 ? work.share : null, work.secondsLeft)].filter(Boolean).join(", ") : what === extent.outOfDate ? `${old} out of date` : words.everything;
      const cannot = all === 0 || !mayRun || Boolean(offer?.isShown);
      main.disabled = cannot && !busy;
      again.disabled = startAfresh.disabled = busy || cannot;
      session.textContent = state.words;
      used.hidden = !state.usedBytes;
      used.firstChild.textContent = `It holds ${memory(state.usedBytes)}${state.limitBytes ? ` of at most ${memory(state.limitBytes)}` : ""}.`;
      Object.assign(meter, { max: state.limitBytes || state.usedBytes, value: state.usedBytes });
      meter.hidden = !state.limitBytes;
      undo.disabled = !work.canUndo;
      redo.disabled = !work.canRedo;
      leavesOut = leavesAnswersOut;
      answers.firstChild.data = leavesOut ? words.answersIn : words.answersOut;
    },
  };
}
