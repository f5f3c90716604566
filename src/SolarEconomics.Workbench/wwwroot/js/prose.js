// prose.js: a text step: shown as the host drew it, changed in a plain field.
import { button, element } from "./dom.js";

export function createProse(document, { edits, tools }) {
  return function prose(step) {
    const shown = element(document, "div.prose");
    const field = element(document, "textarea", { "aria-label": "Text of this step, in Markdown", oninput: () => edits.typed(current.id, field.value) });
    const change = button(document, "Change text", () => toggle(writing.hidden), { class: "plain" });
    const writing = element(document, "div.writing", { hidden: true }, field, element(document, "div.tools", {}, ...tools({ id: step.id, kind: "text", caret: () => field.selectionStart })));
    const root = element(document, "div.part.text", { "data-step": step.id }, shown, element(document, "div.tools", {}, change), writing);
    let current = step;

    function toggle(open) {
      writing.hidden = !open;
      root.classList.toggle("open", open);
      change.textContent = open ? "Close text" : "Change text";
      if (open) field.focus();
    }

    function update(next) {
      current = next;
      // The host drew this from Markdown with raw HTML switched off.
      if (shown.dataset.drawn !== next.html) {
        shown.innerHTML = next.html;
        shown.dataset.drawn = next.html;
        drawFormulas(shown);
      }
      if (document.activeElement !== field && !edits.holds(next.id)) field.value = next.text;
    }

    update(step);
    if (step.text === "") toggle(true);
    return { root, update, destroy() {} };
  };
}

async function drawFormulas(place) {
  const found = place.querySelectorAll(".math");
  if (found.length === 0) return;
  const { drawFormula } = await import("../vendor/formula.js");
  for (const math of found) drawFormula(math, math.textContent.replace(/^\\[([]|\\[)\]]$/g, ""), math.tagName === "DIV");
}
