import { button } from "./button.js";

/**
 * An element with its properties and what is inside it.
 * @template {keyof HTMLElementTagNameMap} Tag
 * @param {Tag} tag
 * @param {Partial<Omit<HTMLElementTagNameMap[Tag], "style">>} properties
 * @param {(Node | string)[]} inside
 */
export function make(tag, properties = {}, ...inside) {
  const made = document.createElement(tag);
  Object.assign(made, properties);
  made.append(...inside);
  return made;
}

/**
 * A button that does something.
 * @param {string} text
 * @param {() => void} then
 * @param {string} [look] `filled` for the way on
 */
export function makeButton(text, then, look) {
  const made = button(text);
  if (look) made.classList.add(look);
  made.onclick = then;
  return made;
}

/**
 * Something to switch on and off.
 * @param {string} text
 * @param {boolean} on
 * @param {(on: boolean) => void} then
 */
export function makeSwitch(text, on, then) {
  const box = make("input", { type: "checkbox", checked: on, onchange: () => then(box.checked) });
  return make("label", { className: "switch" }, box, text);
}
