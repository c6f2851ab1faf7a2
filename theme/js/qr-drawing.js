import { svg } from "./svg.js";

const QUIET = 4; // light squares around the code, as ISO/IEC 18004 asks for

/**
 * A QR code as a drawing, by the library that the page loaded: low error correction, or better where
 * it takes no more room, so that its squares are large.
 * @param {string} text
 * @param {string} label
 */
export function qrDrawing(text, label) {
  const code = /** @type {any} */ (window).leanQr.generate(text);
  const whole = code.size + 2 * QUIET;
  const drawn = svg("svg", { viewBox: `0 0 ${whole} ${whole}`, role: "img", "aria-label": label });
  drawn.append(svg("path", { class: "qr-light", d: `M0 0h${whole}v${whole}H0z` }), svg("path", { class: "qr-dark", d: darkSquares(code) }));
  return drawn;
}

/** @param {{ size: number, get: (x: number, y: number) => boolean }} code */
function darkSquares({ size, get }) {
  const places = Array.from({ length: size * size }, (_, at) => [at % size, Math.floor(at / size)]);
  return places.map(([x = 0, y = 0]) => (get(x, y) ? `M${x + QUIET} ${y + QUIET}h1v1h-1z` : "")).join("");
}
