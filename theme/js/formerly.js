/** The script of the pages at addresses of before: it leads on to the same place of the page that is there now. */
import { bringLater } from "./bring-later.js";

bringLater();
addEventListener("DOMContentLoaded", () => {
  const way = document.querySelector(/** @type {"a"} */ ("a[data-way]"));
  if (!way) return;
  way.href = withPlace(way.href);
  if (way.dataset.way) location.replace(way.href);
});

/**
 * Where an old link meant to go: what it named on the page goes along.
 * @param {string} address
 */
function withPlace(address) {
  const to = new URL(address);
  if (location.search) to.search = location.search;
  if (location.hash) to.hash = location.hash;
  return to.href;
}
