// rows.js: where the rows of a long table are: in the answer itself, or in the session, which is asked for them.
import { valueOf } from "./amount.js";

const quoted = (cell) => /[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;

/** Rows as a file of comma-separated values. */
export const csvOf = (columns, rows) => [columns, ...rows].map((row) => row.map(quoted).join(",")).join("\r\n") + "\r\n";

function compare(a, b) {
  if (typeof a === "number" && typeof b === "number") return a - b;
  return typeof a === typeof b ? (a < b ? -1 : a > b ? 1 : 0) : typeof a === "number" ? -1 : 1;
}

/** The rows that stand in the answer. */
export function rowsOf(table, name) {
  const wanted = ({ sort, down, find }) => {
    const text = find.toLowerCase();
    const found = table.rows.filter((row) => text === "" || row.some((cell) => cell.toLowerCase().includes(text)));
    if (sort === null) return found;
    return found.map((row) => [valueOf(row[sort] ?? ""), row]).sort(([a], [b]) => (down ? -1 : 1) * compare(a, b)).map(([, row]) => row);
  };
  return {
    name,
    async read(query) {
      const found = wanted(query);
      return { columns: table.columns, rows: found.slice(query.from, query.from + query.count), found: found.length, total: table.rows.length };
    },
    csv: async (query) => csvOf(table.columns, wanted(query)),
  };
}

/** The rows that the session holds. */
export function rowsInSession(fetch, notebook, table, name) {
  const address = (file, { from, count, sort, down, find }) => `${file}?${new URLSearchParams({ notebook, table, from, count, find, ...(sort === null ? {} : { sort, down: down ? 1 : 0 }) })}`;
  async function ask(file, query) {
    const answer = await fetch(address(file, query));
    if (!answer.ok) throw new Error(await answer.text());
    return answer;
  }
  return {
    name,
    read: async (query) => (await ask("table.json", query)).json(),
    csv: async (query) => (await ask("table.csv", { ...query, from: 0, count: 200000 })).text(),
  };
}
