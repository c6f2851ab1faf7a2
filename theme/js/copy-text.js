/**
 * Copies a text; where that is not allowed, as from a folder, it is selected where it stands.
 * @param {string} text
 * @param {Element} shown where it stands
 * @returns {Promise<boolean>} whether it was copied
 */
export async function copyText(text, shown) {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    getSelection()?.selectAllChildren(shown);
    return false;
  }
}
