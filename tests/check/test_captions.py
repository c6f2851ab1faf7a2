"""Captions are held to the guidelines' limits, or to the educator's own.

Limits: DCMP Captioning Key and its older edition (references.md 6.2): 32 letters a line (R), 130
words a minute for lower-level media (R), two lines, 1.3 to 6 seconds, 140 for middle level (M).
"""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import pytest

from generator.check.captions.beyond_end import beyond_end
from generator.check.captions.foods_misspelled import foods_misspelled
from generator.check.captions.over_pause import over_pause
from generator.check.captions.overlap import overlap
from generator.check.captions.shape import shape
from generator.check.captions.silence import silence
from generator.check.captions.speed import speed
from generator.check.captions.standing import standing
from generator.model.captions import CaptionLimits, clock_ms
from generator.model.grades import GradeBand
from generator.problems import Weight
from generator.read.library import read_library
from tests.caption_lesson import LESSON, Timed, captioned, lines
from tests.project import site


def test_cues_that_overlap(tmp_path: Path) -> None:
    result = captioned(tmp_path, (1, 4, "One"), (2, 3, "two"), (3.5, 5, "three"), (5, 7, "four"))
    assert lines(overlap(result)) == [
        "6:1: this cue begins at 0:02, and another one stands until 0:04",
        "9:1: this cue begins at 0:03.500, and another one stands until 0:04",
    ]


def test_lines_and_letters(tmp_path: Path) -> None:
    result = captioned(
        tmp_path, (1, 4, "a" * 32), (4, 8, "a" * 33), (8, 12, "a\nb"), (12, 16, "a\nb\nc")
    )
    assert lines(shape(result)) == [
        "7:33: this line has 33 letters; 32 fit",
        "13:1: this cue has 3 lines; 2 are read at a glance",
    ]


@pytest.mark.parametrize(
    ("end", "told"), [(2.299, "1.299"), (2.3, None), (7, None), (7.001, "6.001")]
)
def test_how_long_a_cue_stands(tmp_path: Path, end: float, told: str | None) -> None:
    found = list(standing(captioned(tmp_path, (1, end, "Hello"))))
    assert [problem.what.split()[4] for problem in found] == ([told] if told else [])


@pytest.mark.parametrize(
    ("grades", "fastest"), [("K-2", 120), ("3-5", 130), ("6-8", 140), ("2-6", 120)]
)
def test_how_fast_a_cue_may_be(tmp_path: Path, grades: str, fastest: int) -> None:
    lesson = LESSON.replace("grades: 3-5", f"grades: {grades}")
    ten = "one two three four five\nsix seven eight nine ten"
    seconds = 600 / fastest
    assert list(speed(captioned(tmp_path, (0, seconds + 0.001, ten), lesson=lesson))) == []
    (found,) = speed(captioned(tmp_path, (0, seconds * 0.98, ten), lesson=lesson))
    assert f"it is {fastest} at most" in found.what
    assert found.weight is Weight.QUESTION


def test_speakers_and_sounds_are_words_too(tmp_path: Path) -> None:
    """DCMP: every word counts, also speaker labels and sound effects (R)."""
    assert list(speed(captioned(tmp_path, (0, 1.9, "(door) Tilda: So it is.")))) != []


@pytest.mark.parametrize(
    ("start", "end", "told"),
    [
        (28, 30, None),
        (29, 30.5, "this cue runs over the pause at 0:30"),
        (30, 32, "this cue begins right at the pause at 0:30"),
        (30.4, 32, "this cue begins 0.4 seconds after the pause at 0:30"),
        (31, 33, None),
        (19, 21, None),
        (20, 22, None),
        (19.5, 20.5, None),
    ],
)
def test_speech_over_a_pause(tmp_path: Path, start: float, end: float, told: str | None) -> None:
    """The pause is at 0:30, and nothing begins for a second; at 0:20 only watching ends, and no player halts."""
    found = [
        one.what.split(",")[0]
        for one in over_pause(captioned(tmp_path, (start, end, "Which side?")))
    ]
    assert found == ([told] if told else [])


