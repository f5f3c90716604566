// table.js: a long table, a page at a time: sorted by a heading, searched, copied and kept as CSV. Where its rows are is the business of its source.
import { button, element } from "./dom.js";
import { sheet } from "./sheet.js";
import { words } from "./words.js";

const perPage = 25;

/**
 * @param {Document} document
 * @param {string} caption
 * @param {{read: (query: object) => Promise<{columns: string[], rows: string[][], found: number, total: number}>, csv: (query: object) => Promise<string>, name: string}} source
 * @param {{copy: (text: string) => Promise<void>, download: (name: string, text: string, kind: string) => void, later: (act: () => void, ms: number) => void}} means
 */
export function longTable(document, caption, source, { copy, download, later }) {
  const place = element(document, "div");
  const said = element(document, "span.said", { role: "status" });
  const find = element(document, "input", { type: "search", "aria-label": words.findInTable, placeholder: words.findInTable, oninput: () => { const text = find.value; later(() => { if (text === find.value) go({ find: text, from: 0 }); }, 250); } });
  const back = button(document, words.rowsBefore, () => go({ from: Math.max(0, query.from - perPage) }));
  const on = button(document, words.rowsAfter, () => go({ from: query.from + perPage }));
  const query = { from: 0, count: perPage, sort: null, down: false, find: "" };

  let asked = 0;

  async function go(change) {
    Object.assign(query, change);
    const mine = ++asked;
    said.textContent = words.readingRows;
    try {
      const page = await source.read({ ...query });
      // Only the last question counts: an earlier one may take longer to answer.
      if (mine === asked) show(page);
    } catch (failure) {
      said.textContent = "";
      place.replaceChildren(element(document, "p.quiet", {}, failure.message));
    }
  }

  function show({ columns, rows, found, total }) {
    const by = (at) => () => go(query.sort === at && query.down ? { sort: null, down: false, from: 0 } : { sort: at, down: query.sort === at, from: 0 });
    const heading = (text, at) => button(document, text || words.rowName, by(at), { class: "sort" });
    // Who sorts by the keyboard goes on from the heading that was pressed.
    const pressed = [...place.querySelectorAll(".sort")].indexOf(document.activeElement);
    place.replaceChildren(sheet(document, { caption, columns, rows }, { heading, sorted: (at) => query.sort !== at ? "none" : query.down ? "descending" : "ascending" }));
    if (pressed >= 0) place.querySelectorAll(".sort")[pressed]?.focus();
    said.textContent = found === 0 ? words.nothingFound : `${query.from + 1} to ${query.from + rows.length} of ${found.toLocaleString()}${found === total ? "" : ` found in ${total.toLocaleString()}`}`;
    back.disabled = query.from === 0;
    on.disabled = query.from + rows.length >= found;
  }

  const withText = (act) => async () => {
    try { await act(await source.csv(query)); } catch (failure) { said.textContent = failure.message; }
  };
  const root = element(document, "div.long", {}, element(document, "div.pager", {}, find, back, on, said,
    button(document, words.copyTable, withText(async (text) => { await copy(text); said.textContent = words.copied; }), { class: "plain" }),
    button(document, words.keepTable, withText((text) => download(`${source.name}.csv`, text, "text/csv")), { class: "plain" })), place);
  return { root, open: () => go({}) };
}
