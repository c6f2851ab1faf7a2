"""The take-home copy: the same bytes again, with all that its pages show."""

from __future__ import annotations

from io import BytesIO
from zipfile import ZIP_STORED, ZipFile

import pytest

from generator.present.output import Output
from generator.write.take_home import take_home

FILES = {"assets/lesson.js": b"1;" * 50, "a/a.mp4": b"film" * 50}
PAGES = [
    Output("es/a/notes.html", b"<p>notes", needs=("assets/lesson.js",)),
    Output("es/a/index.html", b"<p>page", needs=("assets/lesson.js", "a/a.mp4")),
]


def test_pages_lie_side_by_side_and_bring_what_they_need() -> None:
    with ZipFile(BytesIO(bytes(take_home("a", PAGES, FILES.__getitem__)))) as packed:
        held = {name: packed.read(name) for name in packed.namelist()}
        assert packed.getinfo("a/a.mp4").compress_type == ZIP_STORED
    assert held == {
        "a/index.html": b"<p>page",
        "a/notes.html": b"<p>notes",
        "a/a.mp4": FILES["a/a.mp4"],
        "a/assets/lesson.js": FILES["assets/lesson.js"],
    }


def test_the_same_files_make_the_same_bytes(monkeypatch: pytest.MonkeyPatch) -> None:
    first = bytes(take_home("a", PAGES, FILES.__getitem__))
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1700000000")
    assert bytes(take_home("a", reversed(PAGES), FILES.__getitem__)) == first
    with ZipFile(BytesIO(first)) as packed:
        assert {entry.date_time for entry in packed.infolist()} == {(1980, 1, 1, 0, 0, 0)}
