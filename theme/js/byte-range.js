/**
 * The bytes that a `Range` header asks for (RFC 9110, section 14): the first, and the one after
 * the last. Nothing where it asks for several ranges or for what is not there.
 * @param {string} header
 * @param {number} size of the whole, in bytes
 * @returns {[number, number] | null}
 */
export function byteRange(header, size) {
  const [, first = "", last = ""] = /^bytes=(\d*)-(\d*)$/.exec(header.trim()) ?? [];
  if (!first && !last) return null;
  const start = first ? Number(first) : Math.max(0, size - Number(last));
  const end = first && last ? Math.min(Number(last) + 1, size) : size;
  return start < end ? [start, end] : null;
}
