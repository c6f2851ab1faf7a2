import { say } from "./say.js";

/**
 * Bytes as a family reads them: `1.4 MB`, never nothing.
 * @param {number} bytes
 */
export function megabytes(bytes) {
  return say("size", { size: Math.max(0.1, Math.round(bytes / 100_000) / 10) });
}
