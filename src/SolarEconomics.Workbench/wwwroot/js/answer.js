// answer.js: draws what a step answered, one kind at a time.
import { element } from "./dom.js";
import { sheet } from "./sheet.js";
import { foreign } from "./foreign.js";

export function createAnswers(document, charts) {
  const paragraph = (words) => words ? element(document, "p", {}, words) : null;
  const more = (label, ...children) => element(document, "details.more", {}, element(document, "summary", {}, label), ...children);

  /** The figure large, the words after it. */
  const said = ({ figure, words }) => figure || words ? element(document, "p.finding", {}, figure ? element(document, "b", {}, figure) : null, words || null) : null;

  const isLarge = ({ columns, rows }) => columns.length > 6 || rows.length > 10;

  /** The first table stands open where it is small; the others, and what the answer rests on, open when asked for. Cautions always stand open. */
  function beneath({ cautions, notes, tables }, foldAll) {
    return [
      ...tables.map((table, at) => foldAll || at > 0 || isLarge(table) ? more(table.caption || "Table", sheet(document, { ...table, caption: "" })) : sheet(document, table)),
      notes.length > 0 ? more("What this rests on", element(document, "ul", {}, ...notes.map((text) => element(document, "li", {}, text)))) : null,
      cautions.length > 0 ? element(document, "p.caution", {}, element(document, "b", {}, "Take care: "), cautions.join(" ")) : null,
    ];
  }

  const draw = {
    finding: (finding) => element(document, "div", {}, said(finding), ...beneath(finding, false)),
    chart: (chart, before) => element(document, "div", {}, chart.finding?.figure ? said(chart.finding) : null,
      charts.figure(chart, before, chart.finding?.figure ? null : paragraph(chart.finding?.words || chart.alt)), ...(chart.finding ? beneath(chart.finding, true) : [])),
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