def test_a_stretch_without_a_cue_begins_when_the_hold_of_the_pause_is_over(tmp_path: Path) -> None:
    """From the pause at 0:30 to 0:36.5 nothing is said, of which 5.5 seconds after the hold; 6 are allowed."""
    assert list(silence(captioned(tmp_path, *HELLO, *SAID[2:], END))) != []  # 0:31 to 0:38
    late = tuple((start + 2.5, end + 2.5, words) for start, end, words in SAID[1:])
    assert list(silence(captioned(tmp_path, *HELLO, *late, END))) == []


def test_a_cue_after_the_video(tmp_path: Path) -> None:
    result = captioned(tmp_path, (95, 100.5, "Bye"), (98, 100.501, "bye"))
    assert lines(beyond_end(result)) == ["6:1: this cue ends at 1:40.501, and the video lasts 1:40"]


SAID = (
    (30, 34, "Row one. My oatmeal holds 170."),
    (34, 38, "The bagel holds 260."),
    (38, 43, "Row two. The carrot salad\nholds 110."),
    (43, 47, "The juice holds 1,020."),
)
HELLO = (
    (0, 4, "Hello from Larkmead. We take"),
    (4, 9, "our time with each of these\nfoods today."),
)


END = (54, 58, "Find both gaps.")


def test_script_that_no_caption_has(tmp_path: Path) -> None:
    result = captioned(tmp_path, *HELLO, SAID[0], SAID[3], END)
    assert lines(silence(result)) == [
        "10:1: there is no caption from 0:34 to 0:43, and 11 words of the script of `breakfast` are in none"
    ]


def test_a_quiet_stretch_is_none_when_all_the_script_is_captioned(tmp_path: Path) -> None:
    assert list(silence(captioned(tmp_path, *HELLO, *SAID))) == []


def test_a_stop_without_any_caption(tmp_path: Path) -> None:
    (found,) = silence(captioned(tmp_path, *HELLO))
    assert "from 0:31 to 1:00, and 21 words" in found.what
    assert found.place.line == 6


def test_the_educator_may_set_other_limits(tmp_path: Path) -> None:
    root = site(tmp_path)
    file = root / "site_data" / "site.yaml"
    own = "captions: {line: 40, lines: 3, shortest: 0.5, longest: 7.5, silence: 20, words_per_minute: {3-5: 90}}\n"
    file.write_text(file.read_text("utf-8") + own, "utf-8")
    limits = read_library(root).site.captions
    assert limits == CaptionLimits(
        line=40,
        lines=3,
        shortest=Decimal("0.5"),
        longest=Decimal("7.5"),
        silence=Decimal(20),
        words_per_minute={GradeBand.G3_5: 90},
    )
    assert limits.fastest(GradeBand.G6_8) == 140
    cues: tuple[Timed, ...] = (
        (0, 0.6, "Hi"),
        (1, 8.4, "a" * 40 + "\nb\nc"),
        (40, 42, "five words in two seconds"),
    )
    result = captioned(tmp_path, *cues, limits=limits)
    assert list(shape(result)) == list(standing(result)) == []
    assert len(list(speed(result))) == 2


@pytest.mark.parametrize(
    ("words", "offered"),
    [
        ("My oat meel holds 170.", ("oat meel", "oatmeal")),
        ("My oat meal holds 170.", ("oat meal", "oatmeal")),
        ("The carot salad", ("carot", "carrot")),
        ("The carrott salad", ("carrott", "carrot")),
        ("The carrot sallad", ("sallad", "salad")),
        ("The bagle holds 260.", ("bagle", "bagel")),
        ("The joice", None),  # five letters, one of them another: it may be a word
        ("The oatmeals and juices", None),
        ("Two bagels, a juicy carrot, salads", None),
        ("Take a seat, and each of these", None),
        ("A caret is no food, and a solid meal", None),
    ],
)
def test_foods_that_are_nearly_spelled(
    tmp_path: Path, words: str, offered: tuple[str, str] | None
) -> None:
    found = list(foods_misspelled(captioned(tmp_path, (31, 35, words))))
    if offered is None:
        assert found == []
    else:
        (problem,) = found
        assert problem.what == f"at 0:31, “{offered[0]}” is nearly a food of this lesson"
        assert problem.hint == f"did you mean `{offered[1]}`?"
        assert problem.place.column == words.index(offered[0]) + 1


def test_a_time_as_it_is_found_in_a_player() -> None:
    assert [clock_ms(ms) for ms in (0, 65_250, 3_600_000)] == ["0:00", "1:05.250", "1:00:00"]
