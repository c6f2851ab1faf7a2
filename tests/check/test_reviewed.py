"""What `check` asks of readings: what changed since, in which language, and of which lesson they are."""

from __future__ import annotations

import re
import shutil
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.cli.commands import commands
from generator.compute.reviewed import Standing, held_reviews
from generator.problems import Problem, Weight
from generator.steps.work import work
from tests.project import ROOT

LESSON = "lessons/river-walk/lesson.yaml"
SPANISH = "lessons/river-walk/lesson.es.yaml"
FILE = "lessons/river-walk/reviewed.yaml"


@pytest.fixture
def root(tmp_path: Path) -> Path:
    """One lesson of the demo, read by a dietitian in both languages."""
    for name in ("site_data", "theme", "lessons/river-walk"):
        shutil.copytree(ROOT / name, tmp_path / name)
    keep(tmp_path, "--by", "registered dietitian", "--language", "en", "--language", "es")
    return tmp_path


def keep(root: Path, *words: str, lesson: str = "river-walk") -> Result:
    return CliRunner().invoke(
        commands, ["reviewed", lesson, "--on", "2026-03-14", *words, "--root", str(root)]
    )


def change(root: Path, path: str, old: str, new: str) -> None:
    file = root / path
    text = file.read_text("utf-8")
    assert text.count(old) == 1, old
    file.write_text(text.replace(old, new), "utf-8")


def asked(root: Path, lesson: str = "river-walk") -> list[Problem]:
    return [one for one in work(root, lesson).questions if "reviewed" in one.place.path]


def test_as_it_was_read_nothing_is_asked_and_the_reading_holds_whole(root: Path) -> None:
    assert asked(root) == []
    done = work(root, "river-walk")
    for language in ("en", "es"):
        (held,) = held_reviews(done.lessons(language)[0])
        assert held.standing is Standing.WHOLE


def test_a_changed_food_is_asked_about_once_with_its_numbers(root: Path) -> None:
    """272 kcal × 155 g ÷ 100 = 421.6, shown as 420 (21 CFR 101.9(c)(1)): its value, gap and count, and the totals."""
    foods = (root / "site_data/foods.yaml").read_text("utf-8")
    start = foods.index("  apple-pie-homemade:")
    at = foods.index("energy: 265", start)
    changed = f"{foods[:at]}energy: 272{foods[at + 11 :]}"
    (root / "site_data/foods.yaml").write_text(changed, "utf-8")
    (one,) = asked(root)
    assert str(one.place) == f"{FILE}:5:5"
    assert one.weight is Weight.QUESTION
    row = "lunch.apple-pie-homemade_apple-raw"
    assert one.what.startswith(
        "registered dietitian read this on 2026-03-14, and since then numbers "
        f"`{row}.omar-s-lunch`, `{row}.gap`, `{row}.count` and "
    )
    assert 'python3 generator reviewed river-walk --by "registered dietitian"' in one.hint


def test_a_changed_text_is_asked_about_in_its_own_language(root: Path) -> None:
    text = (root / SPANISH).read_text("utf-8")
    summary = next(line for line in text.splitlines() if line.startswith("summary:"))
    change(root, SPANISH, summary, "summary: Otra cosa.")
    (one,) = asked(root)
    assert one.what.endswith("since then text `summary` changed")


def test_a_copied_folder_is_another_lesson_and_nobody_has_read_it(root: Path) -> None:
    shutil.copytree(root / "lessons/river-walk", root / "lessons/lake-walk")
    (one,) = asked(root, "lake-walk")
    assert str(one.place).startswith("lessons/lake-walk/reviewed.yaml:3:")
    assert "these readings are of the lesson `river-walk`" in one.what
    assert held_reviews(work(root, "lake-walk").results[0]) == ()


def test_a_renamed_folder_that_says_so_was_read(root: Path) -> None:
    (root / "lessons/river-walk").rename(root / "lessons/lake-walk")
    change(
        root, "lessons/lake-walk/lesson.yaml", "\nstops:\n", "\nformerly: [river-walk]\nstops:\n"
    )
    assert asked(root, "lake-walk") == []
    (held,) = held_reviews(work(root, "lake-walk").results[0])
    assert held.standing is Standing.WHOLE


def test_a_language_that_went_away_is_asked_about(root: Path) -> None:
    (root / SPANISH).unlink()
    (one,) = asked(root)
    assert "was read in `es`, which the lesson is not there in" in one.what


def test_where_nothing_holds_this_is_said(root: Path) -> None:
    """The file says that all was read, and each of its marks is of other words and numbers."""
    file = root / FILE
    lines = file.read_text("utf-8").splitlines()
    other = (
        re.sub(r'\["[^\]]*\]', '["000000"]', re.sub(r"of: .*}", "of: x}", one)) for one in lines
    )
    file.write_text("\n".join(other).replace('languages: ["000000"]', "languages: [en]"), "utf-8")
    (one,) = asked(root)
    assert one.what.endswith("nothing of it holds any more, so the notes do not name it")
    (held,) = held_reviews(work(root, "river-walk").results[0])
    assert held.standing is Standing.FALLEN


def test_several_roles_stand_side_by_side_and_one_reads_again(root: Path) -> None:
    keep(root, "--by", "school nurse")
    keep(
        root, "--by", "registered dietitian", "--by", "es: dietista registrada", "--language", "es"
    )
    keep(root, "--by", "school nurse")
    (lesson,) = work(root, "river-walk").results
    assert lesson.lesson.reviewed is not None
    roles = [dict(one.by) for one in lesson.lesson.reviewed.file.reviews]
    assert roles == [
        {"": "registered dietitian"},
        {"en": "registered dietitian", "es": "dietista registrada"},
        {"": "school nurse"},
    ]


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--by", "Jane Miller"), "`Jane Miller` may be somebody's name: no name is kept"),
        (("--by", "x" * 61), "is no role: use 1 to 60 characters"),
        (("--by", "nurse", "--by", "cook"), "`cook` is a second role: give one for each language"),
        (("--by", "nurse", "--language", "fr"), "not there in `fr`; it is in `en`, `es`"),
        (("--by", "nurse", "--by", "fr: infirmière"), "not there in `fr`; it is in `en`, `es`"),
    ],
)
def test_what_cannot_be_kept_is_told_and_leaves_the_file(
    root: Path, words: tuple[str, ...], said: str
) -> None:
    before = (root / FILE).read_bytes()
    done = keep(root, *words)
    assert done.exit_code == 2
    assert said in " ".join(done.output.split())
    assert (root / FILE).read_bytes() == before
