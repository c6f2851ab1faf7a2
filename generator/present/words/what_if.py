"""A change of a comparison and what it does to the gap, put into words; no change is called better than another."""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal

from generator.compute.changed import Changed, WhatIf
from generator.compute.gap import Gap
from generator.compute.holding import Holding
from generator.compute.what_if import Way, closest, even, way_of
from generator.model.measure import Measure
from generator.present.words.amounts import food_name
from generator.present.words.food_amount import amount_words
from generator.present.words.foreign import Marked, joined
from generator.present.words.say import Say

_ALSO = re.compile(r"(?P<name>.+) \((?P<also>[^()]+)\)")
"""A name that ends in a second one: *tomate (jitomate)*. Its amount goes into the same brackets."""


def change_words(worked: WhatIf, changed: Changed, say: Say) -> str:
    """``Barley (1 cup) in place of white rice (1 cup)``, or what the educator calls it."""
    if name := change_named(worked, changed):
        return name
    old = _food(worked.old(changed), say, begins=False)
    if not changed.new:
        return say("what_if_leave_out", old=old)
    new = tuple(_food(held, say, begins=not at) for at, held in enumerate(changed.new))
    return say("what_if_in_place", new=say.listed(new), old=old)


def change_on_side(worked: WhatIf, changed: Changed, say: Say) -> str:
    """The same with the side it is on."""
    side = worked.comparison.stop.sides[changed.side]
    return say("what_if_on_side", side=side, change=change_words(worked, changed, say))


def becomes(worked: WhatIf, changed: Changed, say: Say) -> str:
    """``1 g becomes 6 g``; of two foods ``920 mg becomes 460 mg + 0 mg``."""
    values = [held.shown.value for held in changed.new] or [Decimal(0)]
    new = " + ".join(say.quantity(value, worked.measure) for value in values)
    old = worked.old(changed).shown.value
    return say("what_if_becomes", old=say.quantity(old, worked.measure), new=say.from_left(new))


def went(before: Gap, after: Gap, sides: tuple[str, str], measure: Measure, say: Say) -> str:
    """Which way the gap went, and by how much, in one or two sentences."""
    way, was, now = way_of(before, after), before.holder, after.holder
    values = {
        "before": say.quantity(before.size, measure),
        "after": say.quantity(after.size, measure),
        "was": "" if was is None else sides[was],
        "side": "" if now is None else sides[now],
        "value": say.quantity(after.first, measure),
    }
    if way is Way.OVER:
        return say("what_if_went_over", **values)
    if way is Way.SAME:
        return say("what_if_stayed_even" if now is None else "what_if_stayed", **values)
    if now is None:
        return say("what_if_went_even", **values)
    return say("what_if_went_from_even" if was is None else "what_if_went", **values)


def closest_words(worked: WhatIf, say: Say) -> str:
    """Which change brings the two sides closest; or that none brings them closer than they are."""
    found = _closest(worked)
    if not found:
        return say("what_if_closest_none")
    return say("what_if_closest", n=len(found), changes=_listed(worked, found, say))


def closest_gap(worked: WhatIf, say: Say) -> str:
    """What the gap is with that change; empty where none brings the sides closer."""
    return "".join(
        say("what_if_closest_gap", gap=say.quantity(worked.changes[at].total.size, worked.measure))
        for at in _closest(worked)[:1]
    )


def _closest(worked: WhatIf) -> tuple[int, ...]:
    return closest(worked.comparison.total, [one.total for one in worked.changes])


def even_words(worked: WhatIf, say: Say) -> str:
    """Which change leaves no gap; or that none does."""
    found = even([one.total for one in worked.changes])
    if not found:
        return say("what_if_even_none")
    return say("what_if_even", n=len(found), changes=_listed(worked, found, say))


def _listed(worked: WhatIf, found: Sequence[int], say: Say) -> str:
    return joined("; ", [change_on_side(worked, worked.changes[at], say) for at in found])


def change_named(worked: WhatIf, changed: Changed) -> str | None:
    """What the educator calls a change, in the page's language."""
    return worked.stop.changes[worked.changes.index(changed)].name


def _food(held: Holding, say: Say, *, begins: bool) -> str:
    """A food with its amount; a small letter where it begins no sentence."""
    name, amount = food_name(held, say), amount_words(held, say)
    name = name if begins else say.inside(name)
    if not amount:
        return name
    if (also := _ALSO.fullmatch(name)) and not isinstance(name, Marked):
        name, amount = also["name"], joined(", ", (also["also"], amount))
    return say("what_if_food", name=name, amount=amount)
