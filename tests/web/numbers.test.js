import assert from "node:assert/strict";
import { test } from "node:test";
import { shown, typed } from "../../src/SolarEconomics.Workbench/wwwroot/js/numbers.js";

const rate = { unit: "% a year", from: 0, to: 0.15, step: 0.001 };
const price = { unit: "EUR/kWh", from: 0, to: 0.4, step: 0.001 };
const years = { unit: "years", from: 10, to: 40, step: 1 };

test("a rate is shown in per cent, a price as it is, years whole", () => {
  assert.equal(shown(0.05, rate), "5.0");
  assert.equal(shown(0.15, price), "0.150");
  assert.equal(shown(25, years), "25");
  assert.equal(shown(12, { unit: "modules", from: 6, to: 12, step: 0.01 }), "12");
});

test("what a reader types is stored as a fraction, without the dust of floating point", () => {
  for (const text of ["5.5", "5,5", " 5.5 %", "5.5 % a year"]) assert.deepEqual(typed(text, rate), { value: 0.055 });
  assert.deepEqual(typed("7", rate), { value: 0.07 });
  assert.deepEqual(typed("−3", { ...rate, from: -0.1 }), { value: -0.03 });
  assert.deepEqual(typed("0.151", price), { value: 0.151 });
});

test("what is no number, or outside the range, is refused with what was found and expected", () => {
  assert.equal(typed("a lot", rate).problem, 'Found "a lot", expected a number from 0.0 to 15.0 % a year.');
  assert.equal(typed("50", rate).problem, "Found 50, expected a number from 0.0 to 15.0 % a year.");
  assert.equal(typed("", years).problem, 'Found "", expected a number from 10 to 40 years.');
  assert.ok(typed("1e5", price).problem);
});
