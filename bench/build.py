"""Prints what a build costs as lessons grow, beside plain MkDocs with a bare theme and the same words."""

from __future__ import annotations

import argparse
import os
import re
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Callable
from dataclasses import dataclass
from html.parser import HTMLParser
from itertools import pairwise
from pathlib import Path
from statistics import median
from time import perf_counter

ROOT = Path(__file__).parents[1]
sys.path.insert(0, str(ROOT))

from tests.site_project import copy_project  # noqa: E402  # run as a file, beside tests/

BARE = "<!doctype html><html lang=en><meta charset=utf-8><title>{{ page.title }}</title>{{ page.content }}"
PEAK = (  # ru_maxrss of a child that is done: KiB on Linux (getrusage(2)), bytes on macOS
    "import resource, subprocess, sys; code = subprocess.call(sys.argv[1:]);"
    "print(resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss); sys.exit(code)"
)


@dataclass(frozen=True, slots=True)
class Run:
    """One build."""

    seconds: float
    peak: float
    """Largest memory, in MiB."""


@dataclass(frozen=True, slots=True)
class Size:
    """What was measured with so many lessons: medians, in seconds and MiB."""

    lessons: int
    plain: Run
    ours: Run
    changed: Run
    unchanged: Run
    bytes_a_page: float


def main() -> None:
    """Measure each size and print it beside its target."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--lessons", type=int, nargs="+", default=[100, 1000])
    parser.add_argument("--runs", type=int, default=3, help="how often each pair of builds is run")
    chosen = parser.parse_args()
    sizes = []
    for lessons in chosen.lessons:
        with tempfile.TemporaryDirectory() as folder:
            sizes.append(measure(Path(folder), lessons, chosen.runs))
        show(sizes[-1])
    for small, large in pairwise(sizes):
        show_growth(small, large)


def measure(folder: Path, lessons: int, runs: int) -> Size:
    """Build both sites in turn, so that whatever else the machine does meets both."""
    ours, plain = make_ours(folder / "ours", lessons), folder / "plain"
    run(ours)  # its pages are the words of the plain site
    make_plain(plain, ours / "site")
    pairs = [(run(plain), run(ours)) for _ in range(runs)]
    changed = [run(ours, before=lambda: touch(ours)) for _ in range(runs)]
    unchanged = [run(ours) for _ in range(runs)]
    pages = list((ours / "site").rglob("*.html"))
    return Size(
        lessons,
        middle([pair[0] for pair in pairs]),
        middle([pair[1] for pair in pairs]),
        middle(changed),
        middle(unchanged),
        sum(page.stat().st_size for page in pages) / len(pages),
    )


def make_ours(project: Path, lessons: int) -> Path:
    """Copies of one lesson of the demo under other names, without its video."""
    copy_project(project, lessons=False)
    source = min((ROOT / "lessons").glob("*/lesson.yaml"))
    text = re.sub(r"^video:\n(?:[ ].*\n)*", "", source.read_text("utf-8"), flags=re.MULTILINE)
    for number in range(lessons):
        folder = project / "lessons" / f"lesson-{number:04}"
        folder.mkdir()
        titled = re.sub(r"^title: .*", f"title: Lesson {number}", text, count=1, flags=re.MULTILINE)
        (folder / "lesson.yaml").write_text(titled, "utf-8")
    return project


def make_plain(project: Path, site: Path) -> None:
    """The words of every page of ours as Markdown paragraphs, for MkDocs and a theme of one line."""
    (project / "theme").mkdir(parents=True)
    (project / "theme/main.html").write_text(BARE, "utf-8")
    (project / "mkdocs.yml").write_text(
        "site_name: Plain\ntheme: {name: null, custom_dir: theme}\nplugins: []\nuse_directory_urls: false\n",
        "utf-8",
    )
    for page in site.rglob("*.html"):
        file = (project / "docs" / page.relative_to(site)).with_suffix(".md")
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text("\n\n".join(words(page.read_text("utf-8"))), "utf-8")


def words(html: str) -> list[str]:
    """The texts of a page, one paragraph each."""
    found: list[str] = []
    reader = HTMLParser()
    reader.handle_data = lambda data: found.append(data.strip())  # type: ignore[method-assign]  # shorter than a class
    reader.feed(re.sub(r"<(script|style)\b.*?</\1>", "", html, flags=re.DOTALL))
    return [re.sub(r"([\\`*_{}\[\]<>#])", r"\\\1", text) for text in found if text]


def touch(project: Path) -> None:
    """Change one word of one lesson."""
    file = project / "lessons/lesson-0000/lesson.yaml"
    file.write_text(
        re.sub(
            r"^title: (.*)",
            r"title: \1 again",
            file.read_text("utf-8"),
            count=1,
            flags=re.MULTILINE,
        ),
        "utf-8",
    )


def run(project: Path, before: Callable[[], None] = lambda: None) -> Run:
    """Build once, in a process of its own, the way its user does."""
    before()
    ours = (project / "site_data").is_dir()
    program = shutil.which("plumline", path=str(Path(sys.executable).parent)) or "plumline"
    command = [program, "build"] if ours else [sys.executable, "-m", "mkdocs", "build", "-q"]
    began = perf_counter()
    done = subprocess.run(
        [sys.executable, "-c", PEAK, *command],
        cwd=project,
        env={**os.environ, "PYTHONDONTWRITEBYTECODE": "1"},
        capture_output=True,
        text=True,
        check=False,
    )
    seconds = perf_counter() - began
    if done.returncode:
        sys.exit(done.stdout + done.stderr)
    return Run(
        seconds, int(done.stdout.split()[-1]) / (1024 if sys.platform != "darwin" else 1024**2)
    )


def middle(runs: list[Run]) -> Run:
    return Run(median(each.seconds for each in runs), median(each.peak for each in runs))


def show(size: Size) -> None:
    """One size: each figure, its ratio to plain MkDocs, and the target for 1,000 lessons."""
    plain, ours = size.plain, size.ours
    print(f"\n{size.lessons} lessons                 plain     ours    ratio   target")
    rows = [
        ("full build, s", plain.seconds, ours.seconds, "0.50"),
        ("peak memory, MiB", plain.peak, ours.peak, "1.50"),
        ("one lesson changed, s", plain.seconds, size.changed.seconds, "0.03"),
        ("nothing changed, s", plain.seconds, size.unchanged.seconds, "0.06 s"),
    ]
    for name, one, other, target in rows:
        print(f"{name:<24}{one:>10.2f}{other:>9.2f}{other / one:>9.3f}{target:>9}")
    print(f"{'bytes a page':<24}{'':>10}{size.bytes_a_page:>9.0f}")


def show_growth(small: Size, large: Size) -> None:
    """How much longer more lessons take."""
    more, factor = large.ours.seconds / small.ours.seconds, large.lessons / small.lessons
    print(
        f"\n{small.lessons} to {large.lessons} lessons: {more:.2f} times as long, at most {1.05 * factor:.2f}"
    )


if __name__ == "__main__":
    main()
