"""How late the player halts: 50 pauses in a real Chromium with a real MP4, in each way a video may run.

All of it takes about five minutes. Lateness is how far past the pause point
the video stands when it has halted, in ms of the video's own time; after a seek past a pause, how
far past the moment that was sought.
"""

from __future__ import annotations

import json
import subprocess
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from statistics import median
from urllib.parse import quote
from urllib.request import Request, urlopen

import imageio_ffmpeg

from bench.measuring.process import ROOT
from bench.measuring.row import Case, Row, row
from generator.present.assets.bundle import join_script, sources
from generator.read.library import read_library
from tests import chromium
from tests.conftest import QUIET
from tests.local_server import serving

PAUSES = 50
SPARE = 6
"""More pauses in the video: the first few pass before a tab is hidden."""
APART = 0.617
"""Seconds from pause to pause: no whole number of pictures, which come every 0.04 s."""
PATIENCE = 240
"""Seconds for one run; the clock of a hidden tab ticks once a second, so it goes on late."""
WAYS = {
    "at 1 times the speed": "rate=1",
    "at 0.75 times the speed": "rate=0.75",
    "at 1.5 times the speed": "rate=1.5",
    "right after a seek past one": "rate=1&seek=1",
    "without frame callbacks": "rate=1&frames=none",
    "in a hidden tab": "rate=1&hidden=1",
    "in a hidden tab, without sound": "rate=1&hidden=1&silent=1",
}


def rows(case: Case) -> Iterator[Row]:
    """Median, worst and earliest of each way."""
    pauses = 3 if case.small else PAUSES
    ways = list(WAYS.items())[: 1 if case.small else None]
    with tempfile.TemporaryDirectory() as name, serving(Path(name)) as address:
        write_page(Path(name), pauses)
        for title, way in ways:
            found = measure(f"{address}?{way}", hidden="hidden" in way)
            yield row("pause_median", median(found), title)
            yield row("pause_worst", max(found), title)
            yield row("pause_early", min(found), title)


def measure(address: str, *, hidden: bool) -> list[float]:
    """Lateness in ms at every pause of one run; the page tells it by its title."""
    with browser() as ask:
        ask("PUT", f"/json/new?{quote(address)}")
        for _ in range(PATIENCE):
            time.sleep(1)
            titles = [tab["title"] for tab in ask("GET", "/json/list") if tab["url"] == address]
            if hidden and titles == ["playing"]:  # a tab that was never seen loads no video
                ask(
                    "PUT", "/json/new?about:blank"
                )  # the tab in front; what is behind it now counts
                hidden = False
            if titles and titles[0].startswith("["):
                found: list[float] = json.loads(titles[0])
                return found
    raise TimeoutError(f"{address} did not come to its end: {titles}")


@contextmanager
def browser() -> Iterator[Ask]:
    """A Chromium of its own, asked through plain addresses: a debugger would keep its tabs awake."""
    program = chromium.find()
    if program is None:
        raise SystemExit(chromium.WAY_OUT)
    with tempfile.TemporaryDirectory(ignore_cleanup_errors=True) as profile:
        flags = [*QUIET, "--headless", "--no-sandbox", "--remote-debugging-port=0"]
        allow = ["--autoplay-policy=no-user-gesture-required", f"--user-data-dir={profile}"]
        process = subprocess.Popen([program, *flags, *allow], stderr=subprocess.DEVNULL)
        try:
            yield Ask(Path(profile, "DevToolsActivePort"))
        finally:
            process.terminate()
            process.wait()


class Ask:
    """Questions to the browser, once it has written where it listens."""

    def __init__(self, file: Path) -> None:
        for _ in range(100):
            if file.exists() and file.read_text("utf-8"):
                break
            time.sleep(0.1)
        self._port = file.read_text("utf-8").split()[0]

    def __call__(self, method: str, path: str) -> list[dict[str, str]]:
        request = Request(f"http://127.0.0.1:{self._port}{path}", method=method)
        with urlopen(request) as answer:  # the browser, on this machine
            told: list[dict[str, str]] = json.load(answer)
        return told


