"""Every kind of page has its pictures, each shown by the guide, the light beside the dark."""

from __future__ import annotations

import re
from pathlib import PurePosixPath

import pytest

from bench.pictures import MOST
from bench.picturing.picture import FOLDER, SIZES, Picture
from bench.picturing.shown import PAGE, page
from bench.picturing.table import PICTURES
from generator.present.pages.codes import CODES
from generator.present.pages.components import PATH as COMPONENTS
from generator.present.pages.lesson_table import LESSONS
from generator.present.pages.not_found import NOT_FOUND
from generator.present.pages.table import PAGES
from tests.site_project import ROOT

WRITTEN = sorted(file.stem for file in (ROOT / "lessons").glob("*.md"))
STATES = ("who", "pacer", "ending", "not-kept")
"""What is no page of its own, and asked for by name."""


@pytest.mark.parametrize("name", [one.name for one in PAGES])
def test_every_page_of_a_lesson_has_its_pictures(name: str) -> None:
    assert any(PurePosixPath(one.path).match(f"*/{name}") for one in PICTURES)


@pytest.mark.parametrize("name", WRITTEN)
def test_every_written_page_has_its_pictures(name: str) -> None:
    assert f"{name}.html" in {one.path for one in PICTURES}


@pytest.mark.parametrize("kind", sorted(one.name for one in (ROOT / "theme/stops").iterdir()))
def test_every_kind_of_stop_has_its_pictures(kind: str) -> None:
    assert kind.replace("_", "-") in {one.name for one in PICTURES}


def test_what_else_there_is_has_its_pictures() -> None:
    assert set(STATES) <= {one.name for one in PICTURES}
    assert {NOT_FOUND, CODES, LESSONS} <= {one.path for one in PICTURES}
    assert {COMPONENTS, "guide/index.html"} <= {one.path for one in PICTURES if one.preview}


@pytest.mark.parametrize("picture", PICTURES, ids=lambda one: one.name)
def test_a_picture_is_there_on_both_screens_in_light_and_dark(picture: Picture) -> None:
    assert len(set(picture.files())) == 4
    for width, height in SIZES.items():
        for scheme in ("light", "dark"):
            data = (FOLDER / picture.file(width, scheme)).read_bytes()
            assert _size(data) == (width, height)


def _size(data: bytes) -> tuple[int, int]:
    """Width and height of an extended WebP: RFC 9649, section 2.7, less one in three bytes each."""
    assert (data[:4], data[8:16]) == (b"RIFF", b"WEBPVP8X")
    return tuple(1 + int.from_bytes(data[at : at + 3], "little") for at in (24, 27))  # type: ignore[return-value]  # two of them


def test_they_are_light_and_no_other_lies_beside_them() -> None:
    assert {file.name for file in FOLDER.iterdir()} == {
        name for one in PICTURES for name in one.files()
    }
    assert sum(file.stat().st_size for file in FOLDER.iterdir()) < MOST


def test_the_guide_shows_each_in_words_too() -> None:
    said = (ROOT / PAGE).read_text("utf-8")
    assert said == page(), "run python bench/pictures.py"
    shown = re.findall(r"!\[([^\]]+)\]\(pictures/([^)]+)\)", said)
    assert [name for _, name in shown] == [name for one in PICTURES for name in one.files()]
    assert len({words for words, _ in shown}) == len(shown)


def test_the_light_stands_beside_the_dark() -> None:
    for line in page().splitlines():
        if line.startswith("!["):
            light, dark = re.findall(r"\(pictures/([^)]+)\)", line)
            assert light.replace("-light", "-dark") == dark
