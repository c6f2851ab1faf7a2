const page = document.documentElement;

/**
 * Shows what of a screen lies below its edge, with its last two lines still in sight: what leads on
 * skips nothing, also by a hand-held remote, which has no key to scroll.
 * @returns {boolean} whether there was any, a line of words at least
 */
export function showMoreBelow() {
  const line = parseFloat(getComputedStyle(page).fontSize);
  if (page.scrollHeight - page.clientHeight - page.scrollTop < line) return false;
  page.scrollBy(0, page.clientHeight - (document.querySelector("[data-bar]")?.clientHeight ?? 0) - 2 * line);
  return true;
}
