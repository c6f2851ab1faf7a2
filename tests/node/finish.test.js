/** Finish codes are written and read as Python does, and what a teacher pastes is read line by line. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { decode, encode } from "../../theme/js/base32.js";
import { cell, COLUMNS, csvOf } from "../../theme/js/class-csv.js";
import { cellsOf, learnedBy, missedBy } from "../../theme/js/class-rows.js";
import { noteBad } from "../../theme/js/bad-lines.js";
import { codeIn, linesOf } from "../../theme/js/code-lines.js";
import { finishCode, lengthOf, marksOf, readFinish, stepOf } from "../../theme/js/finish-layout.js";
import { noteBefore, noteLook, noteTry, triedOf } from "../../theme/js/tried.js";
import { examples } from "./examples.js";

const { base32, minutes, codes } = examples("finish-codes");
const { code: CODE, layout: LAYOUT, finished: FINISHED } = codes.at(-1);

test("a number and its symbols", () => {
  for (const [text, number, length] of base32) {
    assert.deepEqual(decode(text), { number: BigInt(number), length });
    assert.equal(encode(BigInt(number), length), text.toUpperCase().replace(/-/g, "").replace(/[IL]/g, "1").replace(/O/g, "0"));
  }
});

for (const { title, layout, finished, length, code } of codes)
  test(`a finish code: ${title}`, () => {
    assert.equal(lengthOf(layout, finished.stops.includes(2) ? 3 : 2), length);
    assert.equal(finishCode(finished, layout), code);
    assert.deepEqual(readFinish(code, layout), finished);
    assert.deepEqual(marksOf(code.toLowerCase().replace(/0/g, "o").replace(/-/g, "")), { lesson: layout.lesson, numbers: layout.numbers });
  });

test("minutes are told in steps", () => {
  for (const [whole, step] of minutes) assert.equal(stepOf(whole), step);
});

test("any one wrong character and any two that changed places are noticed", () => {
  const plain = CODE.replace(/-/g, "");
  for (let at = 0; at < plain.length; at++) {
    const [one, two] = [plain[at] ?? "", plain[at + 1] ?? ""];
    for (const other of "0123456789ABCDEFGHJKMNPQRSTVWXYZ") if (other !== one) assert.notEqual(typeof marksOf(plain.slice(0, at) + other + plain.slice(at + 1)), "object");
    if (one !== two && two) assert.notEqual(typeof marksOf(plain.slice(0, at) + two + one + plain.slice(at + 2)), "object");
  }
});

test("a code whose places contradict one another tells nothing", () => {
  const code = finishCode({ ...FINISHED, after: [0], answers: FINISHED.answers.map(() => 1) }, LAYOUT);
  assert.equal(typeof marksOf(code), "object");
  assert.equal(readFinish(code, LAYOUT), undefined);
  assert.equal(readFinish(code, { ...LAYOUT, stops: LAYOUT.stops + 9 }), undefined);
});

const spaced = CODE.replace(/-/g, " ");
for (const [text, label] of [
  [`Ana ${CODE}`, "Ana"],
  [`${CODE} Ana`, "Ana"],
  [`1. Table 3: ${CODE.toLowerCase()}`, "1. Table 3"],
  [`${CODE}`, ""],
  [`Maximilian;\t${CODE.replace(/-/g, "")}`, "Maximilian"],
  [`Ana Liza ${spaced}`, "Ana Liza"],
  [`“José” – ${CODE}, again`, "“José” – , again"],
  [`\u200fAna \u2067${CODE}\u2069`, "\u200fAna"],
])
  test(`a code among other words: ${text}`, () => assert.deepEqual(codeIn({ line: 7, text: text ?? "" }), { line: 7, label, code: CODE, marks: { lesson: LAYOUT.lesson, numbers: LAYOUT.numbers } }));

for (const [text, marks] of /** @type {[string, string][]} */ ([
  ["Maximiliano was here", "no_code"],
  ["hello", "no_code"],
  ["<script>alert(1)</script>", "no_code"],
  ["0".repeat(100_000), "no_code"],
  [`Ana ${CODE.slice(0, -1)}`, "wrong_symbol"],
  [`Ana ${CODE.replace(/^./, (one) => (one === "7" ? "8" : "7"))}`, "wrong_symbol"],
]))
  test(`no code, or a wrong one: ${text.slice(0, 30)}`, () => assert.equal(codeIn({ line: 1, text }).marks, marks));

test("lines end in every way, and keep their numbers", () => {
  assert.deepEqual(linesOf("\ufeffa\r\nb\rc\n\n \ne"), [{ line: 1, text: "a" }, { line: 2, text: "b" }, { line: 3, text: "c" }, { line: 6, text: "e" }]);
});

test("ten thousand lines of noise are ten thousand lines without a code", () => {
  let seed = 1;
  const noise = Array.from({ length: 10_000 }, () => Array.from({ length: 40 }, () => String.fromCharCode(32 + ((seed = (seed * 48271) % 2147483647) % 95))).join(""));
  const read = linesOf(noise.join("\n")).map(codeIn);
  assert.ok(read.every(({ marks }) => typeof marks === "string"));
  assert.ok(read.length > 9_990);
});

