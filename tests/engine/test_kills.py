"""Fifty builds stopped at random moments and two at once: the old site or the new one, whole, and nothing left for good.

More of them: `python -m tests.engine.kills --count 1000 --seed 7`.
"""

from __future__ import annotations

import os
import re
import subprocess
import sys
from collections.abc import Callable

import pytest

from tests.site_project import ROOT

BUILDS, PAIRS = 50, 4


@pytest.mark.skipif(not hasattr(os, "fork"), reason="only where a process can be copied")
def test_builds_that_are_stopped_or_run_side_by_side(
    record_property: Callable[[str, object], None],
) -> None:
    words = ["--count", str(BUILDS), "--pairs", str(PAIRS)]
    done = subprocess.run(
        [sys.executable, "-m", "tests.engine.kills", *words],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    kills, pairs = done.stdout.splitlines()
    assert re.fullmatch(rf"seed \d+: {BUILDS} builds stopped, .*SIGKILL.*", kills)
    assert all(name in kills for name in ("SIGINT", "SIGTERM", "something left"))
    assert pairs.startswith(f"{PAIRS} pairs of builds at once, ")
    record_property("told", kills)
    record_property("told", pairs)
