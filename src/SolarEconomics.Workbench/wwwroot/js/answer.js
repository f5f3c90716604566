// answer.js: draws what a step answered, one kind at a time.
import { button, element } from "./dom.js";
import { sheet } from "./sheet.js";
import { foreign } from "./foreign.js";
import { longTable } from "./table.js";
import { csvOf, rowsInSession, rowsOf } from "./rows.js";
import { counted, tooLong, words } from "./words.js";

const shortText = 40, beginning = 15;

export function createAnswers(document, charts, { notebook, fetch, means }) {
  const paragraph = (text) => text ? element(document, "p", {}, text) : null;
  const more = (label, ...children) => element(document, "details.more", {}, element(document, "summary", {}, label), ...children);

  /** The figure large, the words after it. */
  const said = ({ figure, words: text }) => figure || text ? element(document, "p.finding", {}, figure ? element(document, "b", {}, figure) : null, text || null) : null;

  const isLarge = ({ columns, rows }) => columns.length > 6 || rows.length > 10;

  /** A table of more rows than are read at a glance can be sorted, searched and kept. */
  function tableOf(table, name) {
    if (table.rows.length <= 25) return element(document, "div", {}, sheet(document, table), element(document, "p.keep", {},
      button(document, words.keepTable, () => means.download(`${name}.csv`, csvOf(table.columns, table.rows), "text/csv"), { class: "plain" })));
    const long = longTable(document, table.caption, rowsOf(table, name), means);
    long.open();
    return long.root;
  }

  /** The first rows stand in the answer; all of them are in the session. */
  function allRows(table) {
    const long = longTable(document, "", rowsInSession(fetch, notebook, table, "table"), means);
    return element(document, "details.more", { ontoggle: (event) => { if (event.target.open) long.open(); } }, element(document, "summary", {}, words.allRows), long.root);
  }

  /** Long text shows its beginning; the rest opens when asked for. */
  function printed({ text, isComplaint }) {
    const tag = isComplaint ? "pre.printed.complaint" : "pre.printed";
    const lines = text.trimEnd().split("\n");
    if (lines.length <= shortText) return element(document, tag, { tabindex: "0" }, text);
    const shown = element(document, tag, { tabindex: "0" }, `${lines.slice(0, beginning).join("\n")}\n…`);
    const more = button(document, `${words.showAll} ${counted(lines.length, "line")}`, () => {
      const isAll = more.getAttribute("aria-expanded") === "false";
      shown.textContent = isAll ? text : `${lines.slice(0, beginning).join("\n")}\n…`;
      more.setAttribute("aria-expanded", String(isAll));
      more.textContent = isAll ? words.showLess : `${words.showAll} ${counted(lines.length, "line")}`;
    }, { class: "plain", "aria-expanded": "false" });
    return element(document, "div", {}, shown, element(document, "p.keep", {}, more, button(document, words.keepText, () => means.download("output.txt", text, "text/plain"), { class: "plain" })));
  }

  function picture({ address, words: said }) {
    const image = element(document, "img", { src: address, alt: said || "Picture made by this step" });
    const figure = element(document, "figure.picture", {}, image, element(document, "figcaption.keep", {},
      element(document, "a", { href: address, download: "picture" }, words.keepPicture), means.wholeScreen(() => figure)));
    return figure;
  }

  /** The first table stands open where it is small; the others, and what the answer rests on, open when asked for. Cautions always stand open. */
  function beneath({ cautions, notes, tables }, foldAll) {
    return [
      ...tables.map((table, at) => foldAll || at > 0 || isLarge(table) ? more(table.caption || "Table", tableOf({ ...table, caption: "" }, table.caption || "table")) : tableOf(table, table.caption || "table")),
      notes.length > 0 ? more("What this rests on", element(document, "ul", {}, ...notes.map((text) => element(document, "li", {}, text)))) : null,
      cautions.length > 0 ? element(document, "p.caution", {}, element(document, "b", {}, "Take care: "), cautions.join(" ")) : null,
    ];
  }

  const draw = {
    finding: (finding) => element(document, "div", {}, said(finding), ...beneath(finding, false), finding.table ? allRows(finding.table) : null),
    chart: (chart, before) => element(document, "div", {}, chart.finding?.figure ? said(chart.finding) : null,
      charts.figure(chart, before, chart.finding?.figure ? null : paragraph(chart.finding?.words || chart.alt)), ...(chart.finding ? beneath(chart.finding, true) : [])),
    html: ({ html }) => foreign(document, html),
    picture,
    text: printed,
    long: (answer) => element(document, "p.quiet", {}, tooLong(answer)),
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
