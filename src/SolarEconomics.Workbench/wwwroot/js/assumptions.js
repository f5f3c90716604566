// assumptions.js: the declared assumptions as sliders and fields, with unit and range. Changing one asks the host; nothing is worked out.
import { element } from "./dom.js";
import { ask } from "./messages.js";
import { shown, typed } from "./numbers.js";

export function createAssumptions(document, place, say) {
  const rows = new Map();
  const list = element(document, "div.list");
  place.append(list, element(document, "p.note", {}, "Changing one makes the answers that use it out of date until they are worked out again. Not financial or tax advice."));

  function row(one) {
    let current = one;
    const key = `a-${one.name}`;
    const wrong = element(document, "p.wrong", { id: `${key}-wrong`, role: "alert", hidden: true });
    const field = element(document, "input", { type: "text", inputmode: "decimal", id: key, "aria-describedby": `${key}-wrong`, onchange: () => take(typed(field.value, current)) });
    const slider = element(document, "input", { type: "range", "aria-label": one.label, oninput: () => { field.value = shown(Number(slider.value), current); }, onchange: () => take({ value: Number(slider.value) }) });
    const ends = element(document, "span.ends", { "aria-hidden": "true" });
    const root = element(document, "div.one", {}, element(document, "div.row", {},
      element(document, "label", { for: key }, one.label), element(document, "span.value", {}, field, ` ${one.unit}`)), slider, ends, wrong);

    function take({ value, problem }) {
      wrong.hidden = !problem;
      wrong.textContent = problem ?? "";
      field.setAttribute("aria-invalid", String(Boolean(problem)));
      if (problem === undefined && value !== current.value) say(ask.setAssumption, { name: current.name, value });
    }

    function update(next) {
      current = next;
      Object.assign(slider, { min: next.from, max: next.to, step: next.step, value: next.value });
      slider.setAttribute("aria-valuetext", `${shown(next.value, next)} ${next.unit}`);
      if (document.activeElement !== field) field.value = shown(next.value, next);
      ends.replaceChildren(element(document, "span", {}, shown(next.from, next)), element(document, "span", {}, shown(next.to, next)));
    }
    return { root, update };
  }

  return {
    render(assumptions) {
      for (const one of assumptions) {
        if (!rows.has(one.name)) rows.set(one.name, row(one));
        rows.get(one.name).update(one);
      }
      for (const name of [...rows.keys()]) if (!assumptions.some((one) => one.name === name)) rows.delete(name);
      const wanted = assumptions.map((one) => rows.get(one.name).root);
      if ([...list.children].some((child, at) => child !== wanted[at]) || list.children.length !== wanted.length) list.replaceChildren(...wanted);
      place.hidden = assumptions.length === 0;
    },
  };
}
