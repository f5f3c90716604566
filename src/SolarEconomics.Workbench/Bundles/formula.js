// Formulas as MathML: the browser draws them, so no fonts or styles come along.
import katex from "katex";

export function drawFormula(element, text, displayMode) {
  katex.render(text, element, { displayMode, output: "mathml", throwOnError: false, trust: false });
}
