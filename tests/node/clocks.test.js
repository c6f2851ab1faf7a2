/** Counts and pauses come from the time alone, cards are dealt by chance, and practice draws as Python does. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { byteRange } from "../../theme/js/byte-range.js";
import { deal } from "../../theme/js/deal.js";
import * as clock from "../../theme/js/pacer-clock.js";
import { blocksLeft } from "../../theme/js/pacer-tens.js";
import { pauseBetween, untilNext } from "../../theme/js/pause-points.js";
import { practiceSet } from "../../theme/js/practice-kinds.js";
import { practiceProblems, shifted } from "../../theme/js/practice-numbers.js";
import { textHash } from "../../theme/js/text-hash.js";
import { scriptPlace, wordsBefore, wordsRead } from "../../theme/js/recording/scroll-place.js";
import { clock as told, lineAt, sentences } from "../../theme/js/transcript-lines.js";
import { examples } from "./examples.js";

const { cases, due, paces, kept, swings } = examples("pacer");
const drawn = examples("practice");

for (const { title, pace, steps } of cases)
  test(`a count: ${title}`, () => {
    let pacing = clock.still(pace);
    for (const step of steps) {
      if (step.do === "run") pacing = clock.run(pacing, step.at);
      else if (step.do === "pause") pacing = clock.pause(pacing, step.at);
      else if (step.do === "pace") pacing = clock.atPace(pacing, step.at, step.pace);
      else assert.equal(clock.numberAt(pacing, step.at), step.number);
    }
  });

test("beats are due where a minute divides", () => {
  for (const { pace, number, due: wanted } of due) assert.equal(clock.dueAt(clock.run(clock.still(pace), 0), number), wanted);
});

test("paces go in fives and stay within what a child can do", () => {
  for (const { pace, steps, own, next } of paces) assert.equal(clock.nextPace(pace, steps, own), next);
});

for (const { title, kept: text, own, pace } of kept)
  test(`a pace that was kept is believed only where a child can do it: ${title}`, () => assert.equal(clock.keptPace(text, own), pace));

for (const { title, beats, degrees } of swings)
  test(`a plumb bob swings across once a count: ${title}`, () => assert.ok(Math.abs(clock.swingAt(beats) - degrees) < 1e-9));

test("with each count one block less is drawn, and none at the end", () => {
  const drawn = [32, 31, 30, 10, 1, 0].map((left) => blocksLeft(left).match(/M/g)?.length ?? 0);
  assert.deepEqual(drawn, [32, 31, 30, 10, 1, 0]);
});

test("the blocks that are left stand in rods of ten", () => {
  const feet = [...blocksLeft(32).matchAll(/M([\d.]+) /g)].map(([, x]) => x);
  assert.deepEqual([...new Set(feet)].map((x) => feet.filter((each) => each === x).length), [10, 10, 10, 2]);
});

test("three different cards are dealt, or all there are", () => {
  for (const there of [["a"], ["a", "b"], ["a", "b", "c"], ["a", "b", "c", "d", "e"]]) {
    const dealt = deal(there);
    assert.equal(dealt.length, Math.min(3, there.length));
    assert.equal(new Set(dealt).size, dealt.length);
    assert.ok(dealt.every((card) => there.includes(card)));
  }
});

test("every card comes in its turn, and none is left out", () => {
  const seen = new Set();
  for (let at = 0; at < 4; at++) for (const card of deal(["a", "b", "c", "d"], [], () => at / 4)) seen.add(card);
  assert.equal(seen.size, 4);
});

test("another deal is another one, whatever chance brings", () => {
  const [there, before] = [["a", "b", "c"], ["a", "b", "c"]];
  assert.notDeepEqual(deal(there, before, () => 0), before);
  assert.deepEqual(deal(["a"], ["a"]), ["a"]);
});

for (const { title, seed, largest, per, problems } of drawn.sets)
  test(`a set of practice is made as Python makes it: ${title}`, () => {
    const made = practiceSet(seed, largest, per);
    assert.deepEqual(problems.map(() => made.next().value).map(({ kind, first, second }) => [kind, first, second]), problems);
  });

test("practice draws as Python does", () => {
  for (const { text, hash } of drawn.hash) assert.equal(textHash(text), hash);
  for (const { before, after } of drawn.shifts) assert.equal(shifted(before), after);
  for (const { seed, largest, problems } of drawn.problems) {
    const made = practiceProblems(seed, largest);
    assert.deepEqual(problems.map(() => made.next().value).map(({ larger, smaller }) => [larger, smaller]), problems);
  }
});

for (const { title, cues, lines } of examples("transcript"))
  test(`captions as lines: ${title}`, () => {
    const read = sentences(cues.map(([startTime, text]) => ({ startTime, text })));
    assert.deepEqual(read.map(({ startTime, text }) => [startTime, text]), lines);
  });

test("the line that is said is the last that has begun", () => {
  const lines = [{ startTime: 1, text: "" }, { startTime: 4, text: "" }];
  assert.deepEqual([0, 1, 3.9, 4, 99].map((now) => lineAt(lines, now)), [-1, 0, 0, 1, 1]);
});

test("times are told as on the page", () => {
  for (const [seconds, text] of /** @type {[number, string][]} */ ([[0, "0:00"], [69.9, "1:09"], [600, "10:00"], [3661, "1:01:01"]])) assert.equal(told(seconds), text);
});

test("a pause point is met once, and of several crossed the nearest to where one is", () => {
  const points = [{ at: 0, stop: "hello" }, { at: 10, stop: "guess" }, { at: 10, stop: "again" }, { at: 20, stop: "rows" }];
  const none = new Set();
  assert.equal(pauseBetween(points, -1, 0, none)?.stop, "hello");
  assert.equal(pauseBetween(points, 9.9, 10, none)?.stop, "guess");
  assert.equal(pauseBetween(points, 9.9, 10, new Set(["guess"]))?.stop, "again");
  assert.equal(pauseBetween(points, 0, 25, none)?.stop, "rows");
  assert.equal(pauseBetween(points, 10, 19, none), undefined);
  assert.equal(untilNext(points, 12, none), 8);
  assert.equal(untilNext(points, 20, none), Infinity);
});

test("bytes are cut as RFC 9110, section 14, has it", () => {
  assert.deepEqual(byteRange("bytes=0-499", 1000), [0, 500]);
  assert.deepEqual(byteRange("bytes=-200", 1000), [800, 1000]);
  assert.deepEqual(byteRange("bytes=900-5000", 1000), [900, 1000]);
  for (const none of ["bytes=1000-", "bytes=-", "bytes=0-1,5-6", "lines=0-1", "bytes=9-5"]) assert.equal(byteRange(none, 1000), null);
});

test("a reader of a script is where the words are", () => {
  assert.equal(wordsRead(30_000, 120), 60);
  assert.deepEqual(scriptPlace(15, [10, 20]), { index: 1, share: 0.25 });
  assert.deepEqual(scriptPlace(99, [10, 20]), { index: 1, share: 1 });
  assert.equal(wordsBefore(1, [10, 20]), 10);
});