test("no cell is worked out by a spreadsheet", () => {
  for (const begins of ["=1+1", "+1", "-1", "@SUM(A1)", "\tx", "\rx"]) assert.match(cell(begins), /^"?'/);
  assert.equal(cell('=HYPERLINK("http://x","y")'), '"\'=HYPERLINK(""http://x"",""y"")"');
  assert.equal(cell("Ana, 4b"), '"Ana, 4b"');
  assert.equal(cell("two\nlines"), '"two\nlines"');
  assert.equal(cell("plain"), "plain");
});

const told = {
  title: "Soup", lesson: LAYOUT.lesson, numbers: LAYOUT.numbers,
  stops: Array.from({ length: LAYOUT.stops }, (_, at) => ({ id: `s${at}`, name: `Stop ${at}` })),
  answers: Array.from({ length: LAYOUT.answers }, (_, at) => ({ id: `a${at}`, stop: `s${at}`, name: `Answer ${at}`, likely: [] })),
  twice: [{ id: "guess", name: "Guess", again: 5 }],
};
const row = { label: "Ana", code: CODE, folder: "soup", told, finished: FINISHED };

test("a row of the table as cells, in words that a report reads", () => {
  const cells = cellsOf(row);
  assert.equal(cells.length, COLUMNS.length);
  assert.deepEqual(cells.slice(0, 4), ["Ana", "soup", "3210", CODE]);
  assert.equal(cells[4], "s0 s1 s2 s3 s4 s5 s6 s7 s8 s10");
  assert.equal(cells[5], "a0=first a1=later a2=no a3=first a4=first a5=first a6=later a7=no");
  assert.deepEqual(cells.slice(6), ["guess=wrong", "guess=right", "20 to 29"]);
  assert.ok(csvOf([cells]).startsWith(`\ufeff${COLUMNS.join(",")}\r\nAna,soup,`));
});

test("what a class link left out is in no cell", () => {
  const stops = FINISHED.stops.map((one, at) => (at === 2 || at === 3 ? 2 : one));
  const cells = cellsOf({ ...row, finished: { ...FINISHED, stops } });
  assert.equal(cells[4], "s0 s1 s4 s5 s6 s7 s8 s10");
  assert.equal(cells[5], "a0=first a1=later a4=first a5=first a6=later a7=no");
});

test("what more than half did not have at first, most missed first", () => {
  const rows = [row, { ...row, finished: { ...FINISHED, answers: [0, 0, 1, 2, 2, 2, 1, 0], before: [2] } }];
  rows.push({ ...row, finished: { ...FINISHED, stops: FINISHED.stops.map(() => 0), answers: FINISHED.answers.map(() => 0), before: [0], after: [0] } }); // has not come to anything
  assert.deepEqual(missedBy(rows).map(({ name, first, last, all }) => [name, first, last, all]), [["Answer 7", 0, 0, 2], ["Answer 1", 0, 1, 2], ["Answer 2", 0, 1, 2], ["Answer 6", 0, 2, 2]]);
  assert.deepEqual(learnedBy(rows), [{ name: "Guess", before: 1, after: 2, all: 2 }]);
});

test("an answer is right at first, later or not, and is no more found at first once it was looked at", () => {
  /** @type {Record<string, string>} */
  const kept = {};
  const store = { get: (/** @type {string} */ name) => kept[name] ?? "", set: (/** @type {string} */ name, /** @type {string} */ text) => void (kept[name] = text) };
  const after = (/** @type {boolean[]} */ tries) => (tries.forEach((right) => noteTry(store, tries.join(), right)), triedOf(store, tries.join()));
  assert.deepEqual([[true], [true, false], [false], [false, true], [false, true, false], [false, false]].map(after), ["first", "first", "no", "later", "later", "no"]);
  noteLook(store, "looked");
  noteTry(store, "looked", true);
  assert.equal(triedOf(store, "looked"), "later");
  noteTry(store, "found", true);
  noteLook(store, "found");
  assert.equal(triedOf(store, "found"), "first");
  for (const right of [true, false]) noteBefore(store, "before", right);
  assert.equal(triedOf(store, "before"), "no");
});

test("bad lines one below the other are told together where their fault is the same", () => {
  /** @type {import("../../theme/js/bad-lines.js").BadLines[]} */
  const told = [];
  for (const line of [1, 2, 3, 5]) noteBad(told, { line, why: "no_code" });
  noteBad(told, { line: 6, why: "numbers", values: { title: "Soup" } });
  noteBad(told, { line: 7, why: "numbers", values: { title: "Soup" } });
  noteBad(told, { line: 8, why: "numbers", values: { title: "Walk" } });
  assert.deepEqual(
    told.map(({ line, last }) => [line, last]),
    [[1, 3], [5, 5], [6, 7], [8, 8]],
  );
});
