import assert from "node:assert/strict";
import { test } from "node:test";
import { isAmount, valueOf } from "../../src/SolarEconomics.Workbench/wwwroot/js/amount.js";

test("amounts are told from names, whichever side the currency stands on", () => {
  for (const text of ["", "1,200", "−30", "€90.50", "−€1,234", "A$1,234", "−US$5", "NZ$0", "1.234\u00a0€", "−0,50\u00a0€", "1.234\u00a0US$", "CHF\u00a01,234", "R\u00a05", "1’234 CHF", "12 %", "3.5 kWh", "25 years"])
    assert.ok(isAmount(text), text);
  for (const text of ["PV1", "A1", "roof 2", "2024-03-01", "MB20", "none", "n/a"]) assert.ok(!isAmount(text), text);
});

test("amounts are sorted by what they are worth", () => {
  const values = [["1,200", 1200], ["−30", -30], ["€90.50", 90.5], ["−€1,234", -1234], ["+US$5", 5], ["A$1,234,567", 1234567], ["CHF\u00a01,234.50", 1234.5],
    ["1.234\u00a0€", 1234], ["980\u00a0€", 980], ["−0,50\u00a0€", -0.5], ["1.234.567,25\u00a0€", 1234567.25], ["1’234.5 CHF", 1234.5], ["0.3124", 0.3124], ["0,5 %", 0.5], ["1 234 kWh", 1234], ["1.234 kWh", 1.234]];
  for (const [text, value] of values) assert.equal(valueOf(text), value, text);
});

test("what is no amount stays a text", () => {
  for (const text of ["", "Jan", "2024-03-01", "12 to 14", "PV1"]) assert.equal(valueOf(text), text);
});
