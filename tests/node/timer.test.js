/** The timer of the page for a projector comes from the time alone, and ends at nothing. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { leftAt, setTo, shownSeconds, startedAt, stoodAt } from "../../theme/js/time-left.js";

test("a timer that stands shows what it was set to, whatever the time", () => {
  assert.equal(shownSeconds(setTo(2), 5_000_000), 120);
});

test("it shows whole seconds: a full one until it is gone", () => {
  const timer = startedAt(setTo(1), 1_000);
  const shown = [1_000, 1_001, 2_000, 2_001, 60_999, 61_000].map((now) => shownSeconds(timer, now));
  assert.deepEqual(shown, [60, 60, 59, 59, 1, 0]);
});

test("what passes while it stands does not count", () => {
  const stood = stoodAt(startedAt(setTo(1), 0), 20_000);
  assert.equal(leftAt(stood, 90_000), 40_000);
  assert.equal(leftAt(startedAt(stood, 90_000), 100_000), 30_000);
});

test("below nothing it never goes", () => {
  assert.equal(leftAt(startedAt(setTo(1), 0), 1e9), 0);
});
