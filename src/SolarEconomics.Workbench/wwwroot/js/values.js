// values.js: the numbers behind a chart as tables, for readers who do not look at it. Pure.

const plain = (value) => typeof value === "number" ? Number(value.toPrecision(6)).toLocaleString() : String(value ?? "");
const withoutTags = (text) => String(text ?? "").replace(/<[^>]*>/g, " ").trim();

/** One table per group of traces that share their x values. */
export function valuesOf(figure) {
  const axis = (name, fallback) => withoutTags(figure.layout?.[name]?.title?.text ?? figure.layout?.[name]?.title) || fallback;
  const tables = [];
  for (const trace of figure.data) {
    if (!Array.isArray(trace.x) || !Array.isArray(trace.y) || trace.x.length === 0) continue;
    const key = JSON.stringify(trace.x);
    const table = tables.find((one) => one.key === key) ?? tables[tables.push({ key, x: trace.x, traces: [] }) - 1];
    table.traces.push(trace);
  }
  return tables.map(({ x, traces }) => ({
    caption: axis("yaxis", ""),
    columns: [axis("xaxis", ""), ...traces.map((trace) => withoutTags(trace.name) || "value")],
    rows: x.map((value, row) => [withoutTags(plain(value)), ...traces.map((trace) => plain(trace.y[row]))]),
  }));
}
