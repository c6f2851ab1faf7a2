"""The minutes of a lesson, stop by stop and by what they are for."""

from __future__ import annotations

from fractions import Fraction

from generator.compute.minutes import in_whole_minutes, parts_of_time
from generator.compute.result import LessonResult
from generator.compute.timeline import spans
from generator.present.stops.kind import Doing
from generator.present.stops.kinds import kind_of
from generator.present.views.stop import StopView
from generator.present.words.families import DOING
from generator.present.words.say import Say


def stop_minutes(result: LessonResult, stops: tuple[StopView, ...]) -> tuple[int, ...]:
    """Whole minutes of each stop, which add up to those of the lesson."""
    work = [kind_of(stop).work(stop) for stop in stops]
    return in_whole_minutes(parts_of_time(result.lesson.file.minutes, _film(result), work))


def minutes_words(result: LessonResult, stops: tuple[StopView, ...], say: Say) -> str:
    """``about 18 minutes: 3 to watch, 9 to work out, 4 to move and 2 to talk``."""
    total, film = result.lesson.file.minutes, _film(result)
    work = [kind_of(stop).work(stop) for stop in stops]
    alone = parts_of_time(
        total, [*film, *(Fraction(0) for _ in stops)], [*(0 for _ in stops), *work]
    )
    watched, worked = alone[: len(stops)], alone[len(stops) :]
    spent = dict.fromkeys(Doing, Fraction(0))
    spent[Doing.WATCH] = sum(watched, Fraction(0))
    for stop, part in zip(stops, worked, strict=True):
        spent[kind_of(stop).doing] += part
    done = [doing for doing in Doing if spent[doing]]
    whole = in_whole_minutes([spent[doing] for doing in done])
    parts = (
        say(DOING.key(doing.value), minutes=say.number(n))
        for doing, n in zip(done, whole, strict=True)
        if n
    )
    return say("minutes_parts", n=total, minutes=say.number(total), parts=say.listed(tuple(parts)))


def _film(result: LessonResult) -> list[Fraction]:
    """Minutes of the film that lead through each stop."""
    stops = result.lesson.file.stops
    found = {span.index: Fraction(span.end - span.start, 60_000) for span in spans(stops)}
    return [found.get(at, Fraction(0)) for at in range(len(stops))]
