/** What is said of an answer that is no number of ones, is below zero, or can be read in two ways. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { notYet } from "../../theme/js/answer-reader.js";
import { texts } from "../../theme/js/texts.js";

Object.assign(texts, {
  not_ones: "tens ten",
  not_yet_unread: "unread",
  not_yet_not_ones: "not ones, such as {larger}",
  not_yet_below_zero: "take {smaller} from {larger}",
  not_yet_two_ways: "{one} or {other}",
  not_yet_gap_step: "step",
  not_yet_count_step_tens: "count tens",
});

/**
 * @param {string} text
 * @param {{ lang?: string, counting?: boolean }} [where]
 */
function said(text, { lang = "en", counting = false } = {}) {
  Object.assign(globalThis, { document: { documentElement: { lang } } });
  return notYet({ larger: 4100, smaller: 900, per: 100, counting, text });
}

test("tens are asked for as one number", () => {
  assert.equal(said("32 tens"), "not ones, such as 410");
  assert.equal(said("3 hundreds and 2 tens"), "unread", "two numbers");
});

test("where tens are counted, tens are no surprise", () => assert.equal(said("17 tens", { counting: true }), "count tens"));

test("below zero", () => {
  assert.equal(said("-320"), "take 90 from 410");
  assert.equal(said("90 - 410 = -320"), "take 90 from 410");
});

test("what can be read in two ways is asked about, in numbers that can not", () => {
  assert.equal(said("1.300", { lang: "es-US" }), "1300 or 1.3");
  assert.equal(said("1.300", { lang: "es-ES" }), "step");
  assert.equal(said("7"), "step");
});
