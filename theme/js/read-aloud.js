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
    const all = pieces(stop);
    const said = all.flatMap((piece) => this.utterance(piece) ?? []);
    this.tell(stop, said.length < all.length ? say("read_aloud_no_voice") : "");
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

  /**
   * @param {Element} stop
   * @param {string} text that something of it was left unread; nothing where all was read
   */
  tell(stop, text) {
    const known = stop.querySelector("[data-unread]");
    if (!known && !text) return;
    const told = known ?? document.createElement("p");
    told.setAttribute("data-unread", "");
    told.setAttribute("role", "status");
    if (!known) stop.querySelector(".stop-head")?.after(told);
    told.textContent = text;
  }

  /**
   * Nothing where the device has no voice of the language: left to choose, a browser may take one
   * that sends the text to someone.
   * @param {import("./speakable.js").Piece} piece
   */
  utterance({ text, language }) {
    const voice = this.voice(language);
    if (!voice) return null;
    const utterance = new SpeechSynthesisUtterance(text);
    utterance.lang = language;
    utterance.voice = voice;
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
