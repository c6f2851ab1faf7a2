/** Signs that look alike on paper; each is read as the first. As in generator/present/stamps/alike.py. */
const LOOK = ["8B", "5S", "2Z", "6G", "QOD0", "VU", "JIL1"];
const ALIKE = new Map(LOOK.flatMap((group) => [...group].map((sign) => [sign, group.charAt(0)])));

const SIX = /^[2-9ACEFHJKMNPQRTVWXY]{6}$/;

/**
 * Whether a typed text can be a stamp at all.
 * @param {string} typed
 */
export function canBeStamp(typed) {
  return SIX.test(alike(typed));
}

/**
 * A stamp as it is looked up: case, spaces and what stands between its signs do not matter.
 * @param {string} typed
 */
export function alike(typed) {
  const signs = typed.toUpperCase().replace(/[^\p{L}\p{N}]/gu, "");
  return [...signs].map((sign) => ALIKE.get(sign) ?? sign).join("");
}
