"""Every fault of a caption file is told at its place, all of them in one run.

The format: W3C WebVTT, section 4 (references.md 6.1; partly read, partly from memory). A second
judge, the npm package webvtt-parser, is asked in tests/browser/test_captions.py.
"""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.model.captions import CaptionFile
from generator.model.lesson import Lesson
from generator.problems import Problem, Weight
from generator.read.captions import read_captions
from generator.read.vtt import read_vtt
from tests.media_files import film
from tests.project import GOOD, read

CUE = "00:01.000 --> 00:02.000\nHello.\n"
HEAD = "WEBVTT\n\n"


def told(text: str) -> list[str]:
    """Line, column and sentence of each problem."""
    found = read_vtt("a.vtt", "en", text)
    assert not isinstance(found, CaptionFile), "nothing was found to be wrong"
    assert all(problem.weight is Weight.MUST and problem.hint for problem in found)
    return [f"{one.place.line}:{one.place.column}: {one.what}" for one in found]


def cues(text: str) -> list[tuple[int, int, tuple[str, ...]]]:
    """Start, end and lines of each cue."""
    found = read_vtt("a.vtt", "en", text)
    assert isinstance(found, CaptionFile), list(map(str, found))
    return [(cue.start_ms, cue.end_ms, cue.lines) for cue in found.cues]


BROKEN = {
    "empty": ("", ["1:1: the file is empty"]),
    "signature runs on": ("WEBVTTX\n\n" + CUE, ["1:7: the first line is `WEBVTTX`"]),
    "signature in small letters": ("webvtt\n\n" + CUE, ["1:1: the first line is `webvtt`"]),
    "no signature": ("Hello\n\n" + CUE, ["1:1: the first line is not WEBVTT", "1:1: “Hello” has no times"]),
    "signature too late": ("\nWEBVTT\n\n" + CUE, ["2:1: WEBVTT is not the first line"]),
    "SRT": ("1\n00:00:01,000 --> 00:00:02,000\nHello.\n", ["1:1: the file begins like an SRT file, and no browser reads that", "2:1: the time 00:00:01,000 has a comma where a point must be"]),
    "no blank line below the head": ("WEBVTT\n" + CUE, ["2:1: there is no blank line below WEBVTT"]),
    "arrow in the head": ("WEBVTT a --> b\n\n" + CUE, ["1:10: `-->` stands in the first line"]),
    "no cue": ("WEBVTT\n", ["1:1: there is no caption in this file"]),
    "comma": (HEAD + CUE.replace(".000 -", ",000 -"), ["3:1: the time 00:01,000 has a comma where a point must be"]),
    "one digit for minutes": (HEAD + "0:01.000 --> 00:02.000\nHi\n", ["3:1: the time 0:01.000 needs two digits for each of its hours, minutes and seconds, up to 59"]),
    "no minutes": (HEAD + "01.000 --> 00:02.000\nHi\n", ["3:1: the time 01.000 has no minutes"]),
    "no thousandths": (HEAD + "00:01 --> 00:02.000\nHi\n", ["3:1: the time 00:01 has no thousandths of a second"]),
    "two digits after the point": (HEAD + "00:01.00 --> 00:02.000\nHi\n", ["3:1: the time 00:01.00 needs three digits after the point"]),
    "sixty seconds": (HEAD + "00:01.000 --> 00:60.000\nHi\n", ["3:15: `00:60.000` is not a time"]),
    "words for a time": (HEAD + "soon --> 00:02.000\nHi\n", ["3:1: `soon` is not a time"]),
    "a time is missing": (HEAD + "00:01.000 -->\nHi\n", ["3:11: the arrow has no space beside it", "3:14: a time is missing"]),
    "end before start": (HEAD + "00:02.000 --> 00:01.000\nHi\n", ["3:15: the cue ends before it begins"]),
    "end at start": (HEAD + "00:02.000 --> 00:02.000\nHi\n", ["3:15: the cue ends when it begins"]),
    "unsorted": (HEAD + "00:05.000 --> 00:06.000\nHi\n\n" + CUE, ["6:1: the cue begins before the one above it"]),
    "arrow without spaces": (HEAD + "00:01.000-->00:02.000\nHi\n", ["3:10: the arrow has no space beside it"]),
    "short arrow": (HEAD + "00:01.000 -> 00:02.000\nHi\n", ["3:11: `->` is not the arrow of a cue"]),
    "dash as arrow": (HEAD + "00:01.000 –> 00:02.000\nHi\n", ["3:11: `–>` is not the arrow of a cue"]),
    "arrow in the words": (HEAD + CUE + "on --> off\n", ["5:4: `-->` stands in the words"]),
    "bare &": (HEAD + CUE + "salt & pepper\n", ["5:6: a bare `&` stands in the words"]),
    "bare <": (HEAD + CUE + "2 < 3\n", ["5:3: a bare `<` stands in the words"]),
    "unknown reference": (HEAD + CUE + "a &carrot; b\n", ["5:3: `&carrot;` stands for nothing"]),
    "unknown tag": (HEAD + CUE + "<font>a\n", ["5:1: a bare `<` stands in the words"]),
    "open tag": (HEAD + CUE + "a <i>b\n", ["5:3: <i> is never ended"]),
    "wrong end": (HEAD + CUE + "<i>b</b></i>\n", ["5:5: </b> ends nothing that is open here"]),
    "voice without a name": (HEAD + "00:01.000 --> 00:02.000\n<v>Hi\n", ["4:1: <v> does not give the name of the voice"]),
    "words in a tag": (HEAD + CUE + "<c loud>b</c>\n", ["5:1: <c> has words in it"]),
    "arrow in a tag": (HEAD + "00:01.000 --> 00:02.000\n<v T-->Hi\n", ["4:5: `-->` stands in the words"]),
    "unknown setting": (HEAD + "00:01.000 --> 00:02.000 algin:start\nHi\n", ["3:25: `algin:start` is not a setting"]),
    "setting out of range": (HEAD + "00:01.000 --> 00:02.000 size:120%\nHi\n", ["3:25: `size:120%` cannot be set"]),
    "setting twice": (HEAD + "00:01.000 --> 00:02.000 align:left align:left\nHi\n", ["3:36: `align` is set twice"]),
    "words on the line of times": (HEAD + "00:01.000 --> 00:02.000 Hi\nyou\n", ["3:25: `Hi` is not a setting"]),
    "no blank line between cues": (HEAD + CUE + CUE.replace("1.", "3.").replace("2.", "4."), ["5:1: there is no blank line before this cue"]),
    "no blank line before a named cue": (HEAD + "1\n" + CUE + "2\n" + CUE, ["6:1: there is no blank line before this cue"]),
    "blank line inside a cue": (HEAD + CUE + "\nand more\n", ["6:1: “and more” has no times"]),
    "NUL": (HEAD + CUE + "a\0b\n", ["5:2: a character that no text may hold stands here"]),
    "cue without words": (HEAD + "00:01.000 --> 00:02.000\n", ["3:1: this cue has no words"]),
    "times on the third line": (HEAD + "1\nHi\n00:01.000 --> 00:02.000\n", ["3:1: “1” has no times", "5:1: this cue has no words"]),
    "STYLE below a cue": (HEAD + CUE + "\nSTYLE\n::cue {}\n", ["6:1: STYLE stands below a cue"]),
    "arrow in a note": (HEAD + "NOTE\na --> b\n\n" + CUE, ["4:3: `-->` stands in a NOTE block"]),
    "unknown region setting": (HEAD + "REGION\nid:a\nwide:3%\n\n" + CUE, ["5:1: `wide:3%` is not a setting"]),
    "space before the time": (HEAD + " " + CUE, ["3:1: a space stands before the time"]),
    "time in the words too late": (HEAD + CUE + "a <00:02.000> b\n", ["5:3: <00:02.000> lies outside of its cue"]),
    "times in the words unsorted": (HEAD + CUE + "<00:01.500>a <00:01.400>b\n", ["5:14: <00:01.400> lies outside of its cue"]),
    "same name twice": (HEAD + "a\n" + CUE + "\na\n" + CUE, ["7:1: the name `a` is given twice"]),
}  # fmt: skip


