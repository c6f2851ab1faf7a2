"""A small lesson page, written by hand as the templates write theirs, for tests of the page's script."""

from __future__ import annotations

import json
import subprocess
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

import imageio_ffmpeg

from generator.present.assets.bundle import join_script, sources
from generator.present.policy import content_policy
from generator.read.source import read_source

ROOT = Path(__file__).parents[2]
CHART = {
    "colours": {"#1f5673": "--slate"},
    "ways": [
        {
            "name": name,
            "says": f"It shows {name}.",
            "data": [{"type": "bar", "y": heights, "marker": {"color": "#1f5673"}}],
            "layout": {},
        }
        for name, heights in (("both", [90, 410]), ("the gap", [320]))
    ],
}
PAUSES = [["1.0", "think"], ["2.0", "lunch"], ["2.0", "move"]]


def write_page(folder: Path, *, language: str = "en", library: str = "draw.js") -> None:
    """Write index.html, its script, its video and a figure into a folder."""
    scripts = sources(ROOT / "theme", "js")
    # On a real page the chart comes with a bundle of much else; here it comes by itself.
    scripts["js/chart.js"] = 'import { GapChart } from "./gap-chart.js";\nGapChart.define();\n'
    words = read_source(
        language, (ROOT / "site_data" / "words" / f"{language}.yaml").read_text(encoding="utf-8")
    ).data
    assert isinstance(words, dict)
    for name in ("lesson", "thread", "work", "video", "chart", "play"):
        file = folder / (f"{name}-{language}.js" if name == "play" else f"{name}.js")
        file.write_text(join_script(f"js/{name}.js", scripts, words), encoding="utf-8")
    html = PAGE.format(
        policy=content_policy(), language=language, library=library, pauses=json.dumps(PAUSES)
    )
    (folder / "index.html").write_text(html, encoding="utf-8")
    (folder / "figure.json").write_text(json.dumps(CHART), encoding="utf-8")
    (folder / "clip.mp4").write_bytes(clip())


@cache
def clip() -> bytes:
    """Four seconds of one colour, H.264, 25 pictures a second, a key picture each second."""
    look = "color=c=0x6a1f4f:size=64x36:rate=25:duration=4"
    shape = ["-c:v", "libx264", "-pix_fmt", "yuv420p", "-g", "25", "-movflags", "+faststart"]
    with TemporaryDirectory() as folder:
        path = Path(folder, "clip.mp4")
        program = [imageio_ffmpeg.get_ffmpeg_exe(), "-loglevel", "error"]
        subprocess.run([*program, "-f", "lavfi", "-i", look, *shape, str(path)], check=True)
        return path.read_bytes()


PAGE = """<!doctype html>
<html lang="{language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="{policy}">
<title>Still page</title>
<script defer src="lesson.js"></script>
<script defer src="thread.js"></script>
<script defer src="work.js"></script>
<script defer src="video.js"></script>
<script defer src="chart.js"></script>
</head>
<body>
<main>
<lesson-thread data-lesson="still">
<h1>Still page</h1>
<ol class="thread">
<li><section class="stop stop-watch" id="watch" data-at="0" aria-labelledby="watch-name">
<h2 id="watch-name" tabindex="-1">Watch</h2>
<pause-player data-pauses='{pauses}'>
<video controls preload="auto" playsinline width="320" height="180" src="clip.mp4"></video>
<label hidden><input type="checkbox" checked data-stop-at-pauses> Stop at the pauses</label>
</pause-player>
</section></li>
<li><section class="stop stop-ask" id="think" data-at="1.0" aria-labelledby="think-name">
<h2 id="think-name" tabindex="-1">Think</h2>
<details data-hint><summary>Hint</summary><p>Look at what it is cooked in.</p></details>
<details data-reveal><summary>Check your answer</summary><p>We will find out.</p></details>
<button type="button" data-go-on hidden>Go on</button>
</section></li>
<li><section class="stop stop-compare" id="lunch" data-at="2.0" aria-labelledby="lunch-name">
<h2 id="lunch-name" tabindex="-1">Work out the gap</h2>
<gap-calculator>
<form class="gap-row" id="lunch-row-1" data-first="184" data-second="230" data-gap="46" data-count="4" data-per="10" novalidate>
<label>Gap <input name="gap" inputmode="decimal" autocomplete="off"></label>
<label>Count <input name="count" inputmode="decimal" autocomplete="off"></label>
<button type="submit" data-check hidden>Check</button>
<p class="band" role="status" data-band></p>
<details data-working><summary>Show the working</summary>
<ol class="working"><li>230 − 184 = 46</li><li>46 ÷ 10 = 4, and 6 left over</li></ol>
<p>The pie holds 46 kcal more.</p>
</details>
</form>
<form class="gap-row" id="lunch-total" data-first="184" data-second="230" novalidate>
<details data-working><summary>Show the working</summary><ol class="working"><li>230 − 184 = 46</li></ol><p>In all, 46 kcal.</p></details>
</form>
</gap-calculator>
<gap-chart data-figure="figure.json" data-library="{library}">
<table><caption>Energy on both sides</caption><tr><th scope="row">Pie</th><td>230 kcal</td></tr></table>
<button type="button" data-explore hidden>Explore the chart</button>
</gap-chart>
<button type="button" data-go-on hidden>Go on</button>
</section></li>
<li><section class="stop stop-move" id="move" data-at="2.0" aria-labelledby="move-name">
<h2 id="move-name" tabindex="-1">Move</h2>
<button type="button" data-go-on hidden>Go on</button>
</section></li>
<li><section class="stop stop-watch" id="watch-2" data-at="3.0" aria-labelledby="watch-2-name">
<h2 id="watch-2-name" tabindex="-1">Watch on</h2>
<button type="button" data-play-from="3.0" hidden>Play from 0:03</button>
</section></li>
</ol>
<button type="button" data-clear hidden>Clear what I wrote here</button>
</lesson-thread>
</main>
</body>
</html>
"""
