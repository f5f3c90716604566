// notebook.js: keeps the cards in step with the notebook; what did not change is not drawn again.
import { groupByQuestion } from "./groups.js";
import { renderQuestions } from "./questions.js";

export function createNotebook(document, { main, outline, part, prose, card, frame, empty }) {
  const parts = new Map();
  const cards = new Map();
  let telling = null;

  function partOf(step, named) {
    let made = parts.get(step.id);
    if (!made || made.kind !== step.kind) {
      made?.view.destroy();
      made = { kind: step.kind, view: step.kind === "code" ? part(step) : prose(step) };
      parts.set(step.id, made);
    }
    Object.assign(made, { named, heading: step.heading, state: step.state });
    made.view.update(step, { named });
    return made.view.root;
  }

  function cardOf(id) {
    if (!cards.has(id)) cards.set(id, card(id));
    return cards.get(id);
  }

  function forget(known, wanted, drop) {
    for (const [id, one] of known) if (!wanted.has(id)) { drop(one); known.delete(id); }
  }

  return {
    /** Draws everything that differs from what is shown. */
    render(steps) {
      const groups = groupByQuestion(steps).map((group, at) => ({ ...group, isTitle: at === 0 && group.text !== null }));
      forget(parts, new Set(steps.map((step) => step.id)), ({ view }) => { view.destroy(); view.root.remove(); });
      forget(cards, new Set(groups.map((group) => group.id)), ({ root }) => root.remove());
      const roots = groups.map((group) => {
        const inner = [...(group.text ? [group.text] : []), ...group.parts];
        // The first step answers under the question's own heading; those after it need a name.
        const first = group.parts.find((one) => one.kind === "code");
        const one = cardOf(group.id);
        one.update(group, inner.map((step) => partOf(step, step !== first || !group.heading)));
        return one.root;
      });
      // A notebook without a step has none to add another one below.
      if (steps.length === 0) roots.push(empty);
      const now = [...main.children].filter((child) => child !== frame());
      if (now.length !== roots.length || now.some((child, at) => child !== roots[at])) {
        now.filter((child) => !roots.includes(child)).forEach((child) => child.remove());
        roots.forEach((root, at) => { if (main.children[at] !== root) main.insertBefore(root, main.children[at] ?? null); });
      }
      renderQuestions(document, outline, groups.filter((group) => !group.isTitle || group.parts.length > 0));
    },
    /** Draws one step that changed; the questions around it only where they show another heading or state. */
    change(step, steps) {
      const made = parts.get(step?.id);
      if (made?.kind === step?.kind && made?.heading === step?.heading && made?.state === step?.state) made?.view.update(step, { named: made.named });
      else this.render(steps);
    },
    /** Tells how far the step at work is, where that step stands. */
    progress(work) {
      if (telling !== work.step) parts.get(telling)?.view.progress?.(null);
      telling = work.step;
      parts.get(telling)?.view.progress?.(work);
    },
  };
}
