import assert from "node:assert/strict";
import { test } from "node:test";
import { createEdits } from "../../src/SolarEconomics.Workbench/wwwroot/js/edits.js";

function make(answers = () => true) {
  const sent = [], timers = new Map();
  let count = 0;
  const edits = createEdits({
    send: (step, text) => { const took = answers(); if (took) sent.push([step, text]); return took; },
    later: (act) => { timers.set(++count, act); return count; },
    cancel: (timer) => timers.delete(timer),
  });
  return { edits, sent, ring: () => { for (const [timer, act] of [...timers]) { timers.delete(timer); act(); } } };
}

test("typing is sent once it pauses, with the last text only", () => {
  const { edits, sent, ring } = make();
  edits.typed("a", "v");
  edits.typed("a", "va");
  assert.deepEqual(sent, []);
  ring();
  assert.deepEqual(sent, [["a", "va"]]);
  assert.equal(edits.holds("a"), false);
});

test("what is held goes out before anything else is asked", () => {
  const { edits, sent } = make();
  edits.typed("a", "1");
  edits.typed("b", "2");
  edits.flush();
  assert.deepEqual(sent, [["a", "1"], ["b", "2"]]);
});

test("while the line is down the text stays held and goes out when it is back", () => {
  let up = false;
  const { edits, sent, ring } = make(() => up);
  edits.typed("a", "kept");
  ring();
  assert.equal(edits.holds("a"), true);
  up = true;
  edits.flush();
  assert.deepEqual(sent, [["a", "kept"]]);
});
