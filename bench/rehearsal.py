"""How long a rehearsal of three minutes takes: drawing its slides, and encoding its video."""

from __future__ import annotations

import statistics
import sys
from pathlib import Path
from tempfile import TemporaryDirectory
from time import perf_counter

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from generator.compute.work_out import work_out  # noqa: E402  # the path above leads there
from generator.model.lesson import Lesson  # noqa: E402
from generator.present.recording.rehearsal import rehearsal  # noqa: E402
from generator.present.words.say import Say  # noqa: E402
from generator.read.lesson import read_lesson  # noqa: E402
from generator.read.library import read_library  # noqa: E402
from generator.write.rehearsal import write_rehearsal  # noqa: E402

LESSON = "soup-night"
MUST = 3.0
"""Seconds; the figure to reach."""
RUNS = 5


def main() -> None:
    """Print the medians of several runs, and whether the figure is reached."""
    library = read_library(ROOT)
    lesson = read_lesson(ROOT, f"lessons/{LESSON}/lesson.yaml", library, filmed=False)
    if not isinstance(lesson, Lesson):
        raise SystemExit("\n".join(map(str, lesson)))
    result, say = work_out(lesson, library), Say(library.words["en"])
    drawing, encoding, length = [], [], 0
    for _ in range(RUNS):
        start = perf_counter()
        made = rehearsal(result, say, ROOT / "theme")
        drawn = perf_counter()
        with TemporaryDirectory() as folder:
            length = write_rehearsal(made, Path(folder)).seconds
        drawing.append(drawn - start)
        encoding.append(perf_counter() - drawn)
    draw, encode = statistics.median(drawing), statistics.median(encoding)
    print(f"{LESSON}: a video of {length} s, median of {RUNS} runs")
    print(f"  slides {draw:.2f} s, video {encode:.2f} s, together {draw + encode:.2f} s")
    print(
        f"  at most {MUST:.0f} s is asked for: {'reached' if draw + encode <= MUST else 'missed'}"
    )


if __name__ == "__main__":
    main()
