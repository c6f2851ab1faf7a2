import { pieces } from "./speakable.js";
import { say } from "./say.js";

/**
 * Puts a button on each stop that reads it aloud, where the browser has a voice of this page's
 * language. Nothing is ever read unasked.
 */
export class ReadAloud {
  static define() {
    if (window.speechSynthesis) new ReadAloud(speechSynthesis).start();
  }

  /** @type {HTMLButtonElement[]} */
  buttons = [];

  /** @param {SpeechSynthesis} speech */
  constructor(speech) {
    this.speech = speech;
  }

  start() {
    const offer = () => this.buttons.length || (this.voice(document.documentElement.lang) && this.offer());
    offer();
    this.speech.addEventListener("voiceschanged", offer); // voices come when they like
    addEventListener("pagehide", () => this.stop());
    for (const happened of ["play", "lesson-cleared"]) document.addEventListener(happened, () => this.stop(), true);
  }

  offer() {
    for (const stop of document.querySelectorAll(".stop")) {
      const button = document.createElement("button");
      button.type = "button";
      button.className = "listen";
      button.setAttribute("aria-pressed", "false");
      button.setAttribute("aria-label", say("read_aloud"));
      button.title = say("read_aloud");
      button.addEventListener("click", () => (isPressed(button) ? this.stop() : this.read(stop, button)));
      stop.querySelector(".stop-head")?.append(button);
      this.buttons.push(button);
    }
  }

  /**
   * @param {Element} stop
   * @param {HTMLButtonElement} button
   */
  read(stop, button) {
    this.stop();
    for (const video of document.querySelectorAll("video")) video.pause();
    const said = pieces(stop).map((piece) => this.utterance(piece));
    const last = said[said.length - 1];
    if (!last) return;
    button.setAttribute("aria-pressed", "true");
    last.onend = last.onerror = () => button.setAttribute("aria-pressed", "false");
    for (const each of said) this.speech.speak(each);
  }

  stop() {
    this.speech.cancel();
    for (const button of this.buttons) button.setAttribute("aria-pressed", "false");
  }

  /** @param {import("./speakable.js").Piece} piece */
  utterance({ text, language }) {
    const utterance = new SpeechSynthesisUtterance(text);
    utterance.lang = language;
    utterance.voice = this.voice(language) ?? null;
    return utterance;
  }

  /**
   * A voice of the device itself: some browsers also list voices that send the text to someone.
   * @param {string} language
   */
  voice(language) {
    const [wanted = ""] = language.toLowerCase().split("-");
    return this.speech.getVoices().find(({ lang, localService }) => localService && lang.toLowerCase().split(/[-_]/)[0] === wanted);
  }
}

/** @param {HTMLButtonElement} button */
function isPressed(button) {
  return button.getAttribute("aria-pressed") === "true";
}
