// answer.js: draws what a step answered, one kind at a time.
import { element } from "./dom.js";
import { sheet } from "./sheet.js";
import { foreign } from "./foreign.js";

export function createAnswers(document, charts) {
  const draw = {
    finding: ({ figure, words, cautions, notes, tables }) => element(document, "div", {},
      element(document, "p.finding", {}, figure ? element(document, "b", {}, figure) : null, words || null),
      ...cautions.map((text) => element(document, "p.caution", {}, text)),
      ...tables.map((table, at) => at === 0 && table.rows.length <= 8 ? sheet(document, table) : more(table.caption || "Table", sheet(document, table))),
      notes.length > 0 ? more("What this rests on", element(document, "ul", {}, ...notes.map((text) => element(document, "li", {}, text)))) : null),
    chart: (answer) => charts.figure(answer),
    table: (answer) => sheet(document, answer),
    html: ({ html }) => foreign(document, html),
    picture: ({ address, words }) => element(document, "figure.picture", {}, element(document, "img", { src: address, alt: words || "Picture made by this step" })),
    text: ({ text }) => element(document, "pre.printed", { tabindex: "0" }, text),
    problem: ({ what, detail, code }) => element(document, "div.problem", { role: "group", "aria-label": "What went wrong" },
      element(document, "p.what", {}, what),
      detail ? element(document, "p.where", {}, detail) : null,
      code ? element(document, "pre", {}, code) : null),
  };

  function more(label, ...children) {
    return element(document, "details.more", {}, element(document, "summary", {}, label), ...children);
  }

  return {
    /** Replaces what stands in a place by these answers. */
    render(place, answers) {
      charts.forget(place);
      place.replaceChildren(...answers.map((answer) => draw[answer.kind](answer)));
    },
  };
}
