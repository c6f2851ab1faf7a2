"""What each portion brings, in plain ink: for the family the one or two things, for adults their shares."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from generator.compute.brings import SOUGHT, Brings, Level, Share, what_it_brings
from generator.compute.holding import Holding
from generator.present.views.amounts import BringsView
from generator.present.words.amounts import portion
from generator.present.words.families import LEVEL, MEASURE
from generator.present.words.say import Say

_LITTLE = ("brings_little", "brings_little_known")


def brings_views(holdings: Iterable[Holding], say: Say) -> tuple[BringsView, ...]:
    """One line for each portion that has a record, equal ones once.

    Nothing is said of a value of its own: a label's single figure does not tell what else is held.
    """
    return tuple(dict.fromkeys(_views(holdings, say)))


def brings_rule(views: Iterable[BringsView], say: Say) -> str:
    """What is told, for the family; and where some portion holds little, of what all."""
    if {view.much for view in views}.isdisjoint(map(say, _LITTLE)):
        return say("brings_says")
    names = tuple(say(MEASURE.key(measure)) for measure in SOUGHT)
    return f"{say('brings_says')} {say('brings_looked_at', measures=say.listed(names))}"


def _views(holdings: Iterable[Holding], say: Say) -> Iterator[BringsView]:
    for held in holdings:
        if held.food and held.serving:
            brings = what_it_brings(held.food, held.serving)
            adults = tuple(_for_adults(brings, say))
            yield BringsView(portion(held, say), _much(brings, say), adults)


def _much(brings: Brings, say: Say) -> str:
    if brings.much:
        return say.listed(tuple(say(MEASURE.key(share.measure)) for share in brings.much))
    return say("brings_little_known" if brings.unknown else "brings_little")


def _for_adults(brings: Brings, say: Say) -> Iterator[str]:
    """Sentences: the shares, what is low or high, and what the record does not know."""
    if brings.much:
        yield say("brings_shares", shares=_shares(brings.much, say))
    for level in Level:
        if told := [share for share in brings.little_or_much if share.level is level]:
            yield say(LEVEL.key(level), shares=_shares(told, say))
    if brings.unknown:
        names = tuple(say(MEASURE.key(measure)) for measure in brings.unknown)
        yield say("brings_unknown", measures=say.listed(names))


def _shares(shares: Iterable[Share], say: Say) -> str:
    """``fiber (16%) and iron (10%)``."""
    return say.listed(
        tuple(
            f"{say(MEASURE.key(share.measure))} ({say.percent(share.percent.value)})"
            for share in shares
        )
    )
