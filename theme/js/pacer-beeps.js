/**
 * A soft beep for each count. Silent until asked for, and the browser is asked for sound only in
 * answer to a tap, never before.
 */
export class Beeps {
  /** @type {AudioContext | undefined} */
  context;
  /** @type {OscillatorNode | undefined} */
  coming;

  /** Call it from a tap: browsers let no page sound without one. */
  allow() {
    this.context ??= new AudioContext();
    this.context.resume().catch(() => {}); // no sound then, and the count goes on
  }

  /**
   * Sets the one beep that comes next; on the sound card's own clock, so a busy page does not delay it.
   * @param {number} wait ms
   */
  comeIn(wait) {
    this.hush();
    const { context } = this;
    if (!context) return;
    const start = context.currentTime + Math.max(0, wait) / 1000;
    const tone = context.createOscillator();
    const loudness = context.createGain();
    tone.frequency.value = 523; // Hz, the C above middle C: soft, and heard by older ears too
    loudness.gain.setValueAtTime(0, start);
    loudness.gain.linearRampToValueAtTime(0.12, start + 0.015);
    loudness.gain.linearRampToValueAtTime(0, start + 0.14);
    tone.connect(loudness).connect(context.destination);
    tone.start(start);
    tone.stop(start + 0.15);
    tone.onended = () => {
      if (this.coming === tone) this.coming = undefined;
    };
    this.coming = tone;
  }

  /** Takes back the beep that has not come yet. */
  hush() {
    this.coming?.disconnect();
    this.coming = undefined;
  }
}
