import { announce } from "./announce.js";
import { tellOf } from "./events.js";
import { bringPlay } from "./play-loader.js";
import { say } from "./say.js";

/**
 * Brings play in answer to a button, then tells what is asked of it; a button whose play does not
 * come says so until it is pressed again.
 * @param {HTMLElement} pressed
 * @param {string} offer what the button says
 * @param {"count-along" | "deal-asked"} happening
 * @param {Element} where it is told
 */
export async function askPlay(pressed, offer, happening, where = pressed) {
  try {
    await bringPlay();
    pressed.textContent = offer;
    tellOf(where, happening);
  } catch {
    pressed.textContent = say("play_failed");
    announce(say("play_failed"));
  }
}
