/** Numbers as children write them. Inside, a number is a whole count of tenths: exact, and half a gram is five of them. */

/**
 * Reads an answer kindly: units, spaces, thousands signs and half grams are all welcome.
 * @param {string} text
 * @param {string} language tells a decimal comma from a thousands comma
 * @returns {number | null} tenths, with half a tenth for anything finer; nothing for no number or several
 */
export function readTenths(text, language) {
  const group = decimalSign(language) === "," ? "." : ",";
  const plain = text
    .normalize("NFKC") // wide digits become digits, ½ becomes 1⁄2, every kind of space a space
    .replace(/^.*=/, "") // "410 - 90 = 320"
    .replace(/ *1⁄2| +1\/2/, ".5")
    .replace(new RegExp(`(\\d)[ ${group}](?=\\d{3}(?!\\d))`, "g"), "$1");
  const numbers = plain.match(/\d*[.,]?\d+/g) ?? [];
  if (numbers.length !== 1) return null;
  const [whole = "", part = ""] = String(numbers).split(/[.,]/);
  return Number(`${whole}${part[0] ?? 0}`) + (/[1-9]/.test(part.slice(1)) ? 0.5 : 0);
}

/** @param {string} language */
function decimalSign(language) {
  return new Intl.NumberFormat(language).format(1.5)[1];
}
