import assert from "node:assert/strict";
import { test } from "node:test";
import { csvOf, rowsInSession, rowsOf } from "../../src/SolarEconomics.Workbench/wwwroot/js/rows.js";

const table = { columns: ["Month", "EUR"], rows: [["Jan", "1,200"], ["Feb", "−30"], ["Mar, late", "€90.50"], ["Apr", ""]] };
const all = { from: 0, count: 25, sort: null, down: false, find: "" };

test("rows are sorted as numbers where they are numbers, and come back in their own order", async () => {
  const rows = rowsOf(table, "t");
  assert.deepEqual((await rows.read({ ...all, sort: 1 })).rows.map(([month]) => month), ["Feb", "Mar, late", "Jan", "Apr"]);
  assert.deepEqual((await rows.read(all)).rows, table.rows);
});

test("what is looked for is found in any cell and case, and counted", async () => {
  const { rows, found, total } = await rowsOf(table, "t").read({ ...all, find: "MAR" });
  assert.deepEqual([rows.length, found, total], [1, 1, 4]);
});

test("a page is a part of what was found", async () => {
  assert.deepEqual((await rowsOf(table, "t").read({ ...all, from: 1, count: 2 })).rows.map(([month]) => month), ["Feb", "Mar, late"]);
});

test("a file quotes what holds a comma, a quote or a line end", () => {
  assert.equal(csvOf(["a", "b"], [["x,y", 'say "no"']]), 'a,b\r\n"x,y","say ""no"""\r\n');
});

test("rows in the session are asked for by address, and a refusal is said in its words", async () => {
  const asked = [];
  const rows = rowsInSession(async (address) => { asked.push(address); return { ok: false, text: async () => "gone" }; }, "n.ipynb", "s/1", "t");
  await assert.rejects(() => rows.read({ ...all, sort: 2, down: true, find: "a b" }), { message: "gone" });
  assert.equal(asked[0], "table.json?notebook=n.ipynb&table=s%2F1&from=0&count=25&find=a+b&sort=2&down=1");
});
