"""The stamps of a site as small files, of which the page fetches the one that a typed stamp is in."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Sequence
from itertools import product
from typing import NamedTuple

from generator.present.output import Output
from generator.present.stamps.alike import ALIKE, SIGNS

FOLDER = "stamps"
"""Where they stand, from the site's root."""
_MOST = 20_000
"""Stamps in files by one sign; more are parted by two, so that each file stays below 40 kB."""


_Told = tuple[str | int, ...]
"""Lesson, language, sheet, whether it holds; and where the lesson is gone, since when, and its title."""


class KnownStamp(NamedTuple):
    """A stamp that some sheet bears, or bore."""

    stamp: str
    lesson: str
    """Id of the lesson that it is of, today."""
    language: str
    sheet: str
    now: int
    """1 where the sheet still prints the same, else 0."""
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
    parted: dict[str, dict[str, list[_Told]]] = {start: {} for start in starts}
    for one in known:
        bear = parted[one.stamp[:signs].translate(ALIKE)].setdefault(one.stamp, [])
        if not any(sheet[:3] == one[1:4] for sheet in bear):
            bear.append(one[1:] if one.gone else one[1:5])
    for start, told in parted.items():
        text = json.dumps(told, ensure_ascii=False, separators=(",", ":"))
        yield Output(f"{FOLDER}/{start}.json", text.encode())
