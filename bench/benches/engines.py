"""How many flows of a pause go wrong in Chromium, Firefox and WebKitGTK."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from collections import Counter
from collections.abc import Iterator
from pathlib import Path
from tempfile import TemporaryDirectory
from xml.etree import ElementTree as ET

from bench.measuring.row import Case, NothingMeasuredError, Row, row

ROOT = Path(__file__).parents[2]
FLOWS = "tests/browser/test_three_engines.py"
ENGINES = ("chromium", "firefox", "webkit")
_ONE = "seek_across and chromium"
"""The smallest case."""


def rows(case: Case) -> Iterator[Row]:
    """One row for each engine that this machine has; the tests of the flows are asked.

    A machine without Firefox or WebKitGTK gives no row for them: what was not tried is no 0.
    """
    with TemporaryDirectory() as folder:
        told = Path(folder) / "flows.xml"
        words = [sys.executable, "-m", "pytest", "-q", "-n", "0", "-p", "no:cacheprovider"]
        chosen = ["-k", _ONE] if case.small else []
        subprocess.run(
            [*words, FLOWS, *chosen, f"--junitxml={told}"],
            cwd=ROOT,
            env={name: value for name, value in os.environ.items() if "PYTEST" not in name},
            check=False,
            capture_output=True,
        )
        if not told.exists():
            raise NothingMeasuredError(f"{FLOWS} could not be run")
        tried, wrong = counted(told)
    if not tried:
        raise NothingMeasuredError(f"no flow of {FLOWS} was tried")
    for engine in tried:
        yield row("flows", wrong[engine], f"{engine}, {tried[engine]} flows")


def counted(told: Path) -> tuple[Counter[str], Counter[str]]:
    """How many flows were tried, and how many of them went wrong, by engine.

    Args:
        told: what pytest wrote, as JUnit's XML.
    """
    tried: Counter[str] = Counter()
    wrong: Counter[str] = Counter()
    for flow in ET.parse(told).iter("testcase"):  # noqa: S314  # our own, just written
        found = re.search("|".join(ENGINES), flow.get("name", ""))
        if found is None or flow.find("skipped") is not None:
            continue
        tried[found.group()] += 1
        wrong[found.group()] += any(flow.find(kind) is not None for kind in ("failure", "error"))
    return tried, wrong
