import assert from "node:assert/strict";
import { test } from "node:test";
import { createTurns } from "../../src/SolarEconomics.Workbench/wwwroot/js/turns.js";

function make() {
  let time = 0, scroll;
  const timers = [], done = [];
  const turns = createTurns({
    performance: { now: () => time },
    addEventListener: (_, act) => { scroll = act; },
    setTimeout: (act, ms = 0) => timers.push({ act, at: time + ms }),
  }, async (what) => { done.push(what); });
  const goOn = async (ms) => {
    for (const until = time + ms; time <= until; time += 1) {
      for (const timer of timers.filter((one) => one.at <= time)) { timers.splice(timers.indexOf(timer), 1); timer.act(); }
      for (let turn = 0; turn < 6; turn++) await null;
    }
  };
  return { turns, done, goOn, scroll: () => scroll() };
}

test("one piece follows the other", async () => {
  const { turns, done, goOn } = make();
  await goOn(500);
  ["a", "b"].forEach(turns.add);
  await goOn(5);
  assert.deepEqual(done, ["a", "b"]);
});

test("while the page scrolls work is held back, and what left the sight is not done at all", async () => {
  const { turns, done, goOn, scroll } = make();
  await goOn(500);
  scroll();
  ["a", "b"].forEach(turns.add);
  await goOn(50);
  assert.deepEqual(done, []);
  turns.leave("b");
  await goOn(60);
  assert.deepEqual(done, ["a"]);
});

test("who scrolls on and on still sees something", async () => {
  const { turns, done, goOn, scroll } = make();
  await goOn(500);
  scroll();
  turns.add("a");
  for (let turn = 0; turn < 40; turn++) { await goOn(10); scroll(); }
  assert.deepEqual(done, ["a"]);
});
