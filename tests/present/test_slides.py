"""Slides: the numbers of the page, without a break along the video, drawn the same every time."""

from __future__ import annotations

import re
import struct
from pathlib import Path

import pytest
import typst

from generator.compute.result import LessonResult
from generator.present.recording.slides.order import slides
from generator.present.recording.slides.picture import pictures
from generator.present.recording.slides.slide import (
    Before,
    BothNumbers,
    Held,
    Line,
    MoveCount,
    Pause,
    Question,
    RowOfTwo,
    Slide,
)
from generator.present.words.say import Say
from tests.project import ROOT, library, worked

LESSON = """\
title: Two breakfasts
summary: Find the gap.
grades: 3-5
minutes: 10
stops:
  - watch: {from: "0:00", to: "0:20"}
    say: |
      Hello from Larkmead. Today we look at breakfast.

      Two people eat. Who eats what?
  - ask: {at: "0:30", prompt: "Which *side* holds more?", reveal: We will see.}
  - compare:
      id: breakfast
      at: "1:00"
      measure: energy
      sides: [At home, On the way]
      rows:
        - [{food: apple-raw, amount: 1 medium}, {food: apple-pie-homemade, amount: 1 slice}]
        - [{food: water-tap, amount: 8 fl oz}, {food: coconut-water, amount: 1 cup}]
    say: |
      The first row.

      The second row, which takes a little longer to say.
  - move: {at: "1:30", for: breakfast, one_move_per: 10, moves: [march, side-step]}
  - talk: {at: "1:40", prompt: What do you like?}
"""


@pytest.fixture
def result(tmp_path: Path) -> LessonResult:
    return worked(tmp_path, LESSON)


@pytest.fixture
def say() -> Say:
    return Say(library().words["en"])


@pytest.fixture
def shown(result: LessonResult, say: Say) -> tuple[Slide, ...]:
    return slides(result, say)


def test_the_slides_follow_the_stops(shown: tuple[Slide, ...]) -> None:
    kinds = [type(slide.content) for slide in shown]
    assert kinds == [
        *(Line, Line),
        *(Question, Pause),
        *(RowOfTwo, RowOfTwo, Pause),
        *(Before, MoveCount, MoveCount, Pause),
        *(Question, Pause),
    ]


def test_the_slides_fill_the_video_without_a_break(shown: tuple[Slide, ...]) -> None:
    assert shown[0].start == 0
    assert [slide.start + slide.duration for slide in shown[:-1]] == [
        slide.start for slide in shown[1:]
    ]
    assert shown[-1].start + shown[-1].duration == 102_000, "two seconds after the last pause point"


def test_a_pause_slide_stands_before_and_after_its_pause_point(shown: tuple[Slide, ...]) -> None:
    spans = [
        (slide.start, slide.start + slide.duration)
        for slide in shown
        if isinstance(slide.content, Pause)
    ]
    assert spans == [(28_000, 31_000), (58_000, 61_000), (88_000, 91_000), (98_000, 102_000)]


def test_a_slide_begins_with_its_paragraph(shown: tuple[Slide, ...]) -> None:
    """Eight words at 120 a minute take 4 s; three take 1.5 s."""
    assert shown[1].start == 4_000
    rows = [slide.start for slide in shown if isinstance(slide.content, RowOfTwo)]
    assert rows == [31_000, 31_000 + 1_500]


def test_the_key_line_is_the_last_that_is_said(shown: tuple[Slide, ...]) -> None:
    assert [slide.content.line for slide in shown if isinstance(slide.content, Line)] == [
        "Today we look at breakfast.",
        "Who eats what?",
    ]


def test_a_prompt_loses_its_marks(shown: tuple[Slide, ...]) -> None:
    prompts = [slide.content.prompt for slide in shown if isinstance(slide.content, Question)]
    assert prompts == ["Which side holds more?", "What do you like?"]


def test_the_numbers_are_those_of_the_page(
    shown: tuple[Slide, ...], result: LessonResult, say: Say
) -> None:
    rows = [slide.content for slide in shown if isinstance(slide.content, RowOfTwo)]
    for row, computed in zip(rows, result.comparisons["breakfast"].rows, strict=True):
        assert [row.first.value, row.second.value] == [
            say.number(held.shown.value) for held in computed.sides
        ]


def test_the_numbers_are_those_of_the_label_rule(shown: tuple[Slide, ...]) -> None:
    """SR Legacy 171688, 52 kcal, 1 medium = 182 g: 94.6 → 90 by 21 CFR 101.9(c)(1) (references.md 3.1, edge test, C)."""
    apple = next(slide.content.first for slide in shown if isinstance(slide.content, RowOfTwo))
    assert isinstance(apple, Held)
    assert (apple.value, apple.unit, apple.blocks.tens) == ("90", "kcal", 9)


def test_a_move_shows_its_count_and_what_is_left_over(shown: tuple[Slide, ...]) -> None:
    """410 − 90 = 320 = 32 tens; 45 − 0 = 45 = 4 tens and 5."""
    moves = [slide.content for slide in shown if isinstance(slide.content, MoveCount)]
    assert [(move.count, move.left_over) for move in moves] == [("32", ""), ("4", "5 left over")]
    assert all(move.team.startswith("This is a team count") for move in moves)


