/**
 * A table as CSV (RFC 4180), for spreadsheets and for `plumline report`. Knows no page.
 */

/** Cells that begin so would be worked out by a spreadsheet as a formula (OWASP, CSV injection). */
const FORMULA = /^[=+\-@\t\r]/;
/** By this a spreadsheet knows the letters of any language. */
const BYTE_ORDER = "\ufeff";

/** The columns, by which the report knows them; the same in every language. */
export const COLUMNS = ["label", "lesson", "numbers", "code", "stops", "answers", "before", "after", "minutes"];

/** @param {string[][]} rows without the columns */
export function csvOf(rows) {
  return BYTE_ORDER + [COLUMNS, ...rows].map((row) => row.map(cell).join(",")).join("\r\n") + "\r\n";
}

/** @param {string} text */
export function cell(text) {
  const harmless = FORMULA.test(text) ? `'${text}` : text;
  return /[",\r\n\t]|^\s|\s$/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}
