"""A new site takes over what nobody touched, and what it shares with the old one is never written to."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.engine.pack import Pack, write_pack
from generator.present.output import Output
from generator.write import fill
from generator.write.fill import OldSite, Piece, Unpacker
from generator.write.fresh import mark
from generator.write.served import Served

FILES = [("one/index.html", b"page"), ("es/one/index.html", b"hoja")]


@pytest.fixture
def pack(tmp_path: Path) -> Pack:
    """Two pages of a lesson."""
    return write_pack(tmp_path / "pack", {}, FILES)


@pytest.fixture
def piece(pack: Pack, tmp_path: Path) -> Piece:
    """A lesson with a film."""
    film = tmp_path / "film.mp4"
    film.write_bytes(b"film")
    return Piece("one", "key", pack, {"one/film.mp4": film})


def unpacked(piece: Piece, folder: Path) -> Path:
    assert Unpacker(str(folder))(piece) == ""
    return folder


def seen(folder: Path, **keys: str) -> OldSite:
    marks = {str(file): mark(str(file)) for file in folder.rglob("*") if file.is_file()}
    return OldSite(str(folder), marks, keys)


def test_a_lesson_is_written_with_its_film(piece: Piece, tmp_path: Path) -> None:
    site = unpacked(piece, tmp_path / "site")
    assert (site / "es/one/index.html").read_bytes() == b"hoja"
    assert (site / "one/film.mp4").read_bytes() == b"film"
    assert (site / "one/film.mp4").stat().st_nlink == 1, "a site shares no file with the lessons"


def test_what_is_untouched_is_taken_over_as_it_is(piece: Piece, tmp_path: Path) -> None:
    old, new = unpacked(piece, tmp_path / "old"), tmp_path / "new"
    assert seen(old, one="key").hand_over(piece, str(new))
    for path in piece.paths:
        assert (new / path).samefile(old / path)


@pytest.mark.parametrize("key", ["another", None])
def test_another_lesson_is_not_taken_over(piece: Piece, tmp_path: Path, key: str | None) -> None:
    old = seen(unpacked(piece, tmp_path / "old"), **({"one": key} if key else {}))
    assert not old.hand_over(piece, str(tmp_path / "new"))
    assert not (tmp_path / "new").exists()


@pytest.mark.parametrize("path", ["one/index.html", "one/film.mp4", "es/one/index.html"])
@pytest.mark.parametrize("how", ["altered", "gone"])
def test_nothing_is_taken_over_where_one_file_was_touched(
    piece: Piece, tmp_path: Path, path: str, how: str
) -> None:
    folder = unpacked(piece, tmp_path / "old")
    old = seen(folder, one="key")
    file = folder / path
    file.write_bytes(b"evil") if how == "altered" else file.unlink()
    assert not old.hand_over(piece, str(tmp_path / "new"))
    assert not (tmp_path / "new").exists()


def test_a_disk_without_second_names_gets_copies(
    piece: Piece, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refused(*_: object) -> None:
        raise PermissionError

    monkeypatch.setattr(fill.os, "link", refused)
    old, new = unpacked(piece, tmp_path / "old"), tmp_path / "new"
    assert seen(old, one="key").hand_over(piece, str(new))
    assert (new / "one/index.html").read_bytes() == b"page"
    assert not (new / "one/index.html").samefile(old / "one/index.html")


def test_a_damaged_pack_is_named(piece: Piece, pack: Pack, tmp_path: Path) -> None:
    pack.file.write_bytes(pack.file.read_bytes()[:-1])
    assert Unpacker(str(tmp_path / "site"))(piece) == "one"


def test_a_file_made_of_the_educators_own_wins(pack: Pack, tmp_path: Path) -> None:
    """Captions that are published with corrections have the name of those beside the lesson."""
    own = tmp_path / "own.html"
    own.write_bytes(b"her own")
    piece = Piece("one", "key", pack, {"one/index.html": own})
    assert sorted(piece.paths) == sorted(path for path, _ in FILES)
    assert (unpacked(piece, tmp_path / "site") / "one/index.html").read_bytes() == b"page"


def test_a_preview_writes_what_changed_and_removes_what_is_gone(
    piece: Piece, tmp_path: Path
) -> None:
    written: list[str] = []

    def unpack(pieces: list[Piece], unpacker: Unpacker) -> None:
        written.extend(one.name for one in pieces)
        assert not any(map(unpacker, pieces))

    served = Served(tmp_path / "served")
    served.renew([piece], [Output("care.html", b"care"), Output("old.html", b"old")], unpack)
    care = (tmp_path / "served/care.html").stat()
    served.renew([piece], [Output("care.html", b"care")], unpack)
    assert written == ["one"]
    assert (tmp_path / "served/care.html").stat().st_ctime_ns == care.st_ctime_ns
    assert not (tmp_path / "served/old.html").exists()
    other = Piece("one", "other", write_pack(tmp_path / "other", {}, FILES[:1]), piece.copied)
    served.renew([other], [], unpack)
    assert written == ["one", "one"]
    assert not (tmp_path / "served/es/one/index.html").exists()
    assert (tmp_path / "served/one/film.mp4").read_bytes() == b"film"
    served.renew([], [], unpack)
    assert [file for file in (tmp_path / "served").rglob("*") if file.is_file()] == []
