"""The stamps of a site as small files, of which the page fetches the one that a typed stamp is in."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import product

from generator.present.output import Output
from generator.present.stamps.alike import SIGNS, alike

FOLDER = "stamps"
"""Where they stand, from the site's root."""
_MOST = 20_000
"""Stamps in files by one sign; more are parted by two, so that each file stays below 40 kB."""


_Sheet = tuple[str, str, str]
"""Lesson, language and name."""


@dataclass(frozen=True, slots=True)
class KnownStamp:
    """A stamp that some sheet bears, or bore."""

    stamp: str
    lesson: str
    """Id of the lesson that it is of, today."""
    language: str
    sheet: str
    now: bool
    """Whether the sheet still prints the same."""
    gone: str = ""
    """Day since when the lesson is on the site no more, in this language; empty while it is there."""
    title: str = ""
    """Of a lesson that is gone."""


def signs_of(known: Sequence[KnownStamp]) -> int:
    """By how many first signs the files are parted."""
    return 1 if len({one.stamp for one in known}) <= _MOST else 2


def shards(known: Iterable[KnownStamp], signs: int) -> Iterator[Output]:
    """Every file; one for each beginning that a stamp can have, so that none is looked for in vain.

    Args:
        known: every stamp of the site. Lessons that print the same bear the same stamp, and each is told; of
            one sheet that bore it more than once, the first here.
        signs: by how many first signs they are parted.
    """
    starts = map("".join, product(SIGNS, repeat=signs))
    parted: dict[str, dict[str, dict[_Sheet, KnownStamp]]] = {start: {} for start in starts}
    for one in known:
        bear = parted[alike(one.stamp)[:signs]].setdefault(one.stamp, {})
        bear.setdefault((one.lesson, one.language, one.sheet), one)
    for start, stamps in parted.items():
        told = {stamp: list(map(_told, bear.values())) for stamp, bear in stamps.items()}
        text = json.dumps(told, ensure_ascii=False, separators=(",", ":"), sort_keys=True)
        yield Output(f"{FOLDER}/{start}.json", text.encode())


def _told(one: KnownStamp) -> list[object]:
    told: list[object] = [one.lesson, one.language, one.sheet, int(one.now)]
    return [*told, one.gone, one.title] if one.gone else told
