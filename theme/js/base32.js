/**
 * Crockford's base 32 with its check symbol, as in generator/compute/base32.py, which has the source.
 * A code is longer than whole numbers of a script are exact, so it is a BigInt.
 */

const SYMBOLS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
const CHECK_SYMBOLS = `${SYMBOLS}*~$=U`;
const OF_FOUR = /.{1,4}/g;
/** A hyphen, and what programs make of one. */
const HYPHENS = /[-\u2010\u2011\u2013\u2014\u2212]/g;

/**
 * @param {bigint} number
 * @param {number} length in symbols, without the check symbol
 */
export function encode(number, length) {
  const written = plainSymbols(number, length) + CHECK_SYMBOLS.charAt(Number(number % 37n));
  return (written.match(OF_FOUR) ?? []).join("-");
}

/**
 * A number as so many symbols, without a check symbol and in one group.
 * @param {bigint} number
 * @param {number} length
 */
export function plainSymbols(number, length) {
  let written = "";
  for (let rest = number, left = length; left; left--, rest /= 32n) written = SYMBOLS.charAt(Number(rest % 32n)) + written;
  return written;
}

/**
 * A code as its symbols alone; empty where something in it is none.
 * @param {string} text
 */
export function symbolsOf(text) {
  const plain = text.toUpperCase().replace(HYPHENS, "").replace(/[IL]/g, "1").replace(/O/g, "0");
  return [...plain.slice(0, -1)].every((one) => SYMBOLS.includes(one)) && CHECK_SYMBOLS.includes(plain.slice(-1)) ? plain : "";
}

/**
 * The number of a code.
 * @param {string} text
 * @returns {{ number: bigint, length: number } | "no_symbol" | "wrong_check"}
 */
export function decode(text) {
  const plain = symbolsOf(text);
  if (plain.length < 2) return "no_symbol";
  const number = [...plain.slice(0, -1)].reduce((sum, one) => sum * 32n + BigInt(SYMBOLS.indexOf(one)), 0n);
  return CHECK_SYMBOLS.indexOf(plain.slice(-1)) === Number(number % 37n) ? { number, length: plain.length - 1 } : "wrong_check";
}
