/**
 * A button of the house's look.
 * @param {(Node | string)[]} inside
 */
export function button(...inside) {
  const made = document.createElement("button");
  made.type = "button";
  made.className = "button";
  made.append(...inside);
  return made;
}
