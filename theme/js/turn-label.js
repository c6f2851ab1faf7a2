/**
 * A button that does one thing and then the other: each is written in it, and one of them is seen.
 * @param {Element | null | undefined} button with two parts
 * @param {boolean} second whether it offers the second now
 */
export function turnLabel(button, second) {
  const [first, other] = button?.children ?? [];
  first?.toggleAttribute("hidden", second);
  other?.toggleAttribute("hidden", !second);
}
