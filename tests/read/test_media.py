"""The length of a video is read from its own boxes, and a broken file is told, never raised.

Layout of the boxes: ISO/IEC 14496-12, sections 4.2 (boxes) and 8.2.2 (movie header); from memory.
"""

from __future__ import annotations

import struct
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.model.lesson import Lesson
from generator.model.places import Places
from generator.read.media import video_problems, video_seconds
from tests.media_files import START, box, film, head
from tests.project import GOOD, problems, read


def wide(kind: bytes, content: bytes) -> bytes:
    """A box with its size in 64 bits."""
    return struct.pack(">I4sQ", 1, kind, 16 + len(content)) + content


@pytest.mark.parametrize(
    ("data", "seconds"),
    [
        pytest.param(START + box(b"moov", head(90)), 90, id="version 0"),
        pytest.param(START + box(b"moov", head(90.5, version=1)), 90.5, id="version 1"),
        pytest.param(START + box(b"mdat", bytes(999)) + box(b"moov", head(7)), 7, id="moov last"),
        pytest.param(START + wide(b"mdat", bytes(99)) + box(b"moov", head(7)), 7, id="64 bits"),
        pytest.param(START + box(b"moov", head(7), size=0), 7, id="size 0: to the end"),
        pytest.param(box(b"moov", box(b"free", bytes(40)) + head(7)), 7, id="a box before mvhd"),
        pytest.param(b"", None, id="empty"),
        pytest.param(b"not a video", None, id="words"),
        pytest.param(START, None, id="no moov"),
        pytest.param(START + box(b"moov"), None, id="no mvhd"),
        pytest.param(START + box(b"mdat", b"x", size=0), None, id="size 0 before moov"),
        pytest.param((START + box(b"moov", head(9)))[:-90], None, id="cut off in mvhd"),
        pytest.param(START + b"\0\0\0\1mdat\0\0", None, id="cut off in a 64 bit size"),
        pytest.param(START + box(b"moov", head(9), size=7), None, id="smaller than its own head"),
        pytest.param(START + box(b"moov", head(9), size=2**31), None, id="longer than the file"),
        pytest.param(box(b"moov", head(9, scale=1).replace(b"\0\0\0\1", bytes(4))), None, id="no scale"),
        pytest.param(box(b"moov", box(b"mvhd", b"\7" + bytes(99))), None, id="unknown version"),
        pytest.param(wide(b"mdat", b"")[:8] + bytes(8), None, id="64 bit size of zero"),
    ],
)  # fmt: skip
def test_length(tmp_path: Path, data: bytes, seconds: float | None) -> None:
    (tmp_path / "v.mp4").write_bytes(data)
    assert video_seconds({"file": "v.mp4"}, tmp_path) == seconds


@given(data=st.binary(max_size=80), cut=st.integers(0, 160))
def test_any_bytes_give_a_length_or_nothing(
    tmp_path_factory: pytest.TempPathFactory, data: bytes, cut: int
) -> None:
    folder = tmp_path_factory.getbasetemp()
    (folder / "v.mp4").write_bytes((START + box(b"moov", head(9)))[:cut] + data)
    seconds = video_seconds({"file": "v.mp4"}, folder)
    assert seconds is None or seconds >= 0


WITH_VIDEO = GOOD.replace("stops:", "video: {file: v.mp4}\nstops:")


def test_a_pause_beyond_the_end(tmp_path: Path) -> None:
    folder = tmp_path / "lessons" / "meal"
    folder.mkdir(parents=True)
    (folder / "v.mp4").write_bytes(film(79))
    found = problems(tmp_path, WITH_VIDEO)
    assert [str(problem.place).split(":", 1)[1] for problem in found] == ["26:11"]
    assert found[0].what == "1:20 is beyond the end of the video, which lasts 1:19"


def test_a_pause_at_the_end(tmp_path: Path) -> None:
    folder = tmp_path / "lessons" / "meal"
    folder.mkdir(parents=True)
    (folder / "v.mp4").write_bytes(film(80))
    lesson = read(tmp_path, WITH_VIDEO)
    assert isinstance(lesson, Lesson)
    assert lesson.duration == 80


def test_a_file_that_is_no_video(tmp_path: Path) -> None:
    folder = tmp_path / "lessons" / "meal"
    folder.mkdir(parents=True)
    (folder / "v.mp4").write_bytes(b"RIFF....AVI ")
    found = problems(tmp_path, WITH_VIDEO)
    assert [str(problem.place).split(":", 1)[1] for problem in found] == ["6:15"]
    assert "not an MP4 video" in found[0].what


