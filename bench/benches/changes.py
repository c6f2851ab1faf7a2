"""How long `changes` takes to tell what differs between two states of many lessons, out of what the engine kept."""

from __future__ import annotations

import json
import subprocess
import tempfile
from collections.abc import Iterator
from pathlib import Path

from bench.measuring.process import PLUMLINE, environment, middle, run
from bench.measuring.row import Case, NothingMeasuredError, Row, row
from bench.measuring.sites import change_lesson, make_ours
from tests.publish.repository import begun, commit

_CHANGES = (*PLUMLINE, "changes", "HEAD")


def rows(case: Case) -> Iterator[Row]:
    """One lesson differs; both states were made before, as they are whenever somebody asks again."""
    with tempfile.TemporaryDirectory() as name:
        site = begun(make_ours(Path(name) / "ours", case.lessons))
        commit(site, "Begin")
        change_lesson(site)
        run(_CHANGES, site)  # makes both states, and compiles
        done = [run(_CHANGES, site) for _ in range(case.runs)]
        if _said(site) != ["lesson-00000"]:
            raise NothingMeasuredError("the lesson that differs is not told by itself")
    yield row("changes", middle(done).seconds, f"two states of {case.lessons:,} lessons")


def _said(site: Path) -> list[str]:
    """Lessons of which some text or number is said to differ."""
    told = subprocess.run(
        [*_CHANGES, "--format", "json"],
        cwd=site,
        env=environment(site),
        capture_output=True,
        check=True,
    )
    return [one["lesson"] for one in json.loads(told.stdout)["lessons"] if one["changes"]]
