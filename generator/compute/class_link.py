"""A class link: how a teacher wants her class to see a lesson, as the fragment of an address.

``#for-class=lunch+count;numbers=1000;seed=k3f;answers=later;k=7Q`` names stops in the lesson's order
(none for all of them) and whatever differs from the usual; a browser keeps a fragment to itself
(RFC 3986, 3.5). Its last two symbols are a check, hashed with the lesson's id: slips and links of
other lessons are noticed, and nobody is locked out. ``theme/js/class-link.js`` does the same; both
run on the cases of ``tests/examples/class-links.json``.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import StrEnum

from generator.compute.base32 import SYMBOLS, symbols
from generator.compute.practice_set import SIZES
from generator.compute.text_hash import text_hash

LONGEST = 1000
"""Signs of a fragment; a longer one is not looked through."""
_STOPS, _CHECK = "for-class", "k"
_CHECK_SYMBOLS = 2
_ID = re.compile(r"[a-z0-9-]{1,60}")
_SEED = re.compile(r"[a-z0-9-]{1,20}")
_ENCODED = re.compile(rb"%([0-9A-Fa-f]{2})")


class Answers(StrEnum):
    """When the answers of a lesson open."""

    ONCE = "once"
    """As soon as somebody asks."""
    TRY = "try"
    """After a try."""
    LATER = "later"
    """Not on the page: the class looks at them together."""


class Unopened(StrEnum):
    """Why a fragment opens nothing of its own."""

    NO_LINK = "no_link"
    """It is no class link."""
    SPOILED = "spoiled"
    """It is one that was changed, is of another lesson, or asks for what is not known."""


@dataclass(frozen=True, slots=True)
class ClassLink:
    """What a class link asks for."""

    stops: tuple[str, ...] = ()
    """Ids, in the lesson's order; none for all of them."""
    numbers: int = 0
    """Largest number of practice, one of ``SIZES``; 0 for those of the lesson."""
    seed: str = ""
    """Of practice; empty for that of the lesson."""
    blocks_only: bool = False
    """Whether what foods hold is left out."""
    large_print: bool = False
    """Whether letters are large, on the screen and on paper."""
    answers: Answers = Answers.ONCE
    """When they open."""


def class_link(link: ClassLink, lesson: str) -> str:
    """The fragment, without its ``#``.

    Args:
        link: what it asks for.
        lesson: id of the lesson.
    """
    told = {
        _STOPS: "+".join(link.stops),
        "numbers": str(link.numbers or ""),
        "seed": link.seed,
        "blocks": "only" if link.blocks_only else "",
        "print": "large" if link.large_print else "",
        "answers": "" if link.answers is Answers.ONCE else link.answers.value,
    }
    body = ";".join(f"{key}={value}" for key, value in told.items() if value or key == _STOPS)
    return f"{body};{_CHECK}={_check(body, lesson)}"


def read_class_link(fragment: str, lesson: str) -> ClassLink | Unopened:
    """What a fragment asks for, as a browser has it: programs may have encoded some of it.

    Args:
        fragment: without its ``#``.
        lesson: id of the lesson whose page was opened by it.
    """
    if not fragment.startswith(_STOPS):
        return Unopened.NO_LINK
    if len(fragment) > LONGEST:
        return Unopened.SPOILED
    body, _, check = _decoded(fragment).replace(" ", "+").rpartition(f";{_CHECK}=")
    if not body or check.upper() != _check(body, lesson):
        return Unopened.SPOILED
    return _asked(body) or Unopened.SPOILED


def _decoded(fragment: str) -> str:
    """Programs that pass a link on may encode some of it; what cannot be read stays as it is."""
    plain = _ENCODED.sub(lambda found: bytes([int(found[1], 16)]), fragment.encode())
    try:
        return plain.decode()
    except UnicodeDecodeError:
        return fragment


def _asked(body: str) -> ClassLink | None:
    """What stands before the check; nothing where a part of it is not known."""
    parts = [part.partition("=") for part in body.split(";")]
    told = {key: value for key, _, value in parts}
    stops = [one for one in told.pop(_STOPS, "").split("+") if one]
    known = all(key in _KNOWN and _KNOWN[key].fullmatch(value) for key, value in told.items())
    once = body.startswith(f"{_STOPS}=") and len(told) + 1 == len(parts)
    if not (once and known and all(map(_ID.fullmatch, stops))):
        return None
    return ClassLink(
        stops=tuple(dict.fromkeys(stops)),
        numbers=int(told.get("numbers", 0)),
        seed=told.get("seed", ""),
        blocks_only="blocks" in told,
        large_print="print" in told,
        answers=Answers(told.get("answers", Answers.ONCE)),
    )


_KNOWN = {
    "numbers": re.compile("|".join(map(str, SIZES))),
    "seed": _SEED,
    "blocks": re.compile("only"),
    "print": re.compile("large"),
    "answers": re.compile(f"{Answers.TRY}|{Answers.LATER}"),
}
"""By key what may stand there."""


def _check(body: str, lesson: str) -> str:
    """Two symbols of what is said and of the lesson it is said of: 1 change in 1,024 goes unnoticed."""
    hashed, bits = text_hash(f"{lesson}#{body}"), 5 * _CHECK_SYMBOLS
    folded = (hashed >> bits ^ hashed) % len(SYMBOLS) ** _CHECK_SYMBOLS
    return symbols(folded, _CHECK_SYMBOLS)
