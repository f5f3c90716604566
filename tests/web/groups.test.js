import assert from "node:assert/strict";
import { test } from "node:test";
import { groupByQuestion, pending, stateOf } from "../../src/SolarEconomics.Workbench/wwwroot/js/groups.js";

const text = (id, heading) => ({ id, kind: "text", heading, state: "none" });
const code = (id, state = "none", heading = "") => ({ id, kind: "code", heading, state });

test("code after a heading belongs to its question, text without a heading too", () => {
  const groups = groupByQuestion([text("a", "First?"), code("b"), text("c", ""), code("d"), text("e", "Second?")]);
  assert.deepEqual(groups.map((group) => [group.heading, group.parts.map((part) => part.id)]), [["First?", ["b", "c", "d"]], ["Second?", []]]);
});

test("code before any heading is a question of its own", () => {
  const groups = groupByQuestion([code("a", "none", "Prices"), code("b")]);
  assert.deepEqual(groups.map((group) => group.heading), ["Prices", ""]);
});

test("a question says the state that a reader must know first", () => {
  assert.equal(stateOf([code("a", "done"), code("b", "failed"), code("c", "old")]), "failed");
  assert.equal(stateOf([code("a", "done"), code("b", "old")]), "old");
  assert.equal(stateOf([code("a", "done"), code("b", "done")]), "done");
  assert.equal(stateOf([text("a", "")]), null);
});

test("only steps that are out of date are pending", () => {
  assert.deepEqual(pending([code("a", "done"), code("b", "old"), code("c", "perhaps"), code("d", "none"), text("e", "")]), { all: 4, old: 2 });
});
