/** Words for a screen reader about what the eye sees anyway. */

const region = unseen();
region.setAttribute("role", "status");

/** @param {string} text to be said now */
export function announce(text) {
  if (!region.isConnected) document.body.append(region);
  region.textContent = text;
}

/** A piece of text that is heard and not seen. */
export function unseen() {
  const text = document.createElement("span");
  text.className = "unseen";
  return text;
}
