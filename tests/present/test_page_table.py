"""A page of a lesson is one entry: it is made, linked, carried home and kept, and no other file is touched."""

from __future__ import annotations

import shutil
from dataclasses import dataclass, replace
from io import BytesIO
from pathlib import Path
from typing import ClassVar
from zipfile import ZipFile

import pytest

from generator.making import make_lesson
from generator.present.output import Output
from generator.present.pages import table
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.page import Build, Look
from generator.present.pages.page_of_lesson import LessonPage, Reader
from generator.present.pages.take_home import KEEP_LIST
from generator.present.views.page import LinkView, PageView
from generator.steps.surroundings import surroundings
from tests.project import GOOD, ROOT, library, worked

TEMPLATE = """\
{% extends "base.html" %}
{% block main %}<a href="{{ at.link(view.back.href) }}">{{ view.back.label }}</a><p>{{ view.told }}</p>{% endblock %}
"""


@dataclass(frozen=True, slots=True)
class SongView:
    template: ClassVar[str] = "song.html"

    page: PageView
    back: LinkView
    told: str


def song_view(told: PageInLesson) -> SongView:
    return SongView(told.page, told.links.lesson, told.result.lesson.file.title)


SONG = LessonPage(
    name="song.html",
    view=song_view,
    has=lambda _: True,
    title="worksheet_title",
    link="cards_title",
    look=Look(("screen", "reading")),
    reader=Reader.FAMILY,
    printed=True,
    searched=True,
    builds=frozenset({Build.PREVIEW, Build.PUBLISHED}),
    framed=False,
    in_copy=True,
    offline=True,
)


@pytest.fixture(scope="module")
def theme(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The theme with one more template."""
    root = tmp_path_factory.mktemp("song")
    shutil.copytree(ROOT / "theme", root / "theme")
    (root / "theme/song.html").write_text(TEMPLATE, "utf-8")
    return root


def made(
    root: Path,
    folder: Path,
    monkeypatch: pytest.MonkeyPatch,
    *more: LessonPage,
    preview: bool = False,
) -> dict[str, Output]:
    """The good lesson's files, with more pages in the table."""
    monkeypatch.setattr(table, "PAGES", (*table.PAGES, *more))
    around = surroundings(root, library(), preview=preview)
    return {one.path: one for one in make_lesson({"en": worked(folder, GOOD)}, around)}


def copied(outputs: dict[str, Output]) -> dict[str, str]:
    """The texts of the pages in the copy to take home."""
    with ZipFile(BytesIO(bytes(outputs["meal/meal-take-home.zip"].held))) as packed:
        names = [name for name in packed.namelist() if name.endswith(".html")]
        return {name: packed.read(name).decode() for name in names}


def test_a_new_entry_is_made_linked_carried_home_and_kept(
    theme: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    outputs = made(theme, tmp_path, monkeypatch, SONG)
    page = outputs["meal/song.html"].content.decode()
    assert "<p>Two breakfasts</p>" in page
    assert '<a href="index.html">' in page
    assert "assets/reading.css" in outputs["meal/song.html"].needs
    for name in ("index.html", "notes.html"):
        assert 'href="song.html"' in outputs[f"meal/{name}"].content.decode()
        assert 'href="song.html"' in copied(outputs)[f"meal/{name}"]
    assert "meal/song.html" in copied(outputs)
    assert '"path":"song.html"' in outputs[f"meal/{KEEP_LIST}"].content.decode()


@pytest.mark.parametrize(
    ("reader", "where"),
    [
        (Reader.FAMILY, {"index.html"}),
        (Reader.TEACHER, {"index.html", "projector.html"}),
        (Reader.CLASS, {"notes.html"}),
        (Reader.EDUCATOR, {"recording/index.html"}),
    ],
)
def test_whom_a_page_is_for_says_where_it_is_linked(
    theme: Path,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    reader: Reader,
    where: set[str],
) -> None:
    page = replace(SONG, name="recording/song.html", reader=reader, printed=False)
    outputs = made(theme, tmp_path, monkeypatch, page, preview=True)
    linked = {
        path.removeprefix("meal/")
        for path, one in outputs.items()
        if path.endswith(".html") and 'song.html"' in one.content.decode()
    }
    assert linked == where


def test_a_page_stays_out_of_what_its_entry_does_not_name(
    theme: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    page = replace(SONG, in_copy=False, offline=False, searched=False)
    outputs = made(theme, tmp_path, monkeypatch, page)
    assert "meal/song.html" not in copied(outputs)
    assert "song.html" not in outputs[f"meal/{KEEP_LIST}"].content.decode()
    assert 'name="robots" content="noindex"' in outputs["meal/song.html"].content.decode()
    site = library().site.address
    assert f'href="{site}meal/song.html"' in copied(outputs)["meal/index.html"]


def test_a_page_is_made_only_in_the_builds_and_lessons_of_its_entry(
    theme: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    hidden = replace(SONG, builds=frozenset({Build.PREVIEW}))
    absent = replace(SONG, name="other.html", has=lambda result: bool(result.days))
    outputs = made(theme, tmp_path, monkeypatch, hidden, absent)
    assert not {"meal/song.html", "meal/other.html"} & outputs.keys()
    assert "song.html" not in outputs["meal/index.html"].content.decode()


def test_names_are_told_apart() -> None:
    names = [page.name for page in table.PAGES]
    assert len(names) == len(set(names))
