"""What an educator types around filming, and what she is told."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.cli.commands import commands
from generator.model.captions import DRAFT_NOTE
from tests.project import GOOD, put
from tests.site_project import copy_project

NAMED = "video: {file: meal.mp4, captions: {en: meal.en.vtt}}\n"


@pytest.fixture
def root(tmp_path: Path) -> Path:
    """A site with one lesson, whose video is not there yet."""
    project = copy_project(tmp_path / "project", lessons=False)
    put(project, GOOD.replace("stops:\n", NAMED + "stops:\n"), "meal")
    return project


def plumline(root: Path, *words: str) -> Result:
    return CliRunner().invoke(commands, [*words, "--root", str(root)], catch_exceptions=False)


def test_a_rehearsal_makes_the_video_and_the_captions_that_were_missing(root: Path) -> None:
    assert plumline(root, "check").exit_code == 1, "the lesson names files that are not there"
    done = plumline(root, "rehearse", "meal")
    assert done.stdout == (
        "lessons/meal/meal.mp4 is made, 1:22 long, "
        "and lessons/meal/meal.en.vtt is the draft of its captions.\n"
    )
    assert plumline(root, "check").exit_code == 0


def test_a_rehearsal_that_the_lesson_does_not_name_says_what_to_write(root: Path) -> None:
    file = root / "lessons/meal/lesson.yaml"
    file.write_text(file.read_text("utf-8").replace(NAMED, ""), "utf-8")
    said = plumline(root, "rehearse", "meal").stdout
    assert "Name them in lessons/meal/lesson.yaml" in said
    block = said.partition("\n\n")[2]
    assert block == "video:\n  file: meal.mp4\n  captions: {en: meal.en.vtt}\n"
    file.write_text(file.read_text("utf-8").replace("stops:\n", block + "stops:\n"), "utf-8")
    assert plumline(root, "check").exit_code == 0


def test_a_new_lesson_names_the_files_that_a_rehearsal_makes(root: Path) -> None:
    plumline(root, "new", "Soup for two")
    file = root / "lessons/soup-for-two/lesson.yaml"
    video = re.sub(r"^# (?=video:|  )", "", file.read_text("utf-8"), flags=re.MULTILINE)
    file.write_text(video, "utf-8")
    assert "Name them" not in plumline(root, "rehearse", "soup-for-two").stdout
    assert plumline(root, "check", "soup-for-two").exit_code == 0


def test_a_rehearsal_and_a_draft_still_in_place_are_told(root: Path) -> None:
    plumline(root, "rehearse", "meal")
    said = plumline(root, "check").stderr
    assert (
        "lessons/meal/lesson.yaml:6:15: `meal.mp4` is the silent rehearsal made of the slides"
        in said
    )
    assert "lessons/meal/meal.en.vtt:3:1: these captions are a draft that nobody has read" in said
    captions = root / "lessons/meal/meal.en.vtt"
    captions.write_text(captions.read_text("utf-8").replace(f"NOTE {DRAFT_NOTE}\n", ""), "utf-8")
    file = root / "lessons/meal/lesson.yaml"
    file.write_text(file.read_text("utf-8").replace("mp4,", "mp4, silent: true,"), "utf-8")
    assert plumline(root, "check").stderr == ""


def test_a_longer_lesson_is_rehearsed_again(root: Path) -> None:
    plumline(root, "rehearse", "meal")
    file = root / "lessons/meal/lesson.yaml"
    file.write_text(file.read_text("utf-8").replace('at: "1:20"', 'at: "1:50"'), "utf-8")
    assert "beyond the end of the video" in plumline(root, "check").stderr
    assert "1:52 long" in plumline(root, "rehearse", "meal").stdout
    assert plumline(root, "check").exit_code == 0


def test_edited_captions_stay_and_she_is_told(root: Path) -> None:
    captions = root / "lessons/meal/meal.en.vtt"
    captions.write_text("WEBVTT\n\n00:01.000 --> 00:03.000\nMine.\n", "utf-8")
    assert (
        "meal.en.vtt was edited, so it stays as it is" in plumline(root, "rehearse", "meal").stdout
    )
    assert "Mine." in captions.read_text("utf-8")


def test_a_mistake_elsewhere_in_the_lesson_still_stops_a_rehearsal(root: Path) -> None:
    file = root / "lessons/meal/lesson.yaml"
    file.write_text(file.read_text("utf-8").replace("apple-raw", "aple-raw"), "utf-8")
    done = plumline(root, "rehearse", "meal")
    assert done.exit_code == 1
    assert "there is no food `aple-raw`" in done.stderr
    assert not (root / "lessons/meal/meal.mp4").exists()


def test_a_slide_that_is_too_full_is_told_with_its_stop(root: Path) -> None:
    file = root / "lessons/meal/lesson.yaml"
    long = " ".join(["Which side holds more of it?"] * 50)
    file.write_text(file.read_text("utf-8").replace("Which side holds more?", long), "utf-8")
    done = plumline(root, "rehearse", "meal")
    assert done.exit_code == 1
    assert done.stderr.startswith(
        "lessons/meal/lesson.yaml:10:5: a slide of this `ask` stop has no room for all that stands on it\n"
    )
    assert "shorten its title, its question" in done.stderr
    assert not (root / "lessons/meal/meal.mp4").exists()


def test_the_record_of_a_film_names_its_day_and_how_many_numbers(root: Path) -> None:
    """Four sides and two counts; both gaps are whole tens, so nothing is left over."""
    done = plumline(root, "recorded", "meal", "--on", "2026-03-14")
    assert done.stdout == "lessons/meal/recorded.yaml keeps 6 numbers as filmed on 2026-03-14.\n"
    assert 'filmed: "2026-03-14"' in (root / "lessons/meal/recorded.yaml").read_text("utf-8")
    assert (
        "on record. Renew that: python3 generator recorded meal"
        in plumline(root, "rehearse", "meal").stdout
    )


def test_a_day_that_is_none_is_told_with_one(root: Path) -> None:
    done = plumline(root, "recorded", "meal", "--on", "yesterday")
    assert done.exit_code == 2
    assert "`yesterday` is no day" in done.stderr
    assert "such as 2026-03-14" in done.stderr


def test_a_day_that_is_still_to_come_is_refused(root: Path) -> None:
    done = plumline(root, "recorded", "meal", "--on", "9999-01-01")
    assert done.exit_code == 2
    assert "9999-01-01 is still to come" in done.stderr
    assert not (root / "lessons/meal/recorded.yaml").exists()


@pytest.mark.parametrize("word", ["rehearse", "recorded"])
def test_a_lesson_that_is_not_there_is_told_with_those_that_are(root: Path, word: str) -> None:
    done = plumline(root, word, "mael")
    assert done.exit_code == 2
    assert "there is no lesson `mael`; there are meal" in done.stderr


OUTSIDE = ("../../../pwned", "/pwned", "..", "a/b", "C:pwned", "..\\\\pwned", "lesson.yaml")


@pytest.mark.parametrize("word", ["rehearse", "recorded", "check"])
@pytest.mark.parametrize("name", OUTSIDE)
def test_no_file_is_made_outside_the_lessons_own_folder(
    tmp_path: Path, root: Path, word: str, name: str
) -> None:
    file = root / "lessons/meal/lesson.yaml"
    text = file.read_text("utf-8")
    file.write_text(
        text.replace("meal.mp4", f'"{name}.mp4"' if "pwned" in name else f'"{name}"').replace(
            "en: meal.en.vtt", f'en: "{name}.vtt"' if "pwned" in name else f'en: "{name}"'
        ),
        "utf-8",
    )
    before = {path: path.stat().st_mtime_ns for path in tmp_path.rglob("*")}
    done = plumline(root, word, *([] if word == "check" else ["meal"]))
    assert done.exit_code == 1
    assert "lessons/meal/lesson.yaml:6:" in done.stderr
    assert {path: path.stat().st_mtime_ns for path in tmp_path.rglob("*")} == before
    assert not Path("/pwned.mp4").exists()


@pytest.mark.parametrize("name", ["meal.mp4", "meal.en.vtt"])
def test_a_rehearsal_writes_through_no_link(tmp_path: Path, root: Path, name: str) -> None:
    outside = tmp_path / "outside"
    (root / "lessons/meal" / name).symlink_to(outside)
    done = plumline(root, "rehearse", "meal")
    assert done.exit_code == 1
    assert f"`{name}` is a link to another place" in done.stderr
    assert not outside.exists()
