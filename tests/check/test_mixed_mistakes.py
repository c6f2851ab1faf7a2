"""A lesson of mixed mistakes: each wrong word and each wrong value is found, and nothing else."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from generator.problems import LessonError
from generator.steps.work import work
from tests.site_project import ROOT, copy_project

PLANTED = {
    (10, "almost double"),  # 410 is 4.6 times 90 (C)
    (11, "about the same"),  # 230 is 2.6 times 90 (C)
    (
        15,
        "20 g cannot hold 400 kcal",
    ),  # pure fat holds about 9 kcal a gram: 21 CFR 101.9(c)(1)(i) (S)
    (16, "380"),  # the page shows 410
    (22, "64 times"),  # 320 in fives, and the cap is 50; caps are ours
    (22, "50 times"),
    (23, "burn it off"),  # AAP 2016, Pediatrics 138(3):e20161649: health, not weight (R, part)
}


def test_every_planted_mistake_is_found_and_nothing_else(tmp_path: Path) -> None:
    root = copy_project(tmp_path, lessons=False)
    shutil.copytree(ROOT / "tests/examples/mixed-mistakes", root / "lessons/mixed-mistakes")
    with pytest.raises(LessonError) as caught:
        work(root)
    told = [(problem.place.line, problem.what) for problem in caught.value.problems]
    assert len(told) == len(PLANTED), told
    for line, words in PLANTED:
        assert any(line == at and words in what for at, what in told), (line, words)
    assert all(problem.hint for problem in caught.value.problems)
