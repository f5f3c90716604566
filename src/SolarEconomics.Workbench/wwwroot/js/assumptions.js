// assumptions.js: the declared assumptions as sliders and fields, with unit and range. Changing one asks the host; it is worked out at once only where the reader wants it.
import { element } from "./dom.js";
import { ask, extent } from "./messages.js";
import { pending } from "./groups.js";
import { words } from "./words.js";
import { shown, typed } from "./numbers.js";

/** A slider that moves is asked for its value this often, so that hand and answer keep together. */
const moveMs = 150;

export function createAssumptions(document, place, say, later) {
  const rows = new Map();
  const list = element(document, "div.list");
  const atOnce = element(document, "input", { type: "checkbox", id: "at-once" });
  let isDue = false;
  place.append(list, element(document, "p.once", {}, atOnce, element(document, "label", { for: "at-once" }, words.atOnce)), element(document, "p.note", {}, words.assumptionsAbout));

  function row(one) {
    let current = one, isMoving = false;
    const key = `a-${one.name}`;
    const wrong = element(document, "p.wrong", { id: `${key}-wrong`, role: "alert", hidden: true });
    const field = element(document, "input", { type: "text", inputmode: "decimal", id: key, "aria-describedby": `${key}-wrong`, onchange: () => take(typed(field.value, current)) });
    const slider = element(document, "input", { type: "range", "aria-label": one.label, oninput: moved, onchange: () => take({ value: Number(slider.value) }) });
    const ends = element(document, "span.ends", { "aria-hidden": "true" });
    const root = element(document, "div.one", {}, element(document, "div.row", {},
      element(document, "label", { for: key }, one.label), element(document, "span.value", {}, field, ` ${one.unit}`)), slider, ends, wrong);

    /** While the slider moves the answer follows, where the reader wants it at once; elsewhere it waits for the end of the move. */
    function moved() {
      field.value = shown(Number(slider.value), current);
      if (isMoving || !atOnce.checked) return;
      isMoving = true;
      later(() => { isMoving = false; take({ value: Number(slider.value) }); }, moveMs);
    }

    function take({ value, problem }) {
      wrong.hidden = !problem;
      wrong.textContent = problem ?? "";
      field.setAttribute("aria-invalid", String(Boolean(problem)));
      if (problem === undefined && value !== current.value) isDue = say(ask.setAssumption, { name: current.name, value });
    }

    function update(next) {
      current = next;
      Object.assign(slider, { min: next.from, max: next.to, step: next.step });
      if (!isMoving) slider.value = next.value;
      slider.setAttribute("aria-valuetext", `${shown(next.value, next)} ${next.unit}`);
      if (document.activeElement !== field) field.value = shown(next.value, next);
      ends.replaceChildren(element(document, "span", {}, shown(next.from, next)), element(document, "span", {}, shown(next.to, next)));
    }
    return { root, update };
  }

  return {
    /** Works out what a changed assumption made out of date, once, where the reader wants it at once. */
    goOn({ work, steps }) {
      // What is at work on an older value gives way; the host sees to that.
      if (!isDue || !atOnce.checked || (!work.busy && pending(steps).old === 0)) return;
      isDue = false;
      say(ask.workOut, { extent: extent.outOfDate });
    },
    render(assumptions) {
      for (const one of assumptions) {
        if (!rows.has(one.name)) rows.set(one.name, row(one));
        rows.get(one.name).update(one);
      }
      for (const name of [...rows.keys()]) if (!assumptions.some((one) => one.name === name)) rows.delete(name);
      const wanted = assumptions.map((one) => rows.get(one.name).root);
      if ([...list.children].some((child, at) => child !== wanted[at]) || list.children.length !== wanted.length) list.replaceChildren(...wanted);
      place.hidden = assumptions.length === 0;
      place.parentElement.classList.toggle("wide", place.hidden);
    },
  };
}
