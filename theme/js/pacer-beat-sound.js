import { SOUNDS } from "./pacer-sounds.js";

/**
 * A sound for each count. Silent until one is chosen, and the browser is asked for sound only in
 * answer to a tap, never before.
 */
export class BeatSound {
  /** @type {AudioContext | undefined} */
  context;
  /** @type {{ number: number, out: AudioNode } | undefined} */
  coming;

  /** Call it from a tap: browsers let no page sound without one. */
  allow() {
    if (!("AudioContext" in window)) return; // no sound then, and the count goes on
    this.context ??= new AudioContext();
    this.context.resume().catch(() => {}); // nor then
  }

  /**
   * Sets the sound of the number that comes next, once; on the sound card's own clock, so a busy page does not delay it.
   * @param {string} sound
   * @param {number} number
   * @param {number} wait ms
   */
  comeIn(sound, number, wait) {
    const { context } = this;
    const make = SOUNDS[sound];
    if (!context || !make || this.coming?.number === number) return;
    const out = new GainNode(context);
    out.connect(context.destination);
    make(context, out, context.currentTime + Math.max(0, wait) / 1000);
    this.coming = { number, out }; // the one before has come and rings out
  }

  /** Takes back what has not come yet, and what still rings. */
  hush() {
    this.coming?.out.disconnect();
    this.coming = undefined;
  }
}
