import { keys } from "./keys.js";
import { make } from "./make.js";
import { say } from "./say.js";

/** What can be chosen; the first is chosen until somebody chooses. */
export const SOUND_NAMES = keys({ quiet: "pacer_quiet", river: "pacer_river", kettle: "pacer_kettle", mill: "pacer_mill" });
const DRAWN = keys({ river: "pacer_beat_river", kettle: "pacer_beat_kettle", mill: "pacer_beat_mill" });

/**
 * The sound that was kept on the device; quiet where there is none of that name.
 * @param {string} kept
 */
export function keptSound(kept) {
  return Object.hasOwn(SOUND_NAMES, kept) ? kept : "quiet";
}

/**
 * A sound in letters, for who hears none: the picture of a beat.
 * @param {string} sound
 */
export function drawnSound(sound) {
  const key = Object.entries(DRAWN).find(([name]) => name === sound)?.[1];
  return key ? say(key) : "";
}

/**
 * One of the sounds, quiet being one of them.
 * @param {string} chosen
 * @param {(sound: string) => void} then
 */
export function soundChoice(chosen, then) {
  const ways = Object.entries(SOUND_NAMES).map(([sound, key]) => {
    const mark = make("input", { type: "radio", name: "pacer-sound", value: sound, checked: sound === chosen, onchange: () => then(sound) });
    return make("label", { className: "choice" }, mark, say(key));
  });
  return make("fieldset", { className: "pacer-sound" }, make("legend", {}, say("pacer_sound")), ...ways);
}
