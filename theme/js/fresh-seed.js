/** A name for a set of practice that nobody has to think of. */
export function freshSeed() {
  return crypto.getRandomValues(new Uint32Array(1))[0]?.toString(36).slice(-5) ?? "";
}
