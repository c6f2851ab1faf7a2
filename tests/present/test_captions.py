"""The caption draft: W3C WebVTT, inside the limits of captioning guidelines, and never over a pause."""

from __future__ import annotations

import html
import re
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError

from generator.check.captions.over_pause import over_pause
from generator.check.captions.overlap import overlap
from generator.check.captions.shape import shape
from generator.check.captions.speed import speed
from generator.check.captions.standing import standing
from generator.compute.result import LessonResult
from generator.compute.timeline import HOLD, spans
from generator.model.captions import CaptionFile, CaptionLimits
from generator.model.grades import GradeBand
from generator.model.stops import Stop
from generator.model.stops.ask import AskStop
from generator.model.stops.watch import WatchStop
from generator.present.recording.captions import caption_draft
from generator.present.recording.spoken import paragraphs, spoken
from generator.read.vtt import read_vtt
from tests.caption_lesson import captioned, of_stops
from tests.project import library

CUE = re.compile(
    r"(?:(\d\d+):)?([0-5]\d):([0-5]\d)\.(\d{3}) --> (?:(\d\d+):)?([0-5]\d):([0-5]\d)\.(\d{3})\n(.+)",
    re.DOTALL,
)
"""A cue block with its times: W3C WebVTT, section 4 (its grammar from memory, references.md 6.1, status M)."""


def watch(end: str, say: str, start: str = "0:00") -> WatchStop:
    return WatchStop.model_validate({"from": start, "to": end, "say": say})


def ask(at: str, say: str | None = None) -> AskStop:
    return AskStop.model_validate({"at": at, "prompt": "Which?", "reveal": "This.", "say": say})


def cues(vtt: str) -> list[tuple[Decimal, Decimal, str]]:
    """Start and end in seconds, and text; fails at the first block that is no cue."""
    head, note, *blocks = vtt.strip().split("\n\n")
    assert head == "WEBVTT"
    assert note.startswith("NOTE ")
    read = []
    for block in blocks:
        found = CUE.fullmatch(block)
        assert found, block
        first, last = found.groups()[:4], found.groups()[4:8]
        read.append((seconds(first), seconds(last), found[9]))
    return read


def seconds(parts: tuple[str | None, ...]) -> Decimal:
    hours, minutes, whole, rest = (Decimal(part or 0) for part in parts)
    return hours * 3600 + minutes * 60 + whole + rest / 1000


def test_a_cue_holds_its_words_at_120_a_minute() -> None:
    """Older DCMP Captioning Key: 120 to 130 words a minute in the lower grades (references.md 6.2, R)."""
    assert cues(caption_draft(of_stops(watch("0:10", "We look at the two lunches.")))) == [
        (0, 3, "We look at the two lunches.")
    ]


def test_a_watch_stop_is_spoken_from_its_own_beginning() -> None:
    assert spoken(of_stops(watch("0:20", "Now we look.", start="0:10")))[0].start == 10_000


def test_what_is_said_at_an_ask_leads_up_to_its_pause() -> None:
    first, second = spoken(
        of_stops(watch("0:10", "Hello from here."), ask("0:20", "Make a guess."))
    )
    assert (first.index, first.start) == (0, 0)
    assert (second.index, second.start) == (1, 10_000)


def test_nothing_begins_right_after_a_pause_point() -> None:
    cue = spoken(of_stops(ask("0:20"), ask("0:40", "Another one.")))[0]
    assert cue.start == 20_000 + HOLD


def test_too_many_words_are_all_kept_before_the_pause() -> None:
    many = "One two three four five. " * 20
    found = spoken(of_stops(ask("0:10", many)))
    assert found[-1].end == 10_000
    assert " ".join(" ".join(cue.lines) for cue in found) == many.strip()


def test_no_cue_stands_where_there_is_no_time_at_all() -> None:
    assert spoken(of_stops(ask("0:00", "Guess."))) == ()


def test_no_cue_runs_across_a_blank_line() -> None:
    assert [cue.paragraph for cue in spoken(of_stops(watch("0:20", "First, then\n\nsecond.")))] == [
        0,
        1,
    ]


def test_marks_of_the_format_are_escaped() -> None:
    """W3C WebVTT: & and < must be escaped in cue text, and --> must not stand there."""
    text = cues(caption_draft(of_stops(watch("0:20", "Salt & pepper, 2 < 3 --> so."))))[0][2]
    assert "-->" not in text
    assert html.unescape(text) == "Salt & pepper, 2 < 3 --> so."


def test_an_hour_is_written_out() -> None:
    assert "\n01:00:05.000 --> 01:00:06.500\n" in caption_draft(
        of_stops(watch("1:00:20", "Still here, friends.", start="1:00:05"))
    )


LONG = "Grandmother's chicken sandwiches stay together underneath colorful blankets"
FORTY = CaptionLimits(line=40)


