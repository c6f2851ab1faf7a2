"""All files of a lesson: whole without a written site, and the same whatever else the site holds."""

from __future__ import annotations

import pickle
import shutil
from collections.abc import Mapping
from dataclasses import replace
from io import BytesIO
from pathlib import Path
from zipfile import ZipFile

import pytest

from generator.compute.result import LessonResult
from generator.making import Surroundings, make_lesson
from generator.present.output import Output
from generator.read.library import read_library
from generator.steps.surroundings import surroundings
from generator.steps.work import work_lesson
from tests.site_project import copy_project

RIVER = "river-walk"


@pytest.fixture(scope="module")
def project(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return copy_project(tmp_path_factory.mktemp("making"))


def prepared(root: Path, lesson: str) -> tuple[Mapping[str, LessonResult], Surroundings]:
    library = read_library(root)
    results = work_lesson(root, f"lessons/{lesson}/lesson.yaml", library).results
    return results, surroundings(root, library)


def made(root: Path, lesson: str) -> dict[str, Output]:
    return {one.path: one for one in make_lesson(*prepared(root, lesson))}


def test_pages_copies_and_lists_of_all_languages_are_made_at_once(project: Path) -> None:
    outputs = made(project, RIVER)
    for folder in ("river-walk/", "es/river-walk/"):
        for name in ("index.html", "worksheet.html", "river-walk-take-home.zip", "keep.json"):
            assert bytes(outputs[folder + name].held)
    assert "river-walk/lunch.chart.json" in outputs
    assert "es/river-walk/chapters.es.vtt" in outputs


def test_a_page_says_what_it_shows_and_loads(project: Path) -> None:
    needs = made(project, RIVER)["es/river-walk/index.html"].needs
    assert {
        "assets/screen.css",
        "assets/lesson-es-US.js",
        "assets/later.css",
        "river-walk/river-walk.mp4",
        "river-walk/river-walk.es.vtt",
        "es/river-walk/lunch.chart.json",
    } < set(needs)
    assert not [path for path in needs if path.endswith((".html", ".zip", "keep.json", "sw.js"))]


def test_another_lesson_changes_nothing(project: Path, tmp_path: Path) -> None:
    before = made(project, RIVER)
    alone = copy_project(tmp_path)
    for other in ("bean-stew", "garden-baskets", "market-drinks", "soup-night", "two-days"):
        shutil.rmtree(alone / "lessons" / other)
    after = made(alone, RIVER)
    assert {path: bytes(one.held) for path, one in after.items()} == {
        path: bytes(one.held) for path, one in before.items()
    }


def test_results_and_surroundings_can_be_sent_to_another_process(project: Path) -> None:
    given = prepared(project, "soup-night")
    sent = pickle.loads(pickle.dumps(given))  # noqa: S301  # what was just pickled here
    assert make_lesson(*sent) == make_lesson(*given)


def test_the_copy_holds_every_page_with_all_that_it_shows(project: Path) -> None:
    outputs = made(project, RIVER)
    with ZipFile(BytesIO(bytes(outputs["river-walk/river-walk-take-home.zip"].held))) as packed:
        held = set(packed.namelist())
    film = (project / "lessons/river-walk/river-walk.mp4").stat().st_size
    assert {"river-walk/index.html", "river-walk/assets/later.css"} < held
    assert len(bytes(outputs["river-walk/river-walk-take-home.zip"].held)) > film


def test_the_page_says_how_large_the_copy_is(project: Path) -> None:
    outputs = made(project, RIVER)
    size = len(bytes(outputs["river-walk/river-walk-take-home.zip"].held))
    said = f"{round(size / 1e5) / 10}\N{NO-BREAK SPACE}MB"
    assert said in outputs["river-walk/index.html"].content.decode()


def test_a_copy_that_leads_nowhere_has_no_empty_list_of_pages(project: Path) -> None:
    results, around = prepared(project, RIVER)
    unpublished = replace(around, site=around.site.model_copy(update={"address": ""}))
    outputs = {one.path: one for one in make_lesson(results, unpublished)}
    with ZipFile(BytesIO(bytes(outputs["river-walk/river-walk-take-home.zip"].held))) as packed:
        page = packed.read("river-walk/index.html").decode()
    assert "<nav" not in page
    assert "<nav" in outputs["river-walk/index.html"].content.decode()
