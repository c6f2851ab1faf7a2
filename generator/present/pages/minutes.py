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
    """Whole minutes of each stop, and of a parting question after them; together the lesson's."""
    asked = [1] if result.lesson.file.parting else []
    work = [kind_of(stop).work(stop) for stop in stops] + asked
    film = _film(result) + [Fraction(0) for _ in asked]
    return in_whole_minutes(parts_of_time(result.lesson.file.minutes, film, work))


def minutes_words(result: LessonResult, stops: tuple[StopView, ...], say: Say) -> str:
    """``In minutes: 3 to watch, 9 to work out, 4 to move and 2 to talk.``: how many in all stands above."""
    total, film = result.lesson.file.minutes, _film(result)
    work = dict.fromkeys(Doing, 0)
    for stop in stops:
        work[kind_of(stop).doing] += kind_of(stop).work(stop)
    if result.lesson.file.parting:
        work[Doing.WORK_OUT] += 1
    watched = [sum(film, Fraction(0)), *(Fraction(0) for _ in Doing)]
    seen, *worked = parts_of_time(total, watched, [0, *work.values()])
    spent = dict(zip(work, worked, strict=True))
    spent[Doing.WATCH] += seen
    done = [doing for doing in Doing if spent[doing]]
    whole = in_whole_minutes([spent[doing] for doing in done])
    parts = (
        say(DOING.key(doing.value), minutes=say.number(n))
        for doing, n in zip(done, whole, strict=True)
        if n
    )
    return say("minutes_parts", parts=say.listed(tuple(parts)))


def _film(result: LessonResult) -> list[Fraction]:
    """Minutes of the film that lead through each stop."""
    stops = result.lesson.file.stops
    found = {span.index: Fraction(span.end - span.start, 60_000) for span in spans(stops)}
    return [found.get(at, Fraction(0)) for at in range(len(stops))]
