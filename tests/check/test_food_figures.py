"""An impossible figure of a site's own food stops a check and a build; a doubtful one is asked about."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.cli.commands import commands
from generator.engine.library import known_library
from generator.engine.store import Store
from generator.problems import LessonError, Weight
from generator.steps.library import checked_library
from tests.project import GOOD, put
from tests.site_project import copy_project

FOODS = "site_data/foods.yaml"
APPLE = "apple-raw"


def site(folder: Path, extra: str = "", **changed: str) -> Path:
    """A site with one lesson, and the figures of its apple changed."""
    project = copy_project(folder / "project", lessons=False)
    put(project, GOOD, "meal")
    file = project / FOODS
    before, mark, after = file.read_text("utf-8").partition(f"\n  {APPLE}:\n")
    line, rest = re.split(r"\n(?=    portions:)", after, maxsplit=1)
    for name, value in changed.items():
        line, count = re.subn(rf"\b{name}: [^,}}]+", f"{name}: {value}", line)
        assert count == 1
    file.write_text(f"{before}{mark}{line}\n{extra}{rest}", "utf-8")
    return project


def figures_line(root: Path) -> int:
    """Line of the apple's figures."""
    text = (root / FOODS).read_text("utf-8")
    at = text.index("per_100g:", text.index(f"\n  {APPLE}:\n"))
    return text[:at].count("\n") + 1


def plumline(root: Path, *words: str) -> Result:
    return CliRunner().invoke(commands, [*words, "--root", str(root)], catch_exceptions=False)


@pytest.mark.parametrize(
    ("changed", "what"),
    [
        # A raw apple in SR Legacy, 171688 [R]: 52 kcal, 10.39 g of sugars, 2.4 g of fiber
        ({"energy": "3070"}, "`apple-raw` cannot hold 3070 kcal of energy in 100 g: 902 kcal is"),
        ({"sugars": "103"}, "`apple-raw` cannot hold 103 g of sugars in 100 g: 100 g is"),
        (
            {"fiber": "24"},
            "`apple-raw` cannot hold 24 g of fiber in 13.81 g of carbohydrate, of which it",
        ),
    ],
)
def test_what_cannot_be_stops_check_and_build(
    tmp_path: Path, changed: dict[str, str], what: str
) -> None:
    root = site(tmp_path, **changed)
    for command in (["check"], ["check", "meal"], ["build"]):
        done = plumline(root, *command)
        assert done.exit_code == 1, command
        assert f"{FOODS}:{figures_line(root)}:5: {what}" in " ".join(done.stderr.split())
        assert "look at its record 171688 again" in " ".join(done.stderr.split())
    assert not (root / "site").exists()


def test_every_figure_that_cannot_be_is_told_in_one_run(tmp_path: Path) -> None:
    with pytest.raises(LessonError) as caught:
        checked_library(site(tmp_path, energy="3070", calcium="90000", saturated_fat="9"))
    assert len(caught.value.problems) == 3


def test_what_may_be_is_asked_about_until_the_entry_says_why(tmp_path: Path) -> None:
    root = site(tmp_path, energy="300")
    (one,) = checked_library(root).questions
    assert one.weight is Weight.QUESTION
    assert one.what.startswith("`apple-raw` may not hold 300 kcal in 100 g: its protein")
    assert "write `as_published:`" in one.hint
    assert one.what in " ".join(plumline(root, "check").stderr.split())
    said = site(
        tmp_path / "said", '    as_published: "cider, as its record has it"\n', energy="300"
    )
    assert checked_library(said).questions == ()


def test_a_reason_does_not_make_possible_what_is_not(tmp_path: Path) -> None:
    root = site(tmp_path, '    as_published: "so it says"\n', energy="3070")
    with pytest.raises(LessonError, match="cannot hold 3070 kcal"):
        checked_library(root)


def test_what_is_asked_is_kept_with_the_library_and_not_found_out_again(tmp_path: Path) -> None:
    store, root = Store(tmp_path / "kept"), site(tmp_path, energy="300")
    first = known_library(store, "key", lambda: checked_library(root))
    again = known_library(store, "key", lambda: pytest.fail("it was read again"))
    assert len(first.library.questions) == 1
    assert again.library.questions == first.library.questions


def test_the_programs_own_foods_are_not_asked_about(tmp_path: Path) -> None:
    """What an educator cannot change is the business of the program's tests."""
    root = site(tmp_path)
    (root / FOODS).write_text("foods:\n  pear-raw: {names: {en: Our pear}}\n", "utf-8")
    assert checked_library(root).questions == ()
