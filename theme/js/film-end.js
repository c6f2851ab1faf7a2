import { announce } from "./announce.js";
import { leaveFullScreen } from "./full-screen.js";
import { make } from "./make.js";
import { say } from "./say.js";
import { showStop } from "./show-stop.js";

/** The end of a film: said below it, and it leads to what comes after the stops that it tells of. */
export class FilmEnd {
  said = make("p", { className: "band", hidden: true });

  /**
   * @param {HTMLVideoElement} video
   * @param {AbortSignal} signal
   */
  constructor(video, signal) {
    this.video = video;
    video.after(this.said);
    video.addEventListener("ended", () => this.tell(), { signal });
    video.addEventListener("play", () => (this.said.hidden = true), { signal });
    signal.addEventListener("abort", () => this.said.remove());
  }

  async tell() {
    const { said, video } = this;
    const next = afterLast();
    const heading = next?.querySelector("h2")?.firstChild?.textContent ?? "";
    said.replaceChildren(say("film_over"));
    if (next) said.append(" ", make("a", { href: `#${next.id}` }, heading));
    said.hidden = false;
    const active = document.activeElement;
    await leaveFullScreen(video);
    announce(said.textContent ?? "");
    if (next && (active === video || active === document.body)) showStop(next); // whoever is at work elsewhere stays there
  }
}

/** The stop after the last that has a time in the film. */
function afterLast() {
  const stops = [...document.querySelectorAll(".stop")];
  const last = stops.map((stop) => stop.hasAttribute("data-at")).lastIndexOf(true);
  return stops[last + 1];
}
