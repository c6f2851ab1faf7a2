/** The cases that Python runs too, from tests/examples/. */
import { readFileSync } from "node:fs";

/** @param {string} name of the file, without its ending */
export function examples(name) {
  return JSON.parse(readFileSync(new URL(`../examples/${name}.json`, import.meta.url), "utf-8"));
}

/** @param {string | number} number */
export function tenths(number) {
  return Math.round(Number(number) * 10);
}
