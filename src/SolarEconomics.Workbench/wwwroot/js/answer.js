// answer.js: draws what a step answered, one kind at a time.
import { element } from "./dom.js";
import { sheet } from "./sheet.js";
import { foreign } from "./foreign.js";

export function createAnswers(document, charts) {
  const paragraph = (words) => words ? element(document, "p", {}, words) : null;
  const more = (label, ...children) => element(document, "details.more", {}, element(document, "summary", {}, label), ...children);

  /** Cautions always stand open; a long table and what the answer rests on open when asked for. */
  function beneath({ cautions, notes, tables }, foldTables) {
    return [
      ...cautions.map((text) => element(document, "p.caution", {}, text)),
      ...tables.map((table) => foldTables || table.rows.length > 10 ? more(table.caption || "Table", sheet(document, { ...table, caption: "" })) : sheet(document, table)),
      notes.length > 0 ? more("What this rests on", element(document, "ul", {}, ...notes.map((text) => element(document, "li", {}, text)))) : null,
    ];
  }

  const draw = {
    finding: (finding) => element(document, "div", {},
      finding.figure || finding.words ? element(document, "p.finding", {}, finding.figure ? element(document, "b", {}, finding.figure) : null, finding.words || null) : null,
      ...beneath(finding, false)),
    chart: (chart, before) => charts.figure(chart, before, element(document, "div", {}, paragraph(chart.finding ? [chart.finding.figure, chart.finding.words].filter(Boolean).join(" ") : chart.alt),
      ...(chart.finding ? beneath(chart.finding, true) : []))),
    html: ({ html }) => foreign(document, html),
    picture: ({ address, words }) => element(document, "figure.picture", {}, element(document, "img", { src: address, alt: words || "Picture made by this step" })),
    text: ({ text, isComplaint }) => element(document, isComplaint ? "pre.printed.complaint" : "pre.printed", { tabindex: "0" }, text),
    problem: ({ what, detail, code }) => element(document, "div.problem", { role: "group", "aria-label": "What went wrong" },
      element(document, "p.what", {}, what),
      detail ? element(document, "p.where", {}, detail) : null,
      code ? element(document, "p.where", {}, element(document, "code", {}, code)) : null),
  };

  return {
    /** Replaces what stands in a place by these answers; an old picture stays until the new one is drawn. */
    render(place, answers) {
      const pictures = charts.forget(place);
      place.replaceChildren(...answers.map((answer) => draw[answer.kind](answer, answer.kind === "chart" ? pictures.shift() : null)));
    },
  };
}
