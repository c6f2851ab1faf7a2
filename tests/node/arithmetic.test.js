/** Answers are read as a child means them, and wrong ones as Python reads them. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { restingPlace, writeTenths } from "../../theme/js/gap-arithmetic.js";
import { countMistake, gapMistake } from "../../theme/js/mistakes.js";
import { readings } from "../../theme/js/read-tenths.js";
import { examples, tenths } from "./examples.js";

const { reading, rows } = examples("arithmetic");
const { gap, count } = examples("mistakes");

for (const { title, text, language, tenths: wanted, or, places } of reading)
  test(`an answer is read kindly: ${title}`, () =>
    assert.deepEqual(readings(text, language, places), [wanted, or].filter((one) => typeof one === "number")));

for (const { title, first, second, per, gap: wanted, count: times } of rows)
  test(`a row worked out by hand: ${title}`, () => {
    const [larger, smaller] = [tenths(first), tenths(second)].sort((one, other) => other - one);
    assert.equal(larger - smaller, tenths(wanted));
    assert.equal(Math.floor((larger - smaller) / tenths(per)), times);
    assert.equal(gapMistake(larger, smaller, larger - smaller), "", "a right answer is no mistake");
  });

for (const { larger, smaller, answer, mistake } of gap)
  test(`the gap of ${larger} and ${smaller} answered ${answer}`, () =>
    assert.equal(gapMistake(tenths(larger), tenths(smaller), tenths(answer)), mistake ?? ""));

for (const { gap: size, per, answer, mistake } of count)
  test(`${size} in steps of ${per} answered ${answer}`, () =>
    assert.equal(countMistake(tenths(size), tenths(per), tenths(answer)), mistake ?? ""));

test("counting up rests at the next hundred, else the next ten, else nowhere", () => {
  assert.equal(restingPlace(900, 4100), 1000);
  assert.equal(restingPlace(120, 190), 0);
  assert.equal(restingPlace(120, 250), 200);
});

test("numbers are written as the page's language writes them", () => {
  assert.equal(writeTenths(14205, "en"), "1,420.5");
  assert.equal(writeTenths(25, "es-ES"), "2,5");
});
