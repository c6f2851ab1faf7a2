"""A lesson's drawing on its pages: poster, picture of a shared link, head of the worksheet, and its files."""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path

import pytest

from generator.making import Surroundings, make_lesson
from generator.present.output import Output
from generator.read.library import read_library
from generator.steps.surroundings import surroundings
from generator.steps.work import work_lesson
from tests.site_project import copy_project

RIVER = "river-walk"
SITE = "https://kitchen.larkmead.example/"


@pytest.fixture(scope="module")
def project(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return copy_project(tmp_path_factory.mktemp("covers"))


def made(project: Path, address: str) -> dict[str, Output]:
    library = read_library(project)
    results = work_lesson(project, f"lessons/{RIVER}/lesson.yaml", library).results
    around: Surroundings = surroundings(project, library)
    told = replace(around, site=around.site.model_copy(update={"address": address}))
    return {one.path: one for one in make_lesson(results, told)}


@pytest.fixture(scope="module")
def outputs(project: Path) -> dict[str, Output]:
    return made(project, SITE)


def page(outputs: dict[str, Output], path: str) -> str:
    return outputs[path].content.decode()


def test_every_language_shows_the_same_cover(outputs: dict[str, Output]) -> None:
    files = {path for path in outputs if "plums" in path}
    assert files == {
        "river-walk/plums.svg",
        "river-walk/plums-flat.svg",
        "river-walk/plums-poster.svg",
        "river-walk/plums.png",
        "river-walk/plums-numbers.svg",
        "es/river-walk/plums-numbers.svg",
    }


@pytest.mark.parametrize("folder", ["", "es/"])
def test_a_shared_link_shows_the_drawing(outputs: dict[str, Output], folder: str) -> None:
    """The property as the Open Graph protocol has it (M): an address in full."""
    told = page(outputs, f"{folder}river-walk/index.html")
    [picture] = re.findall(r'<meta property="og:image" content="([^"]+)"', told)
    assert picture == f"{SITE}river-walk/plums.png"
    assert picture.removeprefix(SITE) in outputs


def test_a_site_without_an_address_names_no_picture(project: Path) -> None:
    assert "og:image" not in page(made(project, ""), "river-walk/index.html")


def test_a_film_without_a_still_begins_with_the_drawing(outputs: dict[str, Output]) -> None:
    for folder in ("", "es/"):
        told = page(outputs, f"{folder}river-walk/index.html")
        [poster] = re.findall(r'<video [^>]*poster="([^"]+)"', told)
        assert poster.endswith("river-walk/plums-poster.svg") or poster == "plums-poster.svg"
        assert "river-walk/plums-poster.svg" in outputs[f"{folder}river-walk/index.html"].needs


@pytest.mark.parametrize("name", ["worksheet", "answers"])
def test_a_sheet_has_the_drawing_in_its_head(outputs: dict[str, Output], name: str) -> None:
    told = page(outputs, f"river-walk/{name}.html")
    head = told[told.index('<header class="head">') : told.index("</header>", told.index("<h1>"))]
    assert re.search(r'aria-label="\w+ gaps, [^"\d]+\."', head)
    assert len(re.findall(r'<use href="#gap-\w+" x=', head)) > 1
    drawing = head[head.index("<svg") : head.index("</svg>")]
    assert "<text" not in drawing
