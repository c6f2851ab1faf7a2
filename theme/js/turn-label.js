/**
 * A button that does one thing and then the other: each is written in it, and the styles show one of them.
 * @param {Element | null | undefined} button with `data-turns`
 * @param {boolean} second whether it offers the second now
 */
export function turnLabel(button, second) {
  button?.toggleAttribute("data-turned", second);
}
