"""One timeline: which stop is on when, and where the player halts.

The rules are ours: what is said at a stop leads up to its pause, and a second is kept free after it.
"""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.timeline import HOLD, Span, next_pause, on_air, parts, pause_points, spans
from generator.model.stops import Stop
from generator.model.stops.ask import AskStop
from generator.model.stops.watch import WatchStop


def watch(start: str, end: str) -> WatchStop:
    return WatchStop.model_validate({"from": start, "to": end})


def ask(at: str | None) -> AskStop:
    return AskStop.model_validate({"at": at, "prompt": "Which?", "reveal": "This."})


STOPS: tuple[Stop, ...] = (
    watch("0:00", "0:20"),
    ask("0:20"),
    ask(None),
    ask("0:40"),
    ask("0:40.500"),
    watch("0:45", "1:00"),
)


def test_every_stop_with_a_time_has_its_part_of_the_video() -> None:
    assert spans(STOPS) == (
        Span(0, 0, 20_000, pauses=False),
        Span(1, 20_000, 20_000, pauses=True),
        Span(3, 20_000 + HOLD, 40_000, pauses=True),
        Span(4, 40_500, 40_500, pauses=True),
        Span(5, 45_000, 60_000, pauses=False),
    )


def test_chapters_are_the_stops_that_take_time() -> None:
    assert [span.index for span in parts(STOPS)] == [0, 3, 5]


@pytest.mark.parametrize(
    ("moment", "pause"), [(0, 20_000), (20_000, 40_000), (40_000, 40_500), (40_500, None)]
)
def test_which_pause_comes_next(moment: int, pause: int | None) -> None:
    assert next_pause(STOPS, moment) == pause


def test_nobody_halts_where_only_watching_ends() -> None:
    assert [span.end for span in pause_points(STOPS)] == [20_000, 40_000, 40_500]


@pytest.mark.parametrize(
    ("moment", "index"),
    [(0, 0), (19_999, 0), (20_000, 3), (39_999, 3), (40_000, 4), (40_500, 5), (99_000, 5)],
)
def test_who_is_on_air(moment: int, index: int) -> None:
    assert on_air(spans(STOPS), moment).index == index


@given(st.lists(st.integers(0, 3000), min_size=1, max_size=8))
def test_nothing_begins_for_a_second_after_a_halt(times: list[int]) -> None:
    stops = [ask(f"{time // 60}:{time % 60:02}") for time in sorted(times)]
    halts = [span.end for span in pause_points(stops)]
    begins = [span.start for span in parts(stops)]
    assert not [one for one in begins for halt in halts if halt <= one < halt + HOLD]
