/** Numbers as children write them. Inside, a number is a whole count of tenths: exact, and half a gram is five of them. */

/**
 * Reads an answer kindly: units, spaces, thousands signs and half grams are all welcome.
 *
 * Three digits behind a sign are thousands where the language groups by it. A language that is
 * written both ways, as Spanish is, has answers that can be read as either: `1.200`.
 * @param {string} text
 * @param {string} language of the page, with its region: tells a decimal comma from a thousands comma
 * @param {string} [places] words, such as `tens`, after which a number does not count ones
 * @returns {number[]} what it can mean in tenths, with half a tenth for anything finer; nothing for no number or several
 */
export function readings(text, language, places = "") {
  const plain = text
    .normalize("NFKC") // wide digits become digits, ½ becomes 1⁄2, every kind of space a space
    .replace(/\p{Nd}/gu, westernDigit)
    .replace(/^.*=/, "") // "410 - 90 = 320"
    .replace(/ *1⁄2| +1\/2/, ".5");
  const counted = plain.match(/\d ?(\p{L}+)/u)?.[1]?.toLowerCase();
  if (counted && places.split(" ").includes(counted)) return [];
  const sign = /^ *[-−–] ?[\d.,]|[ (][-−–][\d.,]/.test(plain) ? -1 : 1;
  const signs = groupSigns(language);
  const found = signs.map((_, least) => ungrouped(plain, signs.slice(0, signs.length - least)));
  return [...new Set(found)].flatMap((tenths) => (tenths === null ? [] : [tenths && sign * tenths]));
}

/**
 * @param {string} plain
 * @param {string[]} signs that stand between thousands
 */
function ungrouped(plain, signs) {
  let digits = plain;
  for (const sign of signs) digits = digits.replace(new RegExp(`(^|[^\\d.,])([1-9]\\d{0,2}(?:[ ${sign}]\\d{3})+)(?!\\d)`, "g"), (_, before, all) => before + all.replace(/\D/g, ""));
  const numbers = digits.match(/\d*[.,]?\d+/g) ?? [];
  if (numbers.length !== 1) return null;
  const [whole = "", part = ""] = String(numbers).split(/[.,]/);
  return Number(`${whole}${part[0] ?? 0}`) + (/[1-9]/.test(part.slice(1)) ? 0.5 : 0);
}

/**
 * The signs that stand between thousands: that of the language's region first, then that of the language elsewhere.
 * @param {string} language
 */
function groupSigns(language) {
  const decimals = [language, language.split("-")[0]].map((tag) => new Intl.NumberFormat(tag).format(1.5)[1]);
  return [...new Set(decimals.map((sign) => (sign === "," ? "." : ",")))];
}

/**
 * A digit of another script: the ten digits of a script stand side by side.
 * @param {string} digit
 */
function westernDigit(digit) {
  const code = digit.codePointAt(0) ?? 0;
  let zero = code;
  while (/\p{Nd}/u.test(String.fromCodePoint(zero - 1))) zero -= 1;
  return String((code - zero) % 10);
}
