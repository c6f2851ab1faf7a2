/** Stamps as they are typed from paper, on the cases that Python runs too. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { alike, canBeStamp } from "../../theme/js/stamp-signs.js";
import { examples } from "./examples.js";

for (const [typed, wanted] of examples("stamps")) {
  test(`"${typed}" is looked up as ${wanted}`, () => {
    assert.equal(alike(typed), wanted);
    assert.equal(canBeStamp(typed), wanted.length === 6);
  });
}

test("what is no stamp is never looked up", () => {
  for (const typed of ["K7Q2F", "K7Q2FMM", "ÑÑÑÑÑÑ", "../../"]) assert.equal(canBeStamp(typed), false);
});
