// part.js: one code step: its answer, and its working beneath.
import { button, element } from "./dom.js";
import { ask, extent } from "./messages.js";
import { counted, duration, stateWorthSaying, words } from "./words.js";
import { createProgress } from "./progress.js";

export function createPart(document, { answers, asking, edits, tools, say, complete, nonce, editorModule }) {
  return function part(step) {
    const name = element(document, "h3", { hidden: true });
    const place = element(document, "div.answers");
    const first = element(document, "div.answers");
    const preview = element(document, "div.preview", { hidden: true, role: "status" }, element(document, "p.mark", {}, words.preview), first);
    const asks = asking(step.id);
    const hidden = element(document, "p.quiet.hint", { hidden: true });
    const nothing = element(document, "p.quiet", { hidden: true }, words.nothingToShow);
    const about = element(document, "span");
    const code = element(document, "div.code");
    const workOut = (what) => say(ask.workOut, { extent: what, step: step.id });
    const isBusy = () => current.state === "working" || current.state === "waiting";
    // Working out and stopping are one control, here as in the bar.
    const one = button(document, words.workOutStep, () => isBusy() ? say(ask.stop) : workOut(extent.step), { class: "works", "aria-keyshortcuts": "Control+Enter Meta+Enter" });
    const toHere = button(document, words.workOutToHere, () => workOut(extent.toHere), { class: "works" });
    const progress = createProgress(document);
    const buttons = element(document, "div.tools", {}, one, toHere,
      element(document, "span.gap"), ...tools({ id: step.id, kind: "code", caret: () => editor?.caret ?? 0, answers: () => current.answers }));
    const working = element(document, "details.beneath", { ontoggle: opened }, element(document, "summary", {}, "Working", about), code, buttons);
    const root = element(document, "div.part", { "data-step": step.id }, name, preview, place, hidden, progress.root, asks.root, nothing, working);
    let current = step, drawn = null, drawnFirst = "[]", drawnNamed = null, editor = null, isMaking = false, isGone = false;

    async function opened() {
      if (!working.open || isMaking || editor) return;
      isMaking = true;
      let createEditor;
      try {
        ({ createEditor } = await editorModule());
      } catch (failure) {
        code.replaceChildren(element(document, "p.quiet", {}, `${words.noEditor} ${failure.message}`));
        return;
      } finally {
        isMaking = false;
      }
      if (isGone) return;
      code.replaceChildren();
      editor = createEditor({
        parent: code, text: current.text, nonce,
        changed: (text) => edits.typed(step.id, text),
        workOut: () => workOut(extent.step),
        save: () => say(ask.save),
        complete: (text, position) => complete(step.id, text, position),
      });
      if (current.text === "") editor.focus();
    }

    function update(next, { named }) {
      // A step that did not change is the same object: at 60 charts, comparing their figures each time would be felt.
      if (next === current && named === drawnNamed) return;
      current = next;
      drawnNamed = named;
      root.dataset.state = next.state;
      root.classList.toggle("old", next.state === "old" || next.state === "perhaps");
      name.hidden = !named || !next.heading;
      name.textContent = next.heading;
      about.textContent = [counted(next.lines, "line"), duration(next.seconds), stateWorthSaying(next.state)].filter(Boolean).join(" · ");
      one.textContent = isBusy() ? words.stop : words.workOutStep;
      one.title = isBusy() ? "" : words.workOutKey;
      toHere.hidden = isBusy();
      hidden.hidden = !next.hidden;
      hidden.textContent = next.hidden;
      asks.update(next.asks);
      nothing.hidden = next.answers.length > 0 || next.state !== "done";
      // A first answer stands in the old one's place until the full one is there.
      const early = JSON.stringify(next.preview);
      if (early !== drawnFirst) {
        drawnFirst = early;
        answers.render(first, next.preview);
      }
      preview.hidden = next.preview.length === 0;
      place.hidden = !preview.hidden;
      const fresh = JSON.stringify(next.answers);
      if (fresh !== drawn) {
        drawn = fresh;
        answers.render(place, next.answers);
      }
      if (editor && !edits.holds(next.id) && editor.text !== next.text && !working.contains(document.activeElement)) editor.replace(next.text);
    }

    update(step, { named: false });
    if (step.text === "") working.open = true;
    return { root, update, progress: progress.update, destroy: () => { isGone = true; answers.render(place, []); answers.render(first, []); editor?.destroy(); } };
  };
}
