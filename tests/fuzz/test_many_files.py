"""Thousands of changed files are read: each ends in what it says or in problems with a place inside of it.

``PLUMLINE_FUZZ=100000`` reads that many; the counts stand at the end of what the tests print.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections.abc import Callable, Mapping
from pathlib import Path

from generator.problems import Place, Problem
from tests.fuzz.__main__ import misplaced, target_of
from tests.fuzz.mutate import mutant
from tests.fuzz.targets import TARGETS, Kitchen

ROOT = Path(__file__).parents[2]
COUNT = int(os.environ.get("PLUMLINE_FUZZ", "5000"))
ENOUGH = 40
"""Files of a kind of which at least one is told; among fewer it is chance that none is."""


def test_whatever_stands_in_a_file_it_is_taken_or_told(
    record_property: Callable[[str, object], None],
) -> None:
    """In a process of its own, which makes more of its kind: a test's own may have threads."""
    done = subprocess.run(
        [sys.executable, "-m", "tests.fuzz", str(COUNT)],
        cwd=ROOT, capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert done.stdout, done.stderr
    told = json.loads(done.stdout)
    kinds = ", ".join(f"{kind} {sum(ends.values())}" for kind, ends in told["kinds"].items())
    record_property(
        "told", f"{told['files']} changed files read, {len(told['bad'])} badly: {kinds}"
    )
    assert told["bad"] == []
    assert done.returncode == 0, done.stderr
    assert sum(sum(ends.values()) for ends in told["kinds"].values()) == COUNT
    assert never_told(told["kinds"]) == []


def never_told(kinds: Mapping[str, Mapping[str, int]]) -> list[str]:
    """Kinds of which enough files were read and not one was told of."""
    return [
        kind for kind, ends in kinds.items() if sum(ends.values()) >= ENOUGH and not ends["told"]
    ]


def test_a_kind_that_is_never_told_is_noticed_and_a_single_file_is_chance() -> None:
    assert never_told({"page": {"told": 0, "clean": ENOUGH, "bad": 0}}) == ["page"]
    assert never_told({"page": {"told": 1, "clean": ENOUGH, "bad": 0}}) == []
    assert never_told({"page": {"told": 0, "clean": 1, "bad": 0}}) == []


def test_every_kind_is_read_often_enough_in_a_run_that_is_not_made_small() -> None:
    assert all(target.share * 5000 // 100 >= ENOUGH for target in TARGETS)


def test_a_problem_outside_of_its_file_is_noticed(tmp_path: Path) -> None:
    (tmp_path / "a.yaml").write_text("title: A\nsummary: B\n", "utf-8")
    right = Problem(Place("a.yaml", 2, 11), "this is wrong")
    assert misplaced([right], tmp_path) == ""
    for place in (Place("a.yaml", 4, 1), Place("a.yaml", 2, 12), Place("a.yaml", 0, 1)):
        assert "outside" in misplaced([right, Problem(place, "this is wrong")], tmp_path)
    assert "in no file" in misplaced([Problem(Place("no/such/file.yaml"), "x")], tmp_path)
    assert "no sentence" in misplaced([Problem(Place("a.yaml"), "")], tmp_path)


def test_every_kind_of_file_has_its_share() -> None:
    shares = [target_of(number) for number in range(100)]
    assert {target: shares.count(target) for target in TARGETS} == {
        target: target.share for target in TARGETS
    }


def test_what_nobody_changed_is_taken(tmp_path: Path) -> None:
    """Else a mistake of the site itself would be told for every file."""
    kitchen = Kitchen(tmp_path)
    assert {target.path: list(target.read(kitchen, True)) for target in TARGETS} == {
        target.path: [] for target in TARGETS
    }


def test_a_number_always_makes_the_same_file() -> None:
    text = (ROOT / TARGETS[0].path).read_text("utf-8")
    made = [mutant(text, number) for number in range(50)]
    assert made == [mutant(text, number) for number in range(50)]
    assert len(set(made)) > 45