def test_the_site_s_limits_shape_the_draft_and_the_check_alike(tmp_path: Path) -> None:
    stops = watch("0:30", LONG), ask("0:40")
    lines = {len(line) for cue in spoken(of_stops(*stops)) for line in cue.lines}
    wider = {len(line) for cue in spoken(of_stops(*stops, limits=FORTY)) for line in cue.lines}
    assert max(lines) <= 32 < max(wider) <= 40
    draft = cues(caption_draft(of_stops(*stops, limits=FORTY)))
    timed = [(float(start), float(end), text) for start, end, text in draft]
    assert list(shape(captioned(tmp_path, *timed, limits=FORTY))) == []
    assert list(shape(captioned(tmp_path, *timed))) != []


def test_a_slower_reader_has_longer_cues() -> None:
    limits = CaptionLimits(words_per_minute={GradeBand.G3_5: 60})
    (usual,) = spoken(of_stops(watch("0:30", "We look at both sides.")))
    (slower,) = spoken(of_stops(watch("0:30", "We look at both sides."), limits=limits))
    assert slower.end - slower.start == 2 * (usual.end - usual.start)


def test_limits_that_let_nothing_stand_are_refused() -> None:
    with pytest.raises(ValidationError, match="make `longest` the larger one"):
        CaptionLimits(shortest=Decimal(7))


limits = st.builds(
    CaptionLimits,
    line=st.integers(14, 80),
    lines=st.integers(1, 4),
    shortest=st.decimals("0.1", "3", places=3),
    longest=st.decimals("3", "20", places=3),
    words_per_minute=st.dictionaries(st.sampled_from(GradeBand), st.integers(60, 240)),
)
sentences = st.lists(
    # with its full stop a word of 13 letters fits the shortest line that a site may set
    st.lists(st.text(alphabet="abcdefg", min_size=1, max_size=13), min_size=1, max_size=40).map(
        " ".join
    ),
    min_size=1,
    max_size=4,
)


@given(limits, sentences, st.sampled_from(["K-2", "3-5", "6-8"]))
def test_a_draft_with_time_enough_is_what_the_checks_ask_for(
    limits: CaptionLimits, said: list[str], grades: str
) -> None:
    """Whatever limits a site sets, the draft keeps them: lines, letters, time and pace of every cue."""
    lesson = of_stops(watch("59:00", ". ".join(said)), ask("59:30"), limits=limits, grades=grades)
    file = read_vtt("d.vtt", "en", caption_draft(lesson))
    assert isinstance(file, CaptionFile)
    result = LessonResult(replace(lesson, captions={"en": file}), {}, (), library())
    for rule in (shape, standing, speed, over_pause, overlap):
        assert list(map(str, rule(result))) == []


words = st.lists(
    st.text(alphabet="abcdefg", min_size=1, max_size=14).map(str), min_size=1, max_size=60
)
ends = st.sampled_from(["", ",", ".", "?", "!", ":"])


@given(st.lists(st.tuples(words, ends), min_size=1, max_size=4), st.integers(1, 200))
def test_every_word_is_kept_in_order_and_within_the_limits(
    parts: list[tuple[list[str], str]], length: int
) -> None:
    """DCMP: one or two lines of at most 32 letters (R), at most 6 s (M); W3C: a cue ends after it starts (M)."""
    say = "\n\n".join(" ".join(group) + end for group, end in parts)
    stops: list[Stop] = [
        watch(f"0:{length % 60:02}", say) if length % 60 else ask("0:30", say),
        ask("3:59"),
    ]
    found = spoken(of_stops(*stops))
    assert " ".join(" ".join(cue.lines) for cue in found) == " ".join(paragraphs(say))
    assert all(len(cue.lines) <= 2 and max(map(len, cue.lines)) <= 32 for cue in found)
    assert all(0 < cue.end - cue.start <= 6_000 for cue in found)
    assert all(one.end <= other.start for one, other in pairwise(found))


@given(
    st.lists(
        st.tuples(st.integers(0, 3000), st.text(alphabet="ab .\n", max_size=200)),
        min_size=1,
        max_size=6,
    )
)
def test_no_cue_ever_stands_over_a_pause_point(timed: list[tuple[int, str]]) -> None:
    """Speech over a pause point would go on when the player halts: a rule of ours."""
    stops = [
        ask(f"{time // 60}:{time % 60:02}", say.strip() or None) for time, say in sorted(timed)
    ]
    pauses = [span.end for span in spans(stops)]
    assert not [
        cue for cue in spoken(of_stops(*stops)) for pause in pauses if cue.start < pause < cue.end
    ]


def test_a_stop_without_a_time_is_left_out() -> None:
    stop = AskStop.model_validate({"prompt": "Which?", "reveal": "This.", "say": "Guess."})
    assert spoken(of_stops(stop)) == ()
