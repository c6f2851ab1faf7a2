"""Prints how quick the front page is with many lessons: its bytes, its first picture, and one choice."""

from __future__ import annotations

import argparse
import re
import sys
import tempfile
from pathlib import Path
from statistics import median

ROOT = Path(__file__).parents[1]
sys.path.insert(0, str(ROOT))

from bench.measures import launched  # noqa: E402  # run as a file, beside tests/
from bench.measuring.pages import packed  # noqa: E402
from tests.local_server import serving  # noqa: E402
from tests.site_project import build_project, copy_project  # noqa: E402

TARGET = 200
"""ms from a choice to the next picture: "good" of Interaction to Next Paint (web.dev; from memory)."""
ENTRY = re.compile(r'(<ul class="thread lessons">\n)(.*?)(</ul>)', re.DOTALL)
CHOOSE = """value => new Promise(done => {
  const select = document.querySelector('[name=topic]');
  select.value = value;
  const began = performance.now();
  select.dispatchEvent(new Event('change', {bubbles: true}));
  requestAnimationFrame(() => setTimeout(() => done(performance.now() - began)));
})"""
PAINTED = "performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0"


def main() -> int:
    """Build the demo, write its lessons many times over, and time choosing; 1 when it is not at once."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--lessons", type=int, default=1000)
    lessons = parser.parse_args().lessons
    with tempfile.TemporaryDirectory() as folder:
        site = build_project(copy_project(Path(folder)))
        html = many(site / "index.html", lessons)
        with serving(site) as address, launched() as browser:
            page = browser.new_page(viewport={"width": 390, "height": 844})
            session = page.context.new_cdp_session(page)
            session.send("Emulation.setCPUThrottlingRate", {"rate": 4})
            page.goto(f"{address}index.html")
            page.locator("lesson-filter form").wait_for()
            painted = page.evaluate(PAINTED)
            topics = page.locator("[name=topic] option").evaluate_all(
                "all => all.map(each => each.value)"
            )
            slowest = max(
                median(page.evaluate(CHOOSE, topic) for _ in range(5)) for topic in topics
            )
    print(f"{lessons:,} lessons, 4 times throttled")
    print(f"{'HTML packed, bytes':<40}{packed(html):>10,}")
    print(f"{'first picture, ms':<40}{painted:>10,.0f}")
    print(f"{'slowest choice to the next picture, ms':<40}{slowest:>10,.0f}   at most {TARGET}")
    return int(slowest > TARGET)


def many(file: Path, lessons: int) -> bytes:
    """The front page with its entries over and over, each title with a number of its own."""

    def repeated(found: re.Match[str]) -> str:
        entries = [entry for entry in re.split(r"(?=<li data-grades)", found[2]) if entry.strip()]
        numbered = (
            entries[number % len(entries)].replace("</a></h2>", f" {number + 1}</a></h2>")
            for number in range(lessons)
        )
        return found[1] + "".join(numbered) + found[3]

    file.write_text(ENTRY.sub(repeated, file.read_text("utf-8")), "utf-8")
    return file.read_bytes()


if __name__ == "__main__":
    sys.exit(main())
