import { make } from "./make.js";

/**
 * A question before something that cannot be brought back, and its answers; the last one changes
 * nothing and gets the focus.
 * @param {HTMLElement} place what stood here is taken away
 * @param {string} question
 * @param {HTMLButtonElement[]} answers
 */
export function askFirst(place, question, ...answers) {
  const group = make("div", {}, make("p", { textContent: question }), make("p", { className: "buttons" }, ...answers));
  group.setAttribute("role", "group");
  group.setAttribute("aria-label", question);
  place.replaceChildren(group);
  answers[answers.length - 1]?.focus();
}