ALLOWED = {
    "the last rt of a ruby open": "<ruby>a<rt>b</ruby>",
    "each rt closed": "<ruby>a<rt>b</rt>c<rt>d</rt></ruby>",
    "times in the words": "a <00:01.200>b <00:01.900>c",
}
"""What the syntax allows: W3C WebVTT, Candidate Recommendation, section 4.2.2 (from memory: the last end tag of
``rt`` may be left out, and a time in the words lies after the cue's start and before its end). It says nothing of a
region that is not defined, and browsers pass over it; so does this. It allows a cue without words as well, which
is refused here all the same, for an author's cue without words is one that was lost: a rule of ours."""


@pytest.mark.parametrize("words", ALLOWED.values(), ids=ALLOWED)
def test_what_the_syntax_allows_is_read(words: str) -> None:
    assert len(cues(f"{HEAD}00:01.000 --> 00:02.000\n{words}\n")) == 1


def test_a_region_that_is_not_defined_is_passed_over() -> None:
    assert cues(HEAD + "00:01.000 --> 00:02.000 region:none\nHello.\n")


@pytest.mark.parametrize(("text", "problems"), BROKEN.values(), ids=BROKEN)
def test_each_fault_is_told_at_its_place(text: str, problems: list[str]) -> None:
    assert told(text) == problems


@pytest.mark.parametrize("end", ["\r\n", "\r"])
@pytest.mark.parametrize(("text", "problems"), BROKEN.values(), ids=BROKEN)
def test_any_end_of_line_gives_the_same_places(text: str, problems: list[str], end: str) -> None:
    """W3C WebVTT, section 4.1: a line ends with LF, CR or both."""
    assert told(text.replace("\n", end)) == problems


