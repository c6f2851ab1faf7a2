"""What differs between two states of a lesson in one language: everything that does, and nothing else."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

from generator.model.figure import FigureKind
from generator.model.published import LessonState, PublishedNumber


class ChangeKind(StrEnum):
    """What differs; the more it matters to who holds an old sheet or link, the earlier it stands."""

    LESSON_GONE = "lesson-gone"
    LESSON_NEW = "lesson-new"
    NUMBER = "number"
    """A number of the same thing is another one."""
    NUMBER_GONE = "number-gone"
    NUMBER_NEW = "number-new"
    STOP_GONE = "stop-gone"
    STOP_NEW = "stop-new"
    STOP_ADDRESS = "stop-address"
    """A stop of the same heading has another id."""
    SHEETS = "sheets"
    """Sheets that were printed and say something else now."""
    NAME = "name"
    """What a number is of is called otherwise, and the number is what it was."""
    STOP_NAME = "stop-name"
    TIME = "time"
    TITLE = "title"
    PAGE_GONE = "page-gone"
    PAGE_NEW = "page-new"
    ORDER = "order"
    """The stops come in another order."""
    ROWS = "rows"
    """The numbers of a stop come in another order."""
    TEXTS = "texts"
    """Some text is worded otherwise."""


@dataclass(frozen=True, slots=True)
class Difference:
    """One thing that differs."""

    kind: ChangeKind
    stop: str = ""
    """Id of the stop it stands at; empty for the whole lesson."""
    name: str = ""
    """Id of a number, name of a page, sheets with commas between them."""
    was: str = ""
    """Words or a moment before; of sheets their stamps with commas between them."""
    now: str = ""
    """The same now."""
    old: PublishedNumber | None = None
    """The number before."""
    new: PublishedNumber | None = None
    """The number now."""

    @property
    def for_teachers(self) -> bool:
        """Whether it stands in the teaching notes alone."""
        number = self.new or self.old
        return number is not None and number.kind is FigureKind.MINUTES


_NAMED = {FigureKind.HOLDS, FigureKind.TOTAL, FigureKind.EATEN}
"""Foods, sides, people: every other number is called after these, or after its stop."""


def differences(old: LessonState | None, new: LessonState | None) -> tuple[Difference, ...]:
    """What differs, what matters most first; nothing where both say the same.

    Args:
        old: the lesson before; nothing where it was not there.
        new: the lesson now, likewise.
    """
    was = old is not None and not old.gone
    now = new is not None and not new.gone
    if old is None or new is None or not (was and now):
        kind = ChangeKind.LESSON_GONE if was else ChangeKind.LESSON_NEW
        return (Difference(kind),) if was is not now else ()
    renamed = _renamed(old, new)
    old = _under_names_of_today(old, renamed)
    found = [
        *(
            Difference(ChangeKind.STOP_ADDRESS, now, name=was, was=was, now=now)
            for was, now in renamed.items()
        ),
        *_numbers(old.numbers, new.numbers),
        *_stops(old, new),
        *_sheets(old.stamps, new.stamps),
        *_times(old, new),
        *_pages(old.pages, new.pages),
    ]
    if old.title != new.title:
        found.append(Difference(ChangeKind.TITLE, was=old.title, now=new.title))
    if old.texts != new.texts:
        found.append(Difference(ChangeKind.TEXTS))
    order = list(ChangeKind)
    return tuple(sorted(found, key=lambda one: order.index(one.kind)))


def stop_of(number: str) -> str:
    """Which stop a number of the ledger stands at, by its id."""
    return number.partition(".")[0]


def _renamed(old: LessonState, new: LessonState) -> dict[str, str]:
    """Stops that the lesson says it called otherwise before: their ids then and now."""
    return {
        was: now
        for was, now in new.formerly.items()
        if was in old.stops and was not in new.stops and now in new.stops and now not in old.stops
    }


def _under_names_of_today(old: LessonState, renamed: Mapping[str, str]) -> LessonState:
    """The state before, its renamed stops and their numbers under the ids they have now."""
    if not renamed:
        return old

    def today(name: str) -> str:
        stop, dot, rest = name.partition(".")
        return renamed.get(stop, stop) + dot + rest

    return replace(
        old,
        numbers={today(name): number for name, number in old.numbers.items()},
        stops={today(stop): heading for stop, heading in old.stops.items()},
        times={today(stop): time for stop, time in old.times.items()},
    )


def _numbers(
    old: Mapping[str, PublishedNumber], new: Mapping[str, PublishedNumber]
) -> Iterator[Difference]:
    for name, number in old.items():
        if name not in new:
            yield Difference(ChangeKind.NUMBER_GONE, stop_of(name), name, old=number)
    for name, number in new.items():
        before = old.get(name)
        if before is None:
            yield Difference(ChangeKind.NUMBER_NEW, stop_of(name), name, new=number)
        elif (before.value, before.unit, before.kind) != (number.value, number.unit, number.kind):
            yield Difference(ChangeKind.NUMBER, stop_of(name), name, "", "", before, number)
        elif before.of != number.of and number.kind in _NAMED:
            was, now = before.of, number.of
            yield Difference(ChangeKind.NAME, stop_of(name), name, was, now, before, number)
    for stop in dict.fromkeys(map(stop_of, new)):
        here = [name for name in new if stop_of(name) == stop]
        if _moved([name for name in old if stop_of(name) == stop], here):
            yield Difference(ChangeKind.ROWS, stop)


def _stops(old: LessonState, new: LessonState) -> Iterator[Difference]:
    gone = {stop: heading for stop, heading in old.stops.items() if stop not in new.stops}
    for stop, heading in new.stops.items():
        before = old.stops.get(stop)
        if before is not None:
            if before != heading:
                yield Difference(ChangeKind.STOP_NAME, stop, was=before, now=heading)
            continue
        same = next((one for one, called in gone.items() if called == heading), None)
        if same is None:
            yield Difference(ChangeKind.STOP_NEW, stop, now=heading)
        else:
            del gone[same]
            yield Difference(ChangeKind.STOP_ADDRESS, stop, name=same, was=same, now=stop)
    for stop, heading in gone.items():
        yield Difference(ChangeKind.STOP_GONE, stop, was=heading)
    if _moved(list(old.stops), list(new.stops)):
        yield Difference(ChangeKind.ORDER)


def _sheets(old: Mapping[str, str], new: Mapping[str, str]) -> Iterator[Difference]:
    """Those that both have; a sheet that is gone or new is a page that is."""
    other = [sheet for sheet, stamp in old.items() if new.get(sheet, stamp) != stamp]
    if other:
        was, now = (",".join(held[sheet] for sheet in other) for held in (old, new))
        yield Difference(ChangeKind.SHEETS, name=",".join(other), was=was, now=now)


def _times(old: LessonState, new: LessonState) -> Iterator[Difference]:
    for stop in dict.fromkeys((*old.times, *new.times)):
        was, now = old.times.get(stop, ""), new.times.get(stop, "")
        if was != now and stop in old.stops and stop in new.stops:
            yield Difference(ChangeKind.TIME, stop, was=was, now=now)


def _pages(old: Sequence[str], new: Sequence[str]) -> Iterator[Difference]:
    yield from (Difference(ChangeKind.PAGE_GONE, name=one) for one in old if one not in new)
    yield from (Difference(ChangeKind.PAGE_NEW, name=one) for one in new if one not in old)


def _moved(old: list[str], new: list[str]) -> bool:
    """Whether what both hold comes in another order."""
    both = set(old) & set(new)
    return [one for one in old if one in both] != [one for one in new if one in both]
