"""`plumline papers`: one command makes every paper, or a numbered set for a class."""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path

import pytest

from generator.compute.practice_set import plan_of, practice_set
from generator.write import whole
from tests.cli.test_commands import plumline
from tests.made_papers import info, words
from tests.project import GOOD, put, worked
from tests.site_project import copy_project, hashes

OWN = 1000
"""The lesson's own numbers are no larger."""


@pytest.fixture
def root(tmp_path: Path) -> Path:
    """A site with one good lesson."""
    project = copy_project(tmp_path / "project", lessons=False)
    put(project, GOOD, "meal")
    return project


def test_every_paper_whatever_the_site_makes(root: Path, tmp_path: Path) -> None:
    done = plumline(root, "papers", "--into", str(tmp_path / "out"))
    assert done.exit_code == 0, done.output
    names = {file.name for file in (tmp_path / "out/meal/papers").iterdir()}
    assert {"worksheet-a4.pdf", "worksheet-letter.pdf", "packet-a4.pdf"} <= names
    assert done.output.splitlines()[-1] == f"{len(names)} files written."


def test_one_size_in_large_print(root: Path, tmp_path: Path) -> None:
    done = plumline(root, "papers", "meal", "--size", "letter", "--large", "--into", str(tmp_path))
    assert done.exit_code == 0, done.output
    names = {file.name for file in (tmp_path / "meal/papers").iterdir()}
    assert "worksheet-large-letter.pdf" in names
    assert all(name.endswith("-large-letter.pdf") for name in names)


@pytest.mark.parametrize("largest", [1000, 100])
def test_a_class_set_has_the_practice_of_the_practice_page(
    root: Path, tmp_path: Path, largest: int
) -> None:
    """Sheet n has the problems that the practice page makes of the seed and n, and the key their answers."""
    options = ["--class", "3", "--seed", "plum", "--size", "a4", "--into", str(tmp_path)]
    if largest != OWN:
        options += ["--numbers", str(largest)]
    done = plumline(root, "papers", "meal", *options)
    assert done.exit_code == 0, done.output
    folder = tmp_path / "meal/papers"
    sheets, key = (words(folder / f"class-3-{name}-a4.pdf") for name in ("worksheets", "answers"))
    own = plan_of(worked(root, GOOD))
    assert own.largest == OWN
    plan = replace(own, largest=largest)
    gaps = {}
    for number in (1, 2, 3):
        assert f"No. {number}" in sheets
        assert f"Problem set plum-{number}, numbers up to {largest:,}." in sheets
        first = practice_set(f"plum-{number}", plan, 1)[0]
        sum_ = f"{first.first:,} − {first.second:,} ="
        assert sum_ in sheets
        assert f"{sum_} {first.first - first.second:,}" in key
        gaps[number] = sum_
    assert len(set(gaps.values())) == 3
    assert key.index(gaps[1]) < key.index(gaps[2]) < key.index(gaps[3])
    assert int(info(folder / "class-3-worksheets-a4.pdf")["Pages"]) % 3 == 0


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        (["supper"], "there is no lesson `supper`; there are meal"),
        (["--class", "0"], "a class set has 1 to 100 sheets"),
        (["--class", "1000"], "a class set has 1 to 100 sheets"),
        (["--class", "many"], "'many' is not a valid integer"),
        (["--size", "a3"], "'a3' is not one of 'a4', 'letter'"),
        (["--seed", "plum"], "say --class N too"),
        (["--numbers", "100"], "say --class N too"),
        (["--class", "2", "--numbers", "99"], "'99' is not one of"),
        (["--class", "2", "--seed", "x" * 41], "a word of at most 40 letters"),
        (["--into", "{here}/mkdocs.yml"], "is a file"),
        (["--into", "{here}/mkdocs.yml/papers"], "this should be a folder"),
    ],
)
def test_each_mistake_in_one_sentence(root: Path, typed: list[str], said: str) -> None:
    before = hashes(root)
    done = plumline(root, "papers", *(word.replace("{here}", str(root)) for word in typed))
    assert done.exit_code != 0
    assert said in done.output.replace("\n", " ")
    assert "Traceback" not in done.output
    assert {path: held for path, held in hashes(root).items() if ".cache" not in path} == before


def test_a_mistake_in_a_lesson_is_told_at_its_line(root: Path, tmp_path: Path) -> None:
    put(root, GOOD.replace("food: apple-raw", "food: aple-raw"), "meal")
    done = plumline(root, "papers", "--into", str(tmp_path / "out"))
    assert done.exit_code == 1
    assert re.search(
        r"^lessons/meal/lesson.yaml:\d+:\d+: there is no food", done.output, re.MULTILINE
    )
    assert not (tmp_path / "out").exists()


def test_a_full_disk_leaves_no_half_file(
    root: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(self: Path, data: bytes) -> int:
        with self.open("wb") as file:
            file.write(data[:100])
        raise OSError(28, "No space left on device", str(self))

    monkeypatch.setattr(whole.Path, "write_bytes", full)
    done = plumline(root, "papers", "--into", str(tmp_path / "out"))
    assert done.exit_code == 1
    assert "the disk is full: make room" in done.output
    assert [file for file in (tmp_path / "out").rglob("*") if file.is_file()] == []