def test_all_faults_are_told_in_one_run() -> None:
    text = (
        "WEBVTTX\n\n00:05.000 --> 00:04.000\nsalt & <i>pepper\n\n00:01.000 --> 00:02.000 x:y\nHi\n"
    )
    assert [line.split(":")[0] for line in told(text)] == ["1", "3", "4", "4", "6", "6"]


def test_times_with_commas_are_told_once_with_their_number() -> None:
    """They come in crowds: every time of an SRT file has one."""
    times = "".join(f"00:0{n},000 --> 00:0{n},500\nHi\n\n" for n in range(1, 6))
    found = read_vtt("a.vtt", "en", HEAD + times)
    assert isinstance(found, list)
    assert len(found) == 1
    assert found[0].hint == "write 00:01.000; 9 more times have a comma in this file"


@pytest.mark.parametrize(
    ("given", "offered"),
    [("1:02,5", "01:02.500"), ("0:00:07.25", "00:07.250"), ("1:2:3.004", "01:02:03.004")],
)
def test_a_time_that_can_be_understood_is_offered_as_it_must_be(given: str, offered: str) -> None:
    found = read_vtt("a.vtt", "en", f"{HEAD}{given} --> 09:00:00.000\nHi\n")
    assert isinstance(found, list)
    assert [problem.hint for problem in found] == [f"write {offered}"]


def test_what_the_format_allows() -> None:
    text = (
        "WEBVTT - our own title\n\n"
        "NOTE a note\nover two lines\n\nSTYLE\n::cue { color: red }\n\n"
        "REGION\nid:low\nwidth:40%\nlines:3\nregionanchor:0%,100%\nviewportanchor:10%,90%\nscroll:up\n\n\n"
        "one\n00:01.000 --> 00:02.000 region:low align:start position:10%,line-left size:80%\n"
        "<v Tilda>Salt &amp; <i.loud>pepper</i>, 2 &lt; 3\n<00:01.500>caf&eacute; > tea\n\n"
        "00:02.000\t-->\t01:00:00.000 line:-1 vertical:rl\n<v Tilda>Hi</v> <v Omar>hello</v>\n\n"
        "NOTE\n\n101:00:00.000 --> 101:00:01.000\n<ruby>a<rt>b</rt></ruby> <lang es>sí</lang>"
    )
    assert cues(text) == [
        (1000, 2000, ("Salt & pepper, 2 < 3", "café > tea")),
        (2000, 3_600_000, ("Hi hello",)),
        (363_600_000, 363_601_000, ("ab sí",)),
    ]


@given(text=st.text(max_size=60), tail=st.sampled_from(["", CUE, "NOTE x", "-->", "00:01"]))
def test_any_text_is_read_or_told(text: str, tail: str) -> None:
    for whole in (text, HEAD + text + tail, HEAD + CUE + text + tail):
        found = read_vtt("a.vtt", "en", whole)
        assert isinstance(found, CaptionFile) or found


def files(folder: Path, data: bytes) -> list[Problem]:
    (folder / "lessons" / "meal").mkdir(parents=True)
    (folder / "lessons" / "meal" / "v.vtt").write_bytes(data)
    problems: list[Problem] = []
    read_captions(folder, folder / "lessons" / "meal", {"captions": {"en": "v.vtt"}}, problems)
    return problems


def test_a_byte_order_mark_is_no_fault(tmp_path: Path) -> None:
    assert files(tmp_path, b"\xef\xbb\xbf" + (HEAD + CUE).encode()) == []


@pytest.mark.parametrize(
    ("data", "place", "what"),
    [
        ((HEAD + CUE + "café\n").encode("latin-1"), "5:4", "this file is not saved as UTF-8"),
        ((HEAD + CUE).encode("utf-16"), "1:1", "this file is not saved as UTF-8"),
        (b"x" * 5_000_001, "1:1", "this file is far too large for a text file: it can have 500 kB"),
    ],
    ids=["Latin-1", "UTF-16", "huge"],
)
def test_bytes_that_are_no_text(tmp_path: Path, data: bytes, place: str, what: str) -> None:
    (found,) = files(tmp_path, data)
    assert (str(found.place), found.what) == (f"lessons/meal/v.vtt:{place}", what)


def test_a_lesson_carries_its_captions_and_a_fault_in_them_stops_it(tmp_path: Path) -> None:
    folder = tmp_path / "lessons" / "meal"
    folder.mkdir(parents=True)
    (folder / "v.mp4").write_bytes(film(90))
    (folder / "v.vtt").write_text(HEAD + CUE)
    text = GOOD.replace("stops:", "video: {file: v.mp4, captions: {en: v.vtt}}\nstops:")
    lesson = read(tmp_path, text)
    assert isinstance(lesson, Lesson)
    assert [cue.text for cue in lesson.captions["en"].cues] == ["Hello."]
    (folder / "v.vtt").write_text(HEAD + CUE.replace(".", ","))
    problems = read(tmp_path, text)
    assert isinstance(problems, list)
    assert [problem.place.path for problem in problems] == ["lessons/meal/v.vtt"]
