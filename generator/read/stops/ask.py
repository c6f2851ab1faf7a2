"""An ask stop that asks again: the question above that it takes, and what it may not bring itself."""

from __future__ import annotations

from collections.abc import Iterator

from generator.model.stops.ask import AskStop
from generator.problems import Problem
from generator.read.as_written import word
from generator.read.explain import did_you_mean
from generator.read.stops.kind import ReadKind, WrittenStop, nothing

_ANSWERS = ("choices", "answer", "which")
"""The keys by which an answer can be checked."""
_QUESTION = ("prompt", "hint", "reveal", *_ANSWERS)
"""What makes a question, all taken from the stop that asks first."""


def _references(written: WrittenStop) -> Iterator[Problem]:
    target = word(written.data, "asks_again")
    if target is None:
        return
    for key in _QUESTION:
        if key in written.data:
            what = (
                f"this stop asks the question of `{target}` again, and brings `{key}:` of its own"
            )
            yield Problem(written.place(key), what, f"take `{key}:` out: it is written once, there")
    if found := _not_asked(target, written) or _asked_otherwise(target, written):
        yield Problem(written.place("asks_again"), *found)


def _not_asked(target: str, written: WrittenStop) -> tuple[str, str] | None:
    """What is wrong with the stop that is named, and the way out."""
    named = _asks(written)
    if target not in named:
        near = did_you_mean(target, list(named)) if named else "give the first question an `id:`"
        return f"no ask stop has the id `{target}`", near
    if named[target] == written.path[1]:
        return f"`{target}` would ask itself again", "name the `ask` stop that asks first"
    if named[target] > _index(written):
        hint = "move it below: a question is asked first, and again when something was learned"
        return f"`{target}` stands below this stop", hint
    return None


def _asked_otherwise(target: str, written: WrittenStop) -> tuple[str, str] | None:
    """What is wrong with asking that question again, and the way out."""
    data = written.stops[_asks(written)[target]].data
    if first := word(data, "asks_again"):
        return f"`{target}` itself asks the question of `{first}` again", "ask it twice, not more"
    if not any(key in data for key in _ANSWERS):
        what = f"the question of `{target}` is open, so nobody can tell what was learned"
        return what, "give it `choices:`, `answer:` or `which:`"
    before = [
        index
        for index, stop in written.stops.items()
        if index < _index(written) and word(stop.data, "asks_again") == target
    ]
    if before:
        line = written.places.at("stops", before[0]).line
        return f"`{target}` is asked again already, on line {line}", "take one of them out"
    return None


def _asks(written: WrittenStop) -> dict[str, int]:
    """The ask stops that have an id, with their numbers."""
    return {
        name: index
        for index, stop in written.stops.items()
        if stop.kind == AskStop.kind_name() and (name := word(stop.data, "id")) is not None
    }


def _index(written: WrittenStop) -> int:
    return int(written.path[1])


KIND = ReadKind(stop=AskStop, references=_references, names=nothing)
