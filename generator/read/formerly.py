"""Names that a lesson and its stops had before: none may be in use, and each is claimed once."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping

from generator.model.ids import PAGE_IDS, stop_ids
from generator.model.places import Places
from generator.model.stops import Stop
from generator.problems import Place, Problem

_OUT = "take it out of this list"


def former_stop_problems(stops: Mapping[int, Stop], places: Places) -> Iterator[Problem]:
    """Earlier addresses of stops that lead nowhere of their own.

    Args:
        stops: those of a right shape, by their number.
        places: of the lesson file.
    """
    lines = {stop_ids(stop).stop: places.at("stops", index).line for index, stop in stops.items()}
    claimed: dict[str, int] = {}
    for index, stop in stops.items():
        for at, name in enumerate(stop.formerly):
            place = places.at("stops", index, stop.kind, "formerly", at)
            if name in PAGE_IDS:
                what = f"the page uses the id `{name}` itself, so no stop had it"
                yield Problem(place, what, _OUT)
            elif name in lines:
                what = f"`{name}` is what the stop on line {lines[name]} is called now"
                yield Problem(place, what, f"{_OUT}, or give that stop another `id:`")
            elif name in claimed:
                yield Problem(place, _twice(name, claimed[name]), _OUT)
            claimed.setdefault(name, place.line)


def former_lesson_problems(
    names: Collection[str], folder: str, places: Places, reserved: Collection[str]
) -> Iterator[Problem]:
    """Earlier names of a lesson's folder that were no lesson's, are its own, or stand there twice.

    Args:
        names: as its file lists them.
        folder: its name today.
        places: of the lesson file.
        reserved: folders of the site that hold no lesson.
    """
    claimed: dict[str, Place] = {}
    for at, name in enumerate(names):
        place = places.at("formerly", at)
        if name == folder:
            yield Problem(place, f"`{name}` is what the folder is called now", _OUT)
        elif name in reserved:
            what = f"the site keeps the folder `{name}` for itself, so no lesson was called so"
            yield Problem(place, what, _OUT)
        elif name in claimed:
            yield Problem(place, _twice(name, claimed[name].line), _OUT)
        claimed.setdefault(name, place)


def _twice(name: str, line: int) -> str:
    return f"`{name}` is listed under `formerly:` on line {line} already"
