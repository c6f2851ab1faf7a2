/** The forms of a lesson whose answers count, in the order of the page; what is asked before as well as after counts the second time. */
export const COUNTED = ".gap-row, asked-answer form:not([data-before]), day-balance form";

/**
 * What the answers of a form are kept under, each once; none where all of it is worked out.
 * @param {HTMLFormElement} form
 */
export function answerNames(form) {
  const begins = form.closest("day-balance") ? `day ${form.closest("section")?.id}` : form.id;
  const names = [...form.querySelectorAll("input")].map(({ name }) => name);
  const counted = form.closest("day-balance") ? names.filter((name) => name === "lean") : names;
  return [...new Set(counted)].map((name) => `${begins} ${name}`);
}
