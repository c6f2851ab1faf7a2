/**
 * The sounds of a count, made in the browser: a river's splash, a kettle's breath, a mill wheel's
 * knock. Each is soft, begins from nothing and is over in less than a second. Where it plays is
 * for whoever asks: on a loudspeaker, or only to be looked at.
 *
 * @typedef {(context: BaseAudioContext, out: AudioNode, start: number) => void} Sound from `start`, seconds on the context's clock
 */

/** @type {Record<string, Sound>} */
export const SOUNDS = {
  river(context, out, start) {
    const splash = breath(context, { kind: "lowpass", from: 400, to: 1400, start, length: 0.7 });
    splash.connect(shaped(context, start, { rise: 0.2, fall: 0.5, peak: 0.22 })).connect(out);
    const drop = tone(context, { from: 420, to: 840, start: start + 0.12, length: 0.14 });
    drop.connect(shaped(context, start + 0.12, { rise: 0.02, fall: 0.11, peak: 0.06 })).connect(out);
  },
  kettle(context, out, start) {
    const steam = breath(context, { kind: "bandpass", from: 2200, to: 2800, start, length: 0.5 });
    steam.connect(shaped(context, start, { rise: 0.15, fall: 0.3, peak: 0.12 })).connect(out);
    const whistle = tone(context, { from: 880, to: 990, start, length: 0.45 });
    whistle.connect(shaped(context, start, { rise: 0.12, fall: 0.3, peak: 0.07 })).connect(out);
  },
  mill(context, out, start) {
    for (const [later, height] of /** @type {const} */ ([[0, 1], [0.16, 0.8]])) {
      const at = start + later;
      const wood = breath(context, { kind: "bandpass", from: 420 * height, to: 300 * height, start: at, length: 0.12 });
      wood.connect(shaped(context, at, { rise: 0.008, fall: 0.1, peak: 0.5 })).connect(out);
      const body = tone(context, { from: 190 * height, to: 120 * height, start: at, length: 0.14 });
      body.connect(shaped(context, at, { rise: 0.008, fall: 0.12, peak: 0.16 })).connect(out);
    }
  },
};

/**
 * @typedef {object} Glide
 * @property {number} from Hz
 * @property {number} to Hz, at its end
 * @property {number} start s
 * @property {number} length s
 */

/**
 * Noise through a filter that glides: water, steam, wood.
 * @param {BaseAudioContext} context
 * @param {Glide & { kind: BiquadFilterType }} glide
 */
function breath(context, { kind, from, to, start, length }) {
  const noise = new AudioBuffer({ length: Math.ceil(context.sampleRate * length), sampleRate: context.sampleRate });
  noise.getChannelData(0).forEach((_, at, samples) => (samples[at] = Math.random() * 2 - 1));
  const source = new AudioBufferSourceNode(context, { buffer: noise });
  const filter = new BiquadFilterNode(context, { type: kind, frequency: from, Q: kind === "lowpass" ? 0.7 : 3 });
  filter.frequency.setValueAtTime(from, start);
  filter.frequency.linearRampToValueAtTime(to, start + length);
  source.start(start);
  return source.connect(filter);
}

/**
 * @param {BaseAudioContext} context
 * @param {Glide} glide
 */
function tone(context, { from, to, start, length }) {
  const made = new OscillatorNode(context, { frequency: from });
  made.frequency.setValueAtTime(from, start);
  made.frequency.linearRampToValueAtTime(to, start + length);
  made.start(start);
  made.stop(start + length);
  return made;
}

/**
 * From nothing up and down to nothing, so that nothing clicks.
 * @param {BaseAudioContext} context
 * @param {number} start s
 * @param {{ rise: number, fall: number, peak: number }} shape s, s, and how loud, 1 being all there is
 */
function shaped(context, start, { rise, fall, peak }) {
  const loudness = new GainNode(context, { gain: 0 });
  loudness.gain.setValueAtTime(0, start);
  loudness.gain.linearRampToValueAtTime(peak, start + rise);
  loudness.gain.linearRampToValueAtTime(0, start + rise + fall);
  return loudness;
}
