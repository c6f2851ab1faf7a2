import { siteFolder } from "./here.js";
import { canKeep, everyKept } from "./kept.js";
import { thingHere } from "./lesson-store.js";
import { BEFORE, BEGINS } from "./read-store.js";
import { say } from "./say.js";
import { namesOf } from "./things.js";

/**
 * Marks the lessons of the list that somebody began on this device, whoever is here,
 * and those that are kept on it: a sign and a word each.
 */
export async function markLessons() {
  const begun = begunHere();
  for (const row of rows()) {
    for (const old of row.querySelectorAll(".mark")) old.remove();
    if (begun.has(row.dataset.lesson ?? "")) mark(row, "begun", say("lesson_begun"));
  }
  sayBegun(begun);
  if (!canKeep()) return;
  const kept = new Set((await everyKept(siteFolder)).map(([{ folder }]) => folder.href));
  if (kept.size) for (const row of rows()) if (kept.has(folderOf(row))) mark(row, "kept", say("lesson_kept"));
}

/** @returns {NodeListOf<HTMLElement>} */
function rows() {
  return document.querySelectorAll(/** @type {"li"} */ (".lessons > li"));
}

/**
 * Who began the first lesson already is asked to go on.
 * @param {Set<string>} begun
 */
function sayBegun(begun) {
  const way = document.querySelector("[data-begins]");
  const words = way?.firstChild;
  if (way instanceof HTMLElement && words && begun.has(way.dataset.begins ?? "")) words.textContent = say("go_on");
}

/** Folders of the lessons that whoever is here left anything in. */
function begunHere() {
  try {
    const begins = namesOf(thingHere()).flatMap((name) => [BEGINS, BEFORE].map((key) => `${key}${name}/`));
    const found = Object.keys(localStorage).flatMap((key) => begins.filter((begin) => key.startsWith(begin)).map((begin) => key.slice(begin.length)));
    return new Set(found);
  } catch {
    return new Set(); // forbidden: then nothing was begun that anybody knows of
  }
}

/** @param {HTMLElement} row */
function folderOf(row) {
  return new URL(".", row.querySelector("a")?.href).href;
}

/**
 * @param {HTMLElement} row
 * @param {string} name of the sign
 * @param {string} word
 */
function mark(row, name, word) {
  const made = document.createElement("span");
  made.className = "mark";
  const sign = document.createElement("strong");
  sign.className = name;
  sign.textContent = word;
  made.append(" · ", sign);
  row.querySelector("[data-marks]")?.append(made);
}
