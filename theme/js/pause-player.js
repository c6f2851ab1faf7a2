import { announce } from "./announce.js";
import { showCaptions } from "./captions-shown.js";
import { tellOf } from "./events.js";
import { FilmEnd } from "./film-end.js";
import { FilmPlace } from "./film-place.js";
import { leaveFullScreen } from "./full-screen.js";
import { LiveElement } from "./live-element.js";
import { watchForLoss } from "./missing-video.js";
import { pauseBetween, untilNext } from "./pause-points.js";
import { say } from "./say.js";
import { endsHere, goAfter, showStop } from "./show-stop.js";
import { Store } from "./store.js";
import { clock } from "./transcript-lines.js";
import { WholeFilm } from "./whole-film.js";

/**
 * Halts its video at each pause point whenever it comes there, and moves to the stop that begins there; goes on when
 * the stop's button says so. A stop that is reached gets `pause-reached`. Where the video does not
 * come, it says so, and the stops lead on without it.
 */
export class PausePlayer extends LiveElement {
  static define() {
    customElements.define("pause-player", this);
  }

  /** @type {HTMLInputElement | null} */
  box = null;
  isMissing = false;
  /** @type {import("./pause-points.js").PausePoint[]} */
  points = [];
  /** @type {Set<string>} */
  passed = new Set();
  last = -1; // a pause at 0:00 is a pause too

  /** @param {AbortSignal} signal */
  connected(signal) {
    const video = this.querySelector("video");
    if (!video) return;
    const asked = JSON.parse(this.dataset.pauses || "[]").filter(([, stop = ""]) => document.getElementById(stop)); // a class link leaves some out
    this.points = asked.map(([at = "", stop = ""]) => ({ at: Number(at), stop }));
    this.box = this.querySelector("input");
    showCaptions(video, signal);
    new FilmEnd(video, signal);
    new FilmPlace(video, (seconds) => this.resume(video, seconds), signal);
    this.film = new WholeFilm(video, signal);
    video.addEventListener("seeking", () => this.answerSeek(video), { signal });
    for (const happened of ["timeupdate", "ended", "seeked", "ratechange"]) video.addEventListener(happened, () => this.look(video), { signal });
    video.addEventListener("play", () => this.watchFrames(video), { signal });
    signal.addEventListener("abort", () => clearTimeout(this.timer));
    this.watchCues(video, signal);
    this.offerButtons(video, signal);
    this.offerSwitch(signal);
    watchForLoss(video, (isMissing) => this.tellLoss(video, isMissing), signal);
    if (!video.paused) this.watchFrames(video); // it was started before this script came
  }

  /**
   * Has the video come to a pause point? While it is held or being dragged, that can wait.
   * @param {HTMLVideoElement} video
   */
  look(video) {
    if (video.seeking || (video.paused && !video.ended)) return;
    const { last, points, passed } = this;
    const now = (this.last = video.currentTime);
    const point = this.isOn() && pauseBetween(points, last, now, passed);
    clearTimeout(this.timer);
    if (point) {
      this.halt(video, point.stop);
      return;
    }
    // `timeupdate` comes four times a second and a picture may stand for long: a clock of our own for the last second.
    const seconds = untilNext(points, now, passed);
    if (seconds < 1) this.timer = setTimeout(() => this.look(video), (seconds * 1000) / video.playbackRate);
  }

  /**
   * In a hidden tab no picture is shown and clocks tick once a second; captions keep their time there too.
   * @param {HTMLVideoElement} video
   * @param {AbortSignal} signal
   */
  watchCues(video, signal) {
    const track = video.addTextTrack("metadata");
    track.mode = "hidden";
    for (const { at } of this.points) {
      const cue = new VTTCue(at, at + 1, "");
      cue.addEventListener("enter", () => this.look(video), { signal });
      track.addCue(cue);
    }
  }

  /** @param {HTMLVideoElement} video */
  watchFrames(video) {
    this.look(video);
    if (video.paused || !video.requestVideoFrameCallback) return;
    video.cancelVideoFrameCallback(this.frame ?? 0);
    this.frame = video.requestVideoFrameCallback(() => this.watchFrames(video));
  }

  /**
   * @param {HTMLVideoElement} video
   * @param {string} stop
   */
  async halt(video, stop) {
    video.pause();
    this.passed.add(stop);
    const section = document.getElementById(stop);
    tellOf(section, "pause-reached");
    this.nameButtons(video);
    await leaveFullScreen(video);
    announce(say("video_paused", { stop: section?.querySelector("h2")?.firstChild?.textContent ?? "" }));
    showStop(section);
  }

  /**
   * @param {HTMLVideoElement} video
   * @param {HTMLElement} section a stop that the learner is done with
   */
  goOn(video, section) {
    const at = Number(section.dataset.at || -1);
    this.passed.add(section.id);
    if (this.isMissing || video.ended || endsHere(section)) return goAfter(section);
    const waiting = this.waitingAt(at);
    if (waiting) this.halt(video, waiting.stop);
    else {
      video.focus();
      this.playFrom(video, Math.max(at, video.currentTime));
    }
  }