def test_stops_that_follow_too_soon_still_leave_no_break(tmp_path: Path, say: Say) -> None:
    hasty = (
        LESSON.replace('"0:30"', '"0:20"')
        .replace('"1:00"', '"0:21"')
        .replace('"1:30"', '"0:21"')
        .replace('"1:40"', '"0:22"')
    )
    shown = slides(worked(tmp_path, hasty), say)
    assert all(slide.duration > 0 for slide in shown)
    assert [slide.start + slide.duration for slide in shown[:-1]] == [
        slide.start for slide in shown[1:]
    ]


def test_a_lesson_without_times_has_no_slides(tmp_path: Path, say: Say) -> None:
    untimed = (
        "\n".join(LESSON.split("\n")[:4]) + "\nstops:\n  - talk: {prompt: What do you like?}\n"
    )
    assert slides(worked(tmp_path, untimed), say) == ()


def test_every_slide_is_drawn_as_a_picture_of_one_size(shown: tuple[Slide, ...]) -> None:
    """Width and height stand in the first chunk of a PNG (ISO/IEC 15948, section 11.2.2)."""
    drawn = pictures(shown, ROOT / "theme")
    assert len(drawn) == len(shown)
    assert {struct.unpack(">II", png[16:24]) for png in drawn} == {(960, 540)}
    assert len(set(drawn)) == len(drawn), "two slides look alike"


def test_a_slide_is_drawn_the_same_every_time(shown: tuple[Slide, ...]) -> None:
    assert pictures(shown[:6], ROOT / "theme") == pictures(shown[:6], ROOT / "theme")


def test_one_slide_alone_and_none_are_drawn_too(shown: tuple[Slide, ...]) -> None:
    assert len(pictures(shown[:1], ROOT / "theme")) == 1
    assert pictures((), ROOT / "theme") == ()


DAY = """\
title: A day
summary: A day of one adult.
grades: 3-5
minutes: 10
stops:
  - watch: {from: "0:00", to: "0:10"}
  - day:
      id: nadia
      at: "0:40"
      person: {name: Nadia, age: 34, sex: woman, activity: active}
      help: HELP
      ate: [{food: oatmeal-cooked, amount: 1 cup}, {food: milk-whole, amount: 1 cup}]
      did: [Walked to school]
"""


@pytest.mark.parametrize(
    ("help_", "workings"), [("none", [""]), ("worked", ["", "2,240 − 320 = 1,920"])]
)
def test_a_day_shows_both_numbers_and_where_it_is_worked_how_they_are_subtracted(
    tmp_path: Path, say: Say, help_: str, workings: list[str]
) -> None:
    """170 + 150 of the label rule (references.md 3.4, C); 2,240 by NASEM 2023 for women (S, C)."""
    found = slides(worked(tmp_path, DAY.replace("HELP", help_)), say)
    days = [slide for slide in found if isinstance(slide.content, BothNumbers)]
    told = [slide.content for slide in days if isinstance(slide.content, BothNumbers)]
    assert [one.working for one in told] == workings
    assert [bool(one.tilt) for one in told] == [bool(one) for one in workings]
    assert [(one.gave.split()[0], one.took.split()[0]) for one in told] == [("320", "2,240")] * len(
        told
    )
    assert {"nadia.eaten", "nadia.needed"} <= set(days[0].shows)
    assert pictures(days, ROOT / "theme")


def test_slides_are_set_in_a_family_of_the_pages() -> None:
    """What lies beside them, so that a film looks alike on every machine and as the pages do."""
    families = re.search(
        r"set text\(font: \(([^)]*)\)", (ROOT / "theme/slides.typ").read_text("utf-8")
    )
    assert families
    first, *others = re.findall(r'"([^"]+)"', families[1])
    pages = re.search(r"html \{\s*font: ([^;]+);", (ROOT / "theme/css/page.css").read_text("utf-8"))
    assert pages
    assert f'"{first}"' in pages[1]
    assert others == [
        "DejaVu Sans Mono"
    ]  # the only sans that typst has itself, for signs of arithmetic
    folder = ROOT / "theme/vendor" / first.lower().replace(" ", "-")
    held = [file.read_bytes() for file in sorted(folder.glob("*.ttf"))]
    assert len(held) == 2  # bold and regular
    assert all(first.encode("utf-16-be") in font for font in held)


def test_the_family_draws_the_slides(
    shown: tuple[Slide, ...], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Without it the same words are drawn otherwise."""
    own = pictures(shown[:1], ROOT / "theme")
    compiled = typst.compile

    def without(*given: Path, font_paths: list[Path], **named: str) -> bytes:
        assert font_paths
        return compiled(*given, **named)  # type: ignore[call-overload, no-any-return]  # as it was called

    monkeypatch.setattr(typst, "compile", without)
    assert pictures(shown[:1], ROOT / "theme") != own
