"""How long an educator waits in the preview, from saving a file to seeing it, beside plain MkDocs."""

from __future__ import annotations

import socket
import subprocess
import tempfile
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from statistics import median
from urllib.error import URLError
from urllib.request import urlopen

from bench.measuring.process import MKDOCS, PLUMLINE, environment, run
from bench.measuring.row import Case, NothingMeasuredError, Row, row, told
from bench.measuring.sites import make_ours, make_plain

PATIENCE = 300
"""Seconds that are waited for a page at most."""
NAME = "lesson-00000/index.html"


def rows(case: Case) -> Iterator[Row]:
    """Both previews, one after the other."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        ours = make_ours(folder / "ours", case.lessons)
        run((*PLUMLINE, "build"), ours)
        plain = make_plain(folder / "plain", ours / "site")
        page, lesson = (
            plain / "docs/lesson-00000/index.md",
            ours / "lessons/lesson-00000/lesson.yaml",
        )

        def edit_plain(mark: str) -> None:
            page.write_text(f"{page.read_text('utf-8')}\n\n{mark}\n", "utf-8")

        def edit_ours(mark: str) -> None:
            _, _, rest = lesson.read_text("utf-8").partition("\n")
            lesson.write_text(f"title: Lesson {mark}\n{rest}", "utf-8")

        other = _waited((*MKDOCS, "serve", "-q", "-a"), plain, edit_plain, case.runs)
        here = _waited((*PLUMLINE, "preview", "--address"), ours, edit_ours, case.runs)
        yield told("plain MkDocs, preview, from an edit to its page", other, "s")
        yield told("ours, preview, from an edit to its page", here, "s")
        yield row("preview", here / other)


def _waited(command: Sequence[str], project: Path, edit: Callable[[str], None], runs: int) -> float:
    """Median seconds from an edit until its page is served."""
    with _serving(command, project) as address:
        _until(address, "<")
        found = []
        for number in range(runs):
            time.sleep(1)  # an educator does not type twice in one second
            mark, began = f"edit-{number}-here", time.perf_counter()
            edit(mark)
            _until(address, mark)
            found.append(time.perf_counter() - began)
    return median(found)


@contextmanager
def _serving(command: Sequence[str], project: Path) -> Iterator[str]:
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        place = f"127.0.0.1:{free.getsockname()[1]}"
    quiet = subprocess.DEVNULL
    process = subprocess.Popen(
        [*command, place], cwd=project, env=environment(project), stdout=quiet, stderr=quiet
    )
    try:
        yield f"http://{place}/{NAME}"
    finally:
        process.terminate()
        process.wait()


def _until(address: str, mark: str) -> None:
    end = time.monotonic() + PATIENCE
    while time.monotonic() < end:
        try:
            with urlopen(address, timeout=PATIENCE) as answer:
                if mark in answer.read().decode("utf-8"):
                    return
        except (URLError, ConnectionError):
            pass
        time.sleep(0.02)
    raise NothingMeasuredError(f"{address} never showed {mark}")
