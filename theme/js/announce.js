/** Says something to a screen reader that the eye sees anyway. */

/** @type {HTMLElement | undefined} */
let region;

/** @param {string} text */
export function announce(text) {
  if (!region) {
    region = document.createElement("p");
    region.className = "unseen";
    region.setAttribute("role", "status");
    document.body.append(region);
  }
  region.textContent = text;
}
