import { announce } from "./announce.js";
import { pauseBetween, untilNext } from "./pause-points.js";
import { Store } from "./store.js";
import { say } from "./words.js";

/**
 * Halts its video at each pause point, once, and moves to the stop that begins there; goes on when
 * the stop's button says so. A stop that is reached gets `pause-reached`.
 */
export class PausePlayer extends HTMLElement {
  static define() {
    customElements.define("pause-player", this);
  }

  connectedCallback() {
    const video = this.querySelector("video");
    if (!video) return;
    this.video = video;
    /** @type {[string, string][]} */
    const pauses = JSON.parse(this.dataset.pauses || "[]");
    this.points = pauses.map(([at, stop]) => ({ at: Number(at), stop }));
    /** @type {Set<string>} */
    this.passed = new Set();
    this.last = -1; // a pause at 0:00 is a pause too
    this.offerSwitch();
    this.offerButtons();
    for (const happened of ["timeupdate", "ended", "seeked", "ratechange"]) video.addEventListener(happened, () => this.look());
    video.addEventListener("play", () => this.watchFrames());
  }

  /** Has the video come to a pause point? While it is held or being dragged, that can wait. */
  look() {
    const { video, last = 0, points = [], passed = new Set() } = this;
    if (!video || video.seeking || (video.paused && !video.ended)) return;
    const now = video.currentTime;
    this.last = now;
    const point = this.isOn() && pauseBetween(points, last, now, passed);
    if (point) this.halt(point);
    else this.lookAgain(untilNext(points, now, passed));
  }

  /**
   * `timeupdate` comes four times a second and a picture may stand for long: a clock of our own for the last stretch.
   * @param {number | undefined} seconds of video
   */
  lookAgain(seconds) {
    clearTimeout(this.timer);
    if (seconds === undefined || seconds > 1) return;
    this.timer = setTimeout(() => this.look(), (seconds * 1000) / (this.video?.playbackRate || 1));
  }

  watchFrames() {
    this.look();
    if (this.video?.requestVideoFrameCallback && !this.video.paused) {
      this.video.cancelVideoFrameCallback(this.frame ?? 0);
      this.frame = this.video.requestVideoFrameCallback(() => this.watchFrames());
    }
  }

  /** @param {import("./pause-points.js").PausePoint} point */
  halt({ stop }) {
    this.video?.pause();
    if (document.fullscreenElement) document.exitFullscreen();
    this.passed?.add(stop);
    const section = document.getElementById(stop);
    const heading = section?.querySelector("h2");
    section?.dispatchEvent(new CustomEvent("pause-reached", { bubbles: true }));
    announce(say("paused", { stop: heading?.firstChild?.textContent ?? "" }));
    heading?.focus();
  }

  /** @param {HTMLElement} section a stop that the learner is done with */
  goOn(section) {
    const at = Number(section.dataset.at);
    this.passed?.add(section.id);
    const waiting = this.isOn() && this.points?.find((point) => point.at === at && !this.passed?.has(point.stop));
    if (waiting) this.halt(waiting);
    else this.playFrom(Math.max(at, this.video?.currentTime ?? 0));
  }

  /** @param {number} seconds */
  playFrom(seconds) {
    const { video } = this;
    if (!video) return;
    this.last = seconds; // the learner chose to go there: nothing in between counts as crossed
    if (seconds !== video.currentTime) video.currentTime = seconds;
    video.focus();
    video.play().catch(() => {}); // there may be no file; its controls say so
  }

  offerButtons() {
    const page = this.closest("lesson-thread") ?? document;
    for (const button of page.querySelectorAll("[data-go-on], [data-play-from]")) {
      if (!(button instanceof HTMLElement)) continue;
      const section = button.closest("section");
      const { playFrom } = button.dataset;
      button.hidden = false;
      button.addEventListener("click", () => (playFrom ? this.playFrom(Number(playFrom)) : section && this.goOn(section)));
    }
  }

  /** Stopping at the pauses can be switched off, for all lessons on this device. */
  offerSwitch() {
    const box = this.querySelector("input");
    if (!box) return;
    const store = new Store("player");
    this.box = box;
    box.checked = store.get("pauses") !== "off";
    box.addEventListener("change", () => store.set("pauses", box.checked ? "on" : "off"));
    box.closest("label")?.removeAttribute("hidden");
  }

  isOn() {
    return this.box?.checked ?? true;
  }
}
