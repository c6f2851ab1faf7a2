"""What a build costs as lessons grow, beside plain MkDocs with a bare theme and the same words."""

from __future__ import annotations

import shutil
import tempfile
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

from bench.measuring.process import MKDOCS, PLUMLINE, Run, middle, run
from bench.measuring.row import Case, NothingMeasuredError, Row, row, told
from bench.measuring.sites import change_food, change_lesson, make_ours, make_plain


@dataclass(frozen=True, slots=True)
class Size:
    """What was measured with so many lessons."""

    plain: Run
    full: Run
    pages: int
    bytes_a_page: float


def rows(case: Case) -> Iterator[Row]:
    """Builds of a tenth of the lessons and of all of them."""
    few = max(case.lessons // 10, 1)
    with tempfile.TemporaryDirectory() as name:
        small = _full(Path(name) / "few", few, case.runs)
        folder = Path(name) / "many"
        large = _full(folder, case.lessons, case.runs)
        yield told("plain MkDocs, full build", large.plain.seconds, "s")
        yield told("plain MkDocs, a page", large.plain.seconds * 1000 / large.pages, "ms")
        yield told("ours, full build", large.full.seconds, "s")
        yield told("ours, a page of equal text", large.full.seconds * 1000 / large.pages, "ms")
        yield row("full", large.full.seconds / large.plain.seconds)
        factor = 10 * few / case.lessons  # 1 where the lessons divide by ten
        yield row("growth", large.full.seconds / small.full.seconds * factor)
        yield row("bytes", large.bytes_a_page / small.bytes_a_page)
        yield told("plain MkDocs, peak memory", large.plain.peak, "MiB")
        yield told("ours, peak memory", large.full.peak, "MiB")
        yield row("memory", large.full.peak / large.plain.peak)
        ours = folder / "ours"
        for key, change in (("lesson", change_lesson), ("food", change_food)):
            changed = middle(_changed(ours, change, case.runs))
            yield told(f"ours, one {key} changed", changed.seconds, "s")
            yield row(key, changed.seconds / large.plain.seconds)
        yield row("nothing", middle(run(_BUILD, ours) for _ in range(max(case.runs, 3))).seconds)


_BUILD = (*PLUMLINE, "build")


def _full(folder: Path, lessons: int, runs: int) -> Size:
    """Both sites in turn, so that whatever else the machine does meets both; each from nothing."""
    folder.mkdir()
    ours = make_ours(folder / "ours", lessons)
    run(_BUILD, ours)  # compiles, and its pages are the words of the plain site
    plain = make_plain(folder / "plain", ours / "site")
    pairs = [(_plain(plain), _from_nothing(ours)) for _ in range(runs)]
    pages = list((ours / "site").rglob("*.html"))
    if len(pages) < lessons:
        raise NothingMeasuredError(f"{lessons} lessons gave {len(pages)} pages")
    return Size(
        middle(pair[0] for pair in pairs),
        middle(pair[1] for pair in pairs),
        len(pages),
        sum(page.stat().st_size for page in pages) / len(pages),
    )


def _plain(project: Path) -> Run:
    return run((*MKDOCS, "build", "-q"), project)


def _from_nothing(project: Path) -> Run:
    for made in ("site", ".cache"):
        shutil.rmtree(project / made, ignore_errors=True)
    return run(_BUILD, project)


def _changed(project: Path, change: Callable[[Path], None], runs: int) -> Iterator[Run]:
    """A build after each change; one that changed no page is no measurement."""
    page = project / "site/lesson-00000/index.html"
    for _ in range(runs):
        before = page.read_bytes()
        change(project)
        yield run(_BUILD, project)
        if page.read_bytes() == before:
            raise NothingMeasuredError(f"{change.__name__} changed nothing on the page")