  /**
   * Another stop of the same moment, which has its turn before the film goes on.
   * @param {number} at seconds
   */
  waitingAt(at) {
    return this.isOn() ? this.points.find((point) => point.at === at && !this.passed.has(point.stop)) : undefined;
  }

  /**
   * Where the film has not yet been, a button says where it will go on.
   * @param {HTMLVideoElement} video
   */
  nameButtons(video) {
    for (const button of document.querySelectorAll("[data-go-on]")) {
      const section = /** @type {HTMLElement | null} */ (button.closest("section"));
      const at = Number(section?.dataset.at || -1);
      const others = this.isOn() && this.points.some((point) => point.at === at && point.stop !== section?.id && !this.passed.has(point.stop));
      const name = at > video.currentTime + 0.1 && !others && !this.isMissing && !endsHere(section) ? say("go_on_from", { at: clock(at) }) : say("go_on");
      if (button.textContent !== name) button.textContent = name;
    }
  }

  /**
   * Goes on where somebody was, at the question if one was still open there.
   * @param {HTMLVideoElement} video
   * @param {number} seconds
   */
  async resume(video, seconds) {
    const isOpen = (/** @type {string} */ stop) => !document.getElementById(stop)?.closest("li")?.hasAttribute("data-done");
    for (const { at, stop } of this.points) if (at <= seconds - 1 || (at <= seconds && !isOpen(stop))) this.passed.add(stop);
    const open = this.isOn() && this.points.find(({ at, stop }) => at <= seconds && !this.passed.has(stop));
    if (open) {
      await this.goTo(video, seconds);
      return this.halt(video, open.stop);
    }
    video.focus();
    this.playFrom(video, seconds);
  }

  /**
   * @param {HTMLVideoElement} video
   * @param {number} seconds
   */
  async playFrom(video, seconds) {
    await this.goTo(video, seconds);
    video.play().catch(() => {}); // there may be no file; its controls say so
  }

  /**
   * @param {HTMLVideoElement} video
   * @param {number} seconds
   */
  async goTo(video, seconds) {
    if (seconds !== video.currentTime) {
      if (!this.film?.isNeeded) video.currentTime = seconds;
      else if (!(await this.film.bring(seconds))) seconds = video.currentTime;
    }
    this.last = seconds; // the learner chose to go there: nothing in between counts as crossed
  }

  /**
   * Who goes back meets the pauses anew. A film that cannot be sought in goes back to its beginning:
   * then it is fetched, and stands where it stood.
   * @param {HTMLVideoElement} video
   */
  answerSeek(video) {
    const { last } = this;
    if (video.currentTime >= last) return;
    if (this.film?.isNeeded && last > 0) this.film.bring(last);
    else {
      this.last = video.currentTime; // now: when a busy page looks again, the film may be past the pause
      this.armAfter(this.last);
    }
  }

  /**
   * @param {HTMLVideoElement} video
   * @param {AbortSignal} signal
   */
  offerButtons(video, signal) {
    for (const button of document.querySelectorAll("[data-go-on], button[data-play-from]")) button.removeAttribute("hidden");
    this.nameButtons(video);
    for (const happened of ["timeupdate", "seeked", "emptied"]) video.addEventListener(happened, () => this.nameButtons(video), { signal });
    const asked = (/** @type {Event} */ event) => this.answerClick(video, event);
    document.addEventListener("click", asked, { signal });
  }

  /**
   * @param {HTMLVideoElement} video
   * @param {Event} event
   */
  answerClick(video, event) {
    const asked = /** @type {Element} */ (event.target).closest(/** @type {"button"} */ ("[data-go-on], [data-play-from]"));
    const section = asked?.closest("section");
    const from = asked?.dataset.playFrom;
    if (from && !this.isMissing) {
      event.preventDefault(); // a link to the stop, where there is no video
      if (!asked.closest("video-transcript")) video.focus(); // who reads stays with the reading
      this.armAfter(Number(from));
      this.playFrom(video, Number(from));
    } else if (section && !from) this.goOn(video, section);
  }

  /**
   * Who chooses a moment meets the pauses after it anew.
   * @param {number} seconds
   */
  armAfter(seconds) {
    for (const { at, stop } of this.points) if (at > seconds) this.passed.delete(stop);
  }

  /**
   * Without the film no button offers to play it.
   * @param {HTMLVideoElement} video
   * @param {boolean} isMissing
   */
  tellLoss(video, isMissing) {
    this.isMissing = isMissing;
    const sentence = this.querySelector("[data-missing]");
    sentence?.toggleAttribute("hidden", !isMissing);
    for (const button of document.querySelectorAll("button[data-play-from]:not(video-transcript *), .go-on-film")) button.toggleAttribute("hidden", isMissing);
    this.nameButtons(video);
    if (isMissing) announce(sentence?.textContent ?? "");
  }

  /**
   * Stopping at the pauses can be switched off, for all lessons on this device.
   * @param {AbortSignal} signal
   */
  offerSwitch(signal) {
    const { box } = this;
    if (!box) return;
    const store = new Store("player");
    box.checked = store.get("pauses") !== "off";
    box.addEventListener("change", () => store.set("pauses", box.checked ? "on" : "off"), { signal });
    box.closest("label")?.removeAttribute("hidden");
  }

  isOn() {
    return this.box?.checked ?? true;
  }
}
