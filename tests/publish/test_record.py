"""A publication is written into the record whole or not at all, and only what differs."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from decimal import Decimal
from pathlib import Path

import pytest

from generator.model.figure import FigureKind
from generator.model.published import SITE_RECORD, LessonState, Publication, PublishedNumber
from generator.publish.record import append_publication
from generator.read.published import read_lesson_record, read_published
from generator.write import appended

GAP = PublishedNumber(Decimal("1.5"), "g", FigureKind.GAP, "Hot soup: all rows")
EN = LessonState(
    at="",
    language="en",
    title="Soup — “hot”",
    numbers={"b.gap": GAP, "a.gap": replace(GAP, value=Decimal(300))},
    stamps={"worksheet": "K7Q2FM"},
    stops={"b": "Two bowls"},
    times={"b": "1:10"},
    pages=("index.html",),
    texts="9ab2",
)
ES = replace(EN, language="es", title="Sopa")
FIRST = Publication("2026-01-01T08:00:00Z", "0.3", "", ("en", "es"), ("soup",))
LATER = replace(FIRST, at="2026-02-01T08:00:00Z")


def out(
    root: Path, publication: Publication, **lessons: Mapping[str, LessonState]
) -> tuple[str, ...]:
    """Publish these lessons; gives the files that were added to."""
    files = append_publication(root, publication, lessons)
    return tuple(file.relative_to(root).name for file in files)


def test_what_was_written_is_read_again(tmp_path: Path) -> None:
    assert out(tmp_path, FIRST, soup={"en": EN, "es": ES}) == ("soup.jsonl", "site.jsonl")
    held = read_published(tmp_path)
    assert held.publications == (FIRST,)
    assert held.last("soup", "en") == replace(EN, at=FIRST.at)
    assert held.last("soup", "es") == replace(ES, at=FIRST.at)
    assert list(read_lesson_record(tmp_path, "soup")[0].numbers) == ["b.gap", "a.gap"]


def test_only_a_state_that_differs_is_added(tmp_path: Path) -> None:
    out(tmp_path, FIRST, soup={"en": EN})
    assert out(tmp_path, LATER, soup={"en": EN}) == ("site.jsonl",)
    other = replace(EN, title="Broth")
    out(tmp_path, replace(LATER, at="2026-03-01T08:00:00Z"), soup={"en": other})
    lines = (tmp_path / "site_data/published/lessons/soup.jsonl").read_text("utf-8").splitlines()
    assert [line.startswith('{"numbers"') for line in lines] == [True, False, False]


def test_what_goes_out_no_more_is_gone_once(tmp_path: Path) -> None:
    out(tmp_path, FIRST, soup={"en": EN, "es": ES}, stew={"en": EN})
    out(tmp_path, LATER, soup={"en": EN})
    out(tmp_path, replace(LATER, at="2026-03-01T08:00:00Z"), soup={"en": EN})
    held = read_published(tmp_path)
    assert [one.gone for one in held.lessons["stew"]] == [False, True]
    assert [(one.language, one.gone) for one in held.lessons["soup"]] == [
        ("en", False),
        ("es", False),
        ("es", True),
    ]


def test_a_disk_that_fails_leaves_every_file_as_it_was(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    out(tmp_path, FIRST, soup={"en": EN})
    before = {file: file.read_bytes() for file in tmp_path.rglob("*.jsonl")}
    write = appended.write_bytes_whole

    def full(file: Path, data: bytes) -> Path:
        if file.name == Path(SITE_RECORD).name:
            raise OSError(28, "No space left on device")
        return write(file, data)

    monkeypatch.setattr(appended, "write_bytes_whole", full)
    with pytest.raises(OSError, match="No space"):
        out(tmp_path, LATER, soup={"en": ES}, stew={"en": EN})
    assert {file: file.read_bytes() for file in tmp_path.rglob("*.jsonl")} == before
