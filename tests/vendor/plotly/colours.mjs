/* The colours of CSS that a chart is given; the whole of culori knows forty spaces more. */
import { converter, formatHex, formatRgb, modeHsl, modeLrgb, modeRgb, useMode, wcagContrast, wcagLuminance } from "culori/fn";

for (const mode of [modeRgb, modeLrgb, modeHsl]) useMode(mode);

export { converter, formatHex, formatRgb, wcagContrast, wcagLuminance };
