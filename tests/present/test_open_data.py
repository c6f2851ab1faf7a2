"""The lesson as schema.org's words: two types together, clips, alignment; nothing invented, nothing of exercise.

The terms are those of references 10.3: the two types together as a search engine documents learning
videos (read, status R), ``AlignmentObject`` as W3C WebSchemas has it (R), the rest from memory (M).
"""

from __future__ import annotations

import json
import re
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from generator.compute.result import LessonResult
from generator.compute.work_out import work_out
from generator.model.lesson import Lesson
from generator.present.pages.lesson_page import stop_views
from generator.present.pages.open_data import film_data, iso_duration, open_data
from generator.present.pages.page import Surround
from generator.present.words.say import Say
from generator.read.lesson import read_lesson
from tests.project import GOOD, ROOT, library, worked

TERMS = {
    "@context", "@type", "name", "description", "inLanguage", "isAccessibleForFree",
    "learningResourceType", "educationalLevel", "teaches", "educationalAlignment", "hasPart",
    "typicalAgeRange", "duration", "contentUrl", "thumbnailUrl", "accessibilityFeature", "license", "url",
}  # fmt: skip
SITE = "https://kitchen.larkmead.example/"
PAGE = f"{SITE}river-walk/index.html"


def told(result: LessonResult, address: str = SITE, license_: str = "") -> dict[str, Any]:
    site = library().site.model_copy(update={"address": address, "license": license_})
    around = Surround(site, Say(library().words["en"]), "", (), {}, preview=False)
    data: dict[str, Any] = json.loads(open_data(result, around))
    return data


def told_of_film(result: LessonResult) -> dict[str, Any]:
    site = library().site.model_copy(update={"address": SITE})
    around = Surround(site, Say(library().words["en"]), "", (), {}, preview=False)
    data: dict[str, Any] = json.loads(film_data(result, stop_views(result, around), around))
    return data


@pytest.fixture(scope="module")
def filmed() -> LessonResult:
    """A lesson of the demo with its video."""
    lesson = read_lesson(ROOT, "lessons/river-walk/lesson.yaml", library())
    assert isinstance(lesson, Lesson)
    return work_out(lesson, library())


def test_it_is_a_video_and_a_lesson_at_once(filmed: LessonResult) -> None:
    data = told(filmed)
    file = filmed.lesson.file
    assert data["@context"] == "https://schema.org"
    assert data["@type"] == ["VideoObject", "LearningResource"]
    assert data["name"] == file.title
    assert data["description"] == file.summary
    assert data["inLanguage"] == "en"
    assert data["isAccessibleForFree"] is True
    assert data["educationalLevel"] == "Grades 3–5"
    assert data["teaches"] == list(file.goals)
    assert data["accessibilityFeature"] == ["captions", "transcript"]
    assert data["contentUrl"] == f"{SITE}river-walk/river-walk.mp4"
    assert set(data) <= TERMS


def test_the_standards_are_aligned(filmed: LessonResult) -> None:
    assert told(filmed)["educationalAlignment"] == [
        {
            "@type": "AlignmentObject",
            "alignmentType": "teaches",
            "educationalFramework": "Common Core State Standards for Mathematics",
            "targetName": code,
        }
        for code in filmed.lesson.file.standards
    ]


def test_every_clip_lies_in_the_video_and_opens_its_stop(filmed: LessonResult) -> None:
    data = told_of_film(filmed)
    assert set(data) <= TERMS
    assert data["typicalAgeRange"] == "8-11"  # grades 3-5: about 8 to 11 years, as caps have it
    clips = data["hasPart"]
    assert len(clips) == 6
    end = 0
    for clip in clips:
        assert set(clip) == {"@type", "name", "startOffset", "endOffset", "url"}
        assert clip["@type"] == "Clip"
        assert end <= clip["startOffset"] < clip["endOffset"] <= (filmed.lesson.duration or 0)
        end = clip["endOffset"]
    assert clips[1] == {
        "@type": "Clip",
        "name": "Make a guess",
        "startOffset": 44,
        "endOffset": 65,
        "url": f"{PAGE}#guess",
    }


@pytest.mark.parametrize(
    ("seconds", "text"),
    [(0.4, "PT0M0S"), (59.6, "PT1M0S"), (172, "PT2M52S"), (3600, "PT60M0S")],
)
def test_durations(seconds: float, text: str) -> None:
    """ISO 8601, PT with minutes and seconds; from memory."""
    assert iso_duration(seconds) == text
    assert re.fullmatch(r"PT\d+M\d+S", text)


def test_what_is_not_known_is_left_out(filmed: LessonResult) -> None:
    bare = json.dumps(told(filmed, address=""))
    for name in ("uploadDate", "thumbnailUrl", "contentUrl", "license", "url"):
        assert f'"{name}"' not in bare


def test_the_licence_is_the_sites(filmed: LessonResult) -> None:
    licence = "https://licence.example/by/4.0/"
    assert told(filmed, license_=licence)["license"] == licence


def test_nothing_is_exercise_or_food_intake(filmed: LessonResult) -> None:
    text = json.dumps(told(filmed)).lower()
    assert "exercise" not in text
    assert "calorie" not in text
    assert "nutrition" not in text


def test_without_a_file_of_ours_it_is_a_lesson_only(tmp_path: Path) -> None:
    """No recording, or one that another site shows."""
    elsewhere = "video: {elsewhere: https://films.example/17}\nstops:"
    for number, text in enumerate((GOOD, GOOD.replace("stops:", elsewhere, 1))):
        data = told(worked(tmp_path / str(number), text))
        assert data["@type"] == "LearningResource"
        assert not {"hasPart", "duration", "contentUrl"} & set(data)


def test_no_title_can_end_the_script_block(filmed: LessonResult) -> None:
    file = filmed.lesson.file.model_copy(update={"title": "</script><b>"})
    sneaky = replace(filmed, lesson=replace(filmed.lesson, file=file))
    around = Surround(library().site, Say(library().words["en"]), "", (), {}, preview=False)
    for text in (open_data(sneaky, around), film_data(sneaky, stop_views(sneaky, around), around)):
        assert "<" not in text
        assert json.loads(text)["name"] == "</script><b>"
