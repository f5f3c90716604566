import assert from "node:assert/strict";
import { test } from "node:test";
import { soFar } from "../../src/SolarEconomics.Workbench/wwwroot/js/words.js";

test("work says what is known of how far it is, and no more", () => {
  assert.equal(soFar(0.404, 12.2), "40 % done, about 13 s left");
  assert.equal(soFar(0.404, 0.5), "40 % done");
  assert.equal(soFar(null, 150), "about 3 min left");
  assert.equal(soFar(undefined, null), "");
});
