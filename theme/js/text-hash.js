/**
 * 32 bits of a text by FNV-1a, as in generator/compute/text_hash.py. Knows no page.
 * @param {string} text
 */
export function textHash(text) {
  return new TextEncoder().encode(text).reduce((state, byte) => Math.imul(state ^ byte, 0x01000193) >>> 0, 0x811c9dc5);
}
