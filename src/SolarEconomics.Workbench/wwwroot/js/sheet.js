// sheet.js: draws a small table; columns of numbers are set flush right.
import { element } from "./dom.js";
import { isAmount } from "./amount.js";

/**
 * @param {{caption: string, columns: string[], rows: string[][]}} table
 * @param {{heading?: (text: string, at: number) => Element, sorted?: (at: number) => string}} [how] a heading that can be pressed, and how the column is sorted
 */
export function sheet(document, { caption, columns, rows }, { heading, sorted } = {}) {
  const numeric = columns.map((_, at) => rows.length > 0 && rows.some((row) => row[at] !== "") && rows.every((row) => isAmount(row[at] ?? "")));
  const brief = columns.map((_, at) => rows.every((row) => (row[at] ?? "").length <= 18));
  const cell = (tag, text, at) => element(document, numeric[at] ? `${tag}.number` : brief[at] && tag === "td" ? `${tag}.brief` : tag, tag === "th" ? { scope: "col", "aria-sort": sorted?.(at) } : {}, tag === "th" && heading ? heading(text, at) : text);
  return element(document, "div.sheet", { tabindex: "0", role: "group", "aria-label": caption || "Table" }, element(document, "table", {},
    caption ? element(document, "caption", {}, caption) : null,
    element(document, "thead", {}, element(document, "tr", {}, ...columns.map((text, at) => cell("th", text, at)))),
    element(document, "tbody", {}, ...rows.map((row) => element(document, "tr", {}, ...row.map((text, at) => cell("td", text, at)))))));
}