@pytest.mark.parametrize(
    ("name", "what"),
    [
        ("50%.mp4", "holds `%`, which has a meaning of its own in an address"),
        ("a#b.mp4", "holds `#`"),
        ("a?b.mp4", "holds `?`"),
        ("a&b.mp4", "holds `&`"),
        ("../v.mp4", "lies outside the lesson's folder"),
        ("/v.mp4", "lies outside the lesson's folder"),
        ("more/v.mp4", "lies outside the lesson's folder"),
        ("..\\v.mp4", "lies outside the lesson's folder"),
        ("C:v.mp4", "lies outside the lesson's folder"),
        ("a|b.mp4", "a sign that not every machine takes"),
        (".v.mp4", "begins with a point"),
        ("v.html", "its name ends in `.mp4`"),
    ],
)
def test_a_name_that_no_page_or_machine_can_use(tmp_path: Path, name: str, what: str) -> None:
    """The signs of addresses: RFC 3986, section 2.2; those of disks: common practice, no source."""
    folder = tmp_path / "lessons" / "meal"
    folder.mkdir(parents=True)
    if "/" not in name:
        (folder / name).write_bytes(START + box(b"moov", head(90)))
    found = problems(tmp_path, GOOD.replace("stops:", f"video: {{file: '{name}'}}\nstops:"))
    assert [str(one.place).split(":", 1)[1] for one in found] == ["6:15"]
    assert what in f"{found[0].what} {found[0].hint}"


def test_a_file_with_nearly_the_same_name(tmp_path: Path) -> None:
    folder = tmp_path / "lessons" / "meal"
    folder.mkdir(parents=True)
    (folder / "vv.mp4").write_bytes(START)
    assert problems(tmp_path, WITH_VIDEO)[0].hint == "did you mean `vv.mp4`?"


def test_a_film_that_may_not_be_opened(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    folder = tmp_path / "lessons" / "meal"
    folder.mkdir(parents=True)
    (folder / "v.mp4").write_bytes(START + box(b"moov", head(90)))
    opened = Path.open

    def refuse(path: Path, mode: str = "r", *rest: Any) -> Any:
        if path.suffix == ".mp4":
            raise PermissionError(13, "Permission denied")
        return opened(path, mode, *rest)

    monkeypatch.setattr(Path, "open", refuse)
    monkeypatch.setattr("generator.read.media.access", lambda path, _: path.suffix != ".mp4")
    found = problems(tmp_path, WITH_VIDEO)
    assert [one.what for one in found] == ["`v.mp4` cannot be opened"]


@pytest.mark.parametrize(
    ("name", "what"),
    [
        ("../v.mp4", "lies outside"),
        ("a/v.mp4", "lies outside"),
        ("/v.mp4", "lies outside"),
        (r"..\v.mp4", "lies outside"),
        ("C:v.mp4", "lies outside"),
        ("..", "lies outside"),
        ("v?.mp4", "a meaning of its own"),
        ("v<b>.mp4", "not every machine"),
        ('v".mp4', "not every machine"),
        (".v.mp4", "hides it"),
        ("v.html", "is no file for `file`"),
        ("v.svg", "is no file for `file`"),
        ("lesson.yaml", "is no file for `file`"),
        ("v.mov", "is no file for `file`"),
    ],
)
@pytest.mark.parametrize("filmed", [True, False])
def test_names_are_looked_at_whether_the_film_is_there_or_not(
    tmp_path: Path, name: str, what: str, filmed: bool
) -> None:
    """A backslash leads out of a folder on Windows."""
    found = list(video_problems({"file": name}, Places("f", {}, {}), tmp_path, filmed=filmed))
    assert [what in one.what for one in found] == [True], found


@pytest.mark.parametrize(
    ("video", "what"),
    [
        ({"poster": "p.html"}, "is no file for `poster`"),
        ({"poster": "p.svg"}, "is no file for `poster`"),
        ({"captions": {"en": "c.html"}}, "is no file for `captions`"),
        ({"captions": {"en": "lesson.yaml"}}, "is no file for `captions`"),
    ],
)
def test_nothing_that_could_run_can_be_named(tmp_path: Path, video: Any, what: str) -> None:
    found = list(video_problems(video, Places("f", {}, {}), tmp_path))
    assert [what in one.what for one in found] == [True], found


def test_a_name_whose_accents_are_spelled_otherwise_on_the_disk(tmp_path: Path) -> None:
    folder = tmp_path / "lessons" / "meal"
    folder.mkdir(parents=True)
    (folder / "cafe\u0301.mp4").write_bytes(START + box(b"moov", head(90)))
    found = problems(tmp_path, WITH_VIDEO.replace("v.mp4", "caf\u00e9.mp4"))
    assert "spelled in another way on the disk" in found[0].hint
