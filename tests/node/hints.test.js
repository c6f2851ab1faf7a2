/** What is said of an answer that is no number of ones, is below zero, or can be read in two ways. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { notYet } from "../../theme/js/answer-reader.js";
import { texts } from "../../theme/js/texts.js";

Object.assign(texts, {
  not_ones: "tens ten",
  not_yet_unread: "unread",
  not_yet_not_ones: "not ones, such as {larger}",
  not_yet_below_zero: "no minus",
  not_yet_count_below_zero: "no minus in a count",
  not_yet_count_empty: "{gap}, yes: now the count",
  not_yet_count_alone: "write the count",
  not_yet_plan: "good plan",
  not_yet_plan_turned: "turn it around",
  not_yet_two_ways: "{one} or {other}",
  not_yet_gap_step: "step",
  not_yet_count_step_tens: "count tens",
});

/**
 * @param {string} text
 * @param {{ lang?: string, counting?: boolean, gapFound?: boolean, smaller?: number }} [where]
 */
function said(text, { lang = "en", counting = false, gapFound = false, smaller = 900 } = {}) {
  Object.assign(globalThis, { document: { documentElement: { lang } } });
  return notYet({ larger: 4100, smaller, per: 100, counting, gapFound, text });
}

test("tens are asked for as one number", () => {
  assert.equal(said("32 tens"), "not ones, such as 410");
  assert.equal(said("3 hundreds and 2 tens"), "unread", "two numbers");
});

test("where tens are counted, tens are no surprise", () => assert.equal(said("17 tens", { counting: true }), "count tens"));

test("below zero", () => {
  assert.equal(said("-320"), "no minus");
  assert.equal(said("90 - 410 = -320"), "no minus");
});

test("what can be read in two ways is asked about, in numbers that can not", () => {
  assert.equal(said("1.300", { lang: "es-US", smaller: 905 }), "1300 or 1.3");
  assert.equal(said("1.300", { lang: "es-US" }), "step", "no tenths in sight: thousands");
  assert.equal(said("1.300", { lang: "es-ES" }), "step");
  assert.equal(said("7"), "step");
});

test("a count below zero", () => assert.equal(said("-32", { counting: true }), "no minus in a count"));

test("the gap that was found is said before the count is asked for", () => {
  assert.equal(said(" ", { counting: true, gapFound: true }), "320, yes: now the count");
  assert.equal(said("", { counting: true }), "write the count", "where no gap was asked for");
});

test("a sum without its answer is a plan", () => {
  for (const plan of ["410-90", " 410 − 90 = ", "410 – 90", "٤١٠-٩٠"]) assert.equal(said(plan), "good plan", plan);
  assert.equal(said("90 - 410"), "turn it around");
  assert.equal(said("410-80"), "unread", "another sum");
  assert.equal(said("410:90"), "unread", "another sign");
  assert.equal(said("410 - 90 = 7"), "step", "its answer stands there");
  for (const plan of ["320/10", "320 ÷ 10", "320 : 10 ="]) assert.equal(said(plan, { counting: true }), "good plan", plan);
});