def write_page(folder: Path, pauses_asked: int) -> None:
    """A lesson of nothing but pauses, with the script of the real pages."""
    scripts = sources(ROOT / "theme", "js")
    words = read_library(ROOT).words["en"].texts
    for name in ("thread.js", "video.js"):
        (folder / name).write_text(join_script(f"js/{name}", scripts, words), "utf-8")
    pauses = [
        [f"{number * APART:.3f}", f"stop-{number}"] for number in range(1, PAUSES + SPARE + 1)
    ]
    stops = "\n".join(
        f'<li><section class="stop" id="{stop}" data-at="{at}"><h2 tabindex="-1">Stop</h2>'
        f'<button type="button" data-go-on hidden>Go on</button></section></li>'
        for at, stop in pauses
    )
    (folder / "index.html").write_text(PAGE.format(pauses=json.dumps(pauses), stops=stops), "utf-8")
    run = RUN.replace("{apart}", str(APART)).replace("{pauses}", str(pauses_asked))
    (folder / "run.js").write_text(run, "utf-8")
    for name, sound in (("clip", SOUND), ("silent", [])):
        make_clip(folder / f"{name}.mp4", sound)


def make_clip(file: Path, sound: list[str]) -> None:
    """A test picture as long as all pauses, H.264, with a tone or without."""
    look = f"testsrc=size=640x360:rate=25:duration={(PAUSES + SPARE + 2) * APART:.2f}"
    shape = ["-c:v", "libx264", "-pix_fmt", "yuv420p", "-g", "25", "-movflags", "+faststart"]
    program = [imageio_ffmpeg.get_ffmpeg_exe(), "-loglevel", "error", "-f", "lavfi", "-i", look]
    subprocess.run([*program, *sound, *shape, str(file)], check=True)


SOUND = ["-f", "lavfi", "-i", "sine=frequency=220", "-c:a", "aac", "-shortest"]

PAGE = """<!doctype html>
<html lang="en">
<meta charset="utf-8">
<title>Nothing but pauses</title>
<script defer src="run.js"></script>
<script defer src="thread.js"></script>
<script defer src="video.js"></script>
<lesson-thread data-lesson="pauses">
<pause-player data-pauses='{pauses}'>
<video controls preload="auto" playsinline width="640" height="360" src="clip.mp4"></video>
</pause-player>
<ol>{stops}</ol>
</lesson-thread>
"""

# Goes on at every stop, as soon as it has stood for a while, and tells at the end how late each was.
RUN = """
const asked = new URLSearchParams(location.search);
const video = document.querySelector("video");
const apart = {apart}, late = [];
let sought = 0; // where it was sent past the pause; 0 where it ran into it
if (asked.has("frames")) HTMLVideoElement.prototype.requestVideoFrameCallback = undefined;
addEventListener("pause-reached", ({ target }) => setTimeout(() => {
  const at = Number(target.dataset.at);
  if (!asked.has("hidden") || document.hidden) late.push(Math.round((video.currentTime - (sought || at)) * 1000));
  if (late.length === {pauses}) return (document.title = JSON.stringify(late));
  target.querySelector("[data-go-on]").click();
  if (asked.has("seek")) setTimeout(() => (video.currentTime = sought = at + apart + 0.1), 60);
}, 60));
// To save power a browser may itself halt a video that nobody sees or hears: then it is started again.
video.addEventListener("pause", () => {
  const before = late.length;
  setTimeout(() => video.paused && late.length === before && video.play(), 1500);
});
video.addEventListener("playing", () => (document.title = "playing"), { once: true });
if (asked.has("silent")) video.src = "silent.mp4";
addEventListener("load", () => {
  video.defaultPlaybackRate = video.playbackRate = Number(asked.get("rate"));
  video.play();
});
"""
