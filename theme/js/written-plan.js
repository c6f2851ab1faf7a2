import { readings } from "./read-tenths.js";

const SUM = /^ *(\p{Nd}[\p{Nd}., ]*?) *([-−–÷:/]) *(\p{Nd}[\p{Nd}., ]*?) *=? *$/u;
const SIGNS = /** @type {Record<string, string>} */ ({ "-": "−", "–": "−", "−": "−", "÷": "÷", ":": "÷", "/": "÷" });

/**
 * Whether the sum that leads to the answer is written down, without its answer: `410 - 90`.
 * @param {string} text
 * @param {string} language
 * @param {[number, number, "−" | "÷"]} wanted both numbers in tenths, in order, and the sign between them
 * @returns {"plan" | "plan_turned" | ""} `plan_turned` where the numbers stand the other way around
 */
export function planOf(text, language, [first, second, sign]) {
  const [, one = "", between = "", other = ""] = text.normalize("NFKC").match(SUM) ?? [];
  if (SIGNS[between] !== sign) return "";
  const [left, right] = [readings(one, language), readings(other, language)];
  if (left.includes(first) && right.includes(second)) return "plan";
  return sign === "−" && left.includes(second) && right.includes(first) ? "plan_turned" : "";
}
