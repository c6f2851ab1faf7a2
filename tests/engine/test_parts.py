"""Shares made apart and put together are the site built whole, byte for byte."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.cli.commands import commands
from tests.engine.small_site import built, small_site
from tests.site_project import hashes


def plumline(root: Path, *words: str) -> Result:
    return CliRunner().invoke(commands, [*words, "--root", str(root)], catch_exceptions=False)


@pytest.fixture(scope="module")
def shares(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with a site, and three shares of it, each made in a copy of its own."""
    above = tmp_path_factory.mktemp("shares")
    root = small_site(above / "site")
    for number in (1, 2, 3):
        machine = shutil.copytree(root, above / f"machine-{number}")
        done = plumline(machine, "build", "--part", f"{number}/3")
        assert done.exit_code == 0, done.output
        assert not (machine / "site").exists()
        shutil.move(machine / f"part-{number}-of-3", above)
    return above


@pytest.fixture
def site(shares: Path, tmp_path: Path) -> Path:
    """The same site on a machine that has built nothing."""
    return shutil.copytree(shares / "site", tmp_path / "site")


def parts(shares: Path) -> list[str]:
    return [str(shares / f"part-{number}-of-3") for number in (1, 2, 3)]


def test_together_they_are_the_site(site: Path, shares: Path, tmp_path: Path) -> None:
    whole = built(shutil.copytree(shares / "site", tmp_path / "whole"))
    done = plumline(site, "join", *parts(shares))
    assert done.exit_code == 0, done.output
    assert hashes(site / "site") == whole


def test_no_lesson_is_made_where_they_are_put_together(
    site: Path, shares: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("generator.steps.lessons.work_lesson", lambda *_: pytest.fail("made anew"))
    assert plumline(site, "join", *parts(shares)).exit_code == 0


def test_a_share_that_is_not_there_is_named(site: Path, shares: Path) -> None:
    done = plumline(site, "join", *parts(shares)[:2])
    assert done.exit_code == 1
    assert "of 3 shares these are not there: 3" in done.stderr
    assert not (site / "site").exists()


def test_a_share_that_is_there_twice_is_told(site: Path, shares: Path, tmp_path: Path) -> None:
    again = shutil.copytree(parts(shares)[0], tmp_path / "again")
    done = plumline(site, "join", *parts(shares), str(again))
    assert done.exit_code == 1
    assert "the shares do not belong together" in done.stderr


def test_a_share_of_other_files_is_refused(site: Path, shares: Path) -> None:
    file = site / "lessons/one/lesson.yaml"
    file.write_text(file.read_text("utf-8").replace("Lesson one", "Lesson won"), "utf-8")
    done = plumline(site, "join", *parts(shares))
    assert done.exit_code == 1
    assert "this share was made of other files, or by another program" in done.stderr


def test_a_damaged_share_is_refused(site: Path, shares: Path, tmp_path: Path) -> None:
    copies = [shutil.copytree(part, tmp_path / Path(part).name) for part in parts(shares)]
    for file in copies[0].iterdir():
        if file.name != "part.json":
            file.write_bytes(file.read_bytes()[:9])
    done = plumline(site, "join", *map(str, copies))
    assert done.exit_code == 1
    assert "in this share is damaged" in done.stderr


@pytest.mark.parametrize("held", [None, "", "[]", '{"part": 1}'])
def test_another_folder_is_no_share(site: Path, tmp_path: Path, held: str | None) -> None:
    folder = tmp_path / "folder"
    folder.mkdir()
    if held is not None:
        (folder / "part.json").write_text(held, "utf-8")
    done = plumline(site, "join", str(folder))
    assert done.exit_code == 1
    assert "this folder holds no share of a site" in done.stderr


@pytest.mark.parametrize("part", ["0/8", "9/8", "3", "a/b", "1/0", "-1/3"])
def test_what_is_no_share_is_told(site: Path, part: str) -> None:
    done = plumline(site, "build", "--part", part)
    assert done.exit_code == 2
    assert "write it like 3/8" in done.stderr


def test_more_shares_than_lessons_leave_some_empty(site: Path) -> None:
    done = plumline(site, "build", "--part", "9/9")
    assert done.exit_code == 0, done.output
    assert [file.name for file in (site / "part-9-of-9").iterdir()] == ["part.json"]


def test_a_mistake_in_a_share_is_told(site: Path) -> None:
    (site / "lessons/film/lesson.yaml").write_text("title: x\n", "utf-8")
    done = plumline(site, "build", "--part", "1/1")
    assert done.exit_code == 1
    assert "lessons/film/lesson.yaml:1:1" in done.stderr
    assert not (site / "part-1-of-1").exists()
