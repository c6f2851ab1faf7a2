/**
 * A button that looks like all others of the site.
 * @param {(Node | string)[]} inside
 */
export function button(...inside) {
  const made = document.createElement("button");
  made.type = "button";
  made.className = "button";
  made.append(...inside);
  return made;
}
