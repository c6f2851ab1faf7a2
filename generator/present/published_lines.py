"""The record of publications as lines of JSON: what a publication adds to a lesson's file, and to the site's."""

from __future__ import annotations

import json
from base64 import b32encode
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import asdict, replace
from hashlib import sha256

from generator.model.published import LessonState, Publication, PublishedNumber, last_of

_BYTES = 10
"""Of a checksum; 16 signs, so that no two of a million sets of numbers are called alike."""


def mark_of(told: object) -> str:
    """A short mark of anything JSON can say: another one once it is another thing."""
    text = json.dumps(told, ensure_ascii=False, sort_keys=True)
    return b32encode(sha256(text.encode()).digest()[:_BYTES]).decode().lower()


def lesson_lines(
    past: tuple[LessonState, ...], now: Iterable[LessonState], at: str
) -> Iterator[str]:
    """What a publication adds to the record of a lesson; nothing where it says what it said.

    Args:
        past: what the record holds of it, the oldest first.
        now: what it says in each language that it has.
        at: when it is published.
    """
    held = {(one.language, _numbers_mark(one.numbers)) for one in past}
    here = {one.language: one for one in now}
    for language, state in here.items():
        last, mark = last_of(past, language), _numbers_mark(state.numbers)
        if last is not None and last.says_as(state):
            continue
        if (language, mark) not in held:
            yield _line({"numbers": mark, "language": language, "are": _told(state.numbers)})
        yield _line(_state(replace(state, at=at), mark))
    for language in dict.fromkeys(one.language for one in past):
        last = last_of(past, language)
        if language not in here and last is not None and not last.gone:
            yield _line({"at": at, "language": language, "gone": True})


def publication_line(publication: Publication) -> str:
    """A publication in the record of the site."""
    told = {key: value for key, value in asdict(publication).items() if value not in {"", ()}}
    return _line({"address": "", "languages": [], "lessons": [], **told})


def _state(state: LessonState, mark: str) -> dict[str, object]:
    told: dict[str, object] = {
        "at": state.at,
        "language": state.language,
        "title": state.title,
        "numbers": mark,
        "stamps": dict(state.stamps),
        "stops": dict(state.stops),
        "times": dict(state.times),
        "pages": list(state.pages),
        "texts": state.texts,
    }
    told |= {"formerly": dict(state.formerly)} if state.formerly else {}
    return told | ({"gone": True} if state.gone else {})


def _numbers_mark(numbers: Mapping[str, PublishedNumber]) -> str:
    """Of the numbers in their order, which is that of the lesson."""
    return mark_of(list(_told(numbers).items()))


def _told(numbers: Mapping[str, PublishedNumber]) -> dict[str, dict[str, str]]:
    return {
        id_: {"value": f"{one.value:f}", "unit": one.unit, "kind": one.kind.value, "of": one.of}
        for id_, one in numbers.items()
    }


def _line(told: Mapping[str, object]) -> str:
    return json.dumps(told, ensure_ascii=False)
