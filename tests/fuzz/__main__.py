"""Changes files at random and reads them: whatever stands in a file, it ends in a site or in problems with a place.

``python -m tests.fuzz 100000`` for that many; each is made anew by its number.
"""

from __future__ import annotations

import json
import logging
import multiprocessing
import os
import re
import resource
import signal
import sys
import tempfile
import traceback
from collections import Counter
from collections.abc import Iterable
from functools import cache, lru_cache
from pathlib import Path
from types import FrameType
from typing import NamedTuple

from generator.problems import LessonError, Problem
from generator.read import overlay
from generator.read.source import read_source
from tests.fuzz.mutate import mutant
from tests.fuzz.targets import TARGETS, Kitchen, Target

PATIENCE = 30
"""Seconds of computing after which a file counts as endless; one takes a hundredth of one."""
MEMORY = 3_000_000_000
"""Bytes that a process may take."""
FURTHER = 25
"""Of so many that can be read, pages are made of one."""
_LINE_ENDS = (re.compile("\r\n|[\r\n]"), re.compile("\r\n|[\r\n\x85\u2028\u2029]"))
"""Of captions (WebVTT, 4.1) and of YAML (YAML 1.1, 5.4)."""


class Ended(NamedTuple):
    """How the reading of one file ended."""

    kind: str
    how: str
    """``clean``, ``told``, or what went wrong."""
    number: int


class EndlessError(Exception):
    """A file that would keep the program busy."""


def _too_long(_: int, __: FrameType | None) -> None:
    raise EndlessError(f"not done after {PATIENCE} seconds of computing")


@cache
def kitchen() -> Kitchen:
    """The site of this process; what it is told meanwhile goes nowhere."""
    logging.disable(logging.CRITICAL)
    resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
    signal.signal(signal.SIGPROF, _too_long)
    overlay.read_source = lru_cache(maxsize=12)(read_source)  # of the same text comes the same
    return Kitchen(
        Path(tempfile.mkdtemp(prefix="plumline-fuzz-", dir=os.environ["PLUMLINE_FUZZ_FOLDER"]))
    )


def target_of(number: int) -> Target:
    """Which file a number changes: each by its share."""
    at = number % sum(target.share for target in TARGETS)
    for target in TARGETS:
        if at < target.share:
            return target
        at -= target.share
    raise AssertionError


def ended(number: int) -> Ended:
    """Change the file of a number, read it, and put it back."""
    target, here = target_of(number), kitchen()
    file = here.root / target.path
    before = file.read_bytes()
    content = mutant(before.decode(), number)
    file.write_bytes(content)
    signal.setitimer(signal.ITIMER_PROF, PATIENCE)
    try:
        how = _how(target, here, further=number // 100 % FURTHER == number % FURTHER)
    except LessonError as error:
        how = misplaced(error.problems, here.root) or "told"
    except Exception:  # noqa: BLE001  # whatever it is, it is what we look for
        how = traceback.format_exc()
    finally:
        signal.setitimer(signal.ITIMER_PROF, 0)
        file.write_bytes(before)
    return Ended(target.name, how, number)


def _how(target: Target, here: Kitchen, *, further: bool) -> str:
    found = list(target.read(here, further))
    return misplaced(found, here.root) or ("told" if found else "clean")


def misplaced(problems: Iterable[Problem], root: Path) -> str:
    """The first problem that is no sentence or that stands outside of its file."""
    for problem in problems:
        if not problem.what or "Traceback" in str(problem):
            return f"no sentence: {problem}"
        file = root / problem.place.path
        if file.is_file() and not _is_inside(problem, file.read_bytes().decode("utf-8", "replace")):
            return f"outside of its file: {problem}"
        if not file.exists() and not file.parent.exists():
            return f"in no file: {problem}"
    return ""


def _is_inside(problem: Problem, text: str) -> bool:
    """By either way to end a line; a sign before the first may be a mark of the encoding."""
    place = problem.place
    for ends in _LINE_ENDS:
        lines = ends.split(text)
        if 1 <= place.line <= len(lines) and 1 <= place.column <= len(lines[place.line - 1]) + 1:
            return True
    return False


def main(count: int) -> int:
    """Read so many changed files on every core; prints how they ended, as JSON. 1 where one ended badly."""
    context = multiprocessing.get_context("fork")
    with tempfile.TemporaryDirectory() as folder:
        os.environ["PLUMLINE_FUZZ_FOLDER"] = folder
        Kitchen(Path(folder, "tried"))  # a pool would wait for ever for a process that cannot begin
        with context.Pool(os.cpu_count() or 1) as pool:
            ends = list(pool.imap_unordered(ended, range(count), chunksize=20))
    bad = [one for one in ends if one.how not in {"clean", "told"}]
    counts = Counter((one.kind, "bad" if one in bad else one.how) for one in ends)
    kinds = dict.fromkeys(target.name for target in TARGETS)
    table = {kind: {how: counts[kind, how] for how in ("told", "clean", "bad")} for kind in kinds}
    sys.stdout.write(json.dumps({"files": len(ends), "kinds": table, "bad": bad[:20]}) + "\n")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main(int(sys.argv[1]) if len(sys.argv) > 1 else 5_000))
