"""Whether a food's total sugars are counted against the Daily Value, which is for added sugars.

The records have total sugars only. The sugars that grow in whole fruit, vegetables, beans and
grains, and the lactose of plain milk, are not added (21 CFR 101.9(c)(6)(iii)), so they are left out.
All else is counted whole: that can only overstate, and a food it wrongs can be overridden with a
reason. Juice is counted too; by the rule's letter a whole juice has no added sugars, but WHO 2015
(*Guideline: sugars intake for adults and children*; from memory) puts it with the free sugars.
"""

from __future__ import annotations

import re
from decimal import Decimal

from generator.model.food import Food
from generator.model.measure import Measure

_SWEETENED = re.compile(r"\b(sweetened|syrup|candied|added sugar|sugar added)\b", re.IGNORECASE)
"""Words of a record that tell of added sugars; ``unsweetened`` is one word and not among them."""

_PLAIN = re.compile(r"\b(raw|cooked|boiled|roasted|dried|mature seeds)\b", re.IGNORECASE)
"""Words of a record that tell of cooking and nothing else; with beans, meats and grains only."""

_MORE_THAN_COOKED = re.compile(
    r"\b(fried|breaded|baked|batter|sauce|cured|glazed|flavored|frosted|recipe|prepared|commercial)\b",
    re.IGNORECASE,
)

_NOT_SWEETENED = re.compile(r"\b(without|no) (added )?(sugar|syrup)", re.IGNORECASE)

_MOST_LACTOSE = Decimal(8)
"""g in 100 g. Plain milks of the records hold about 5 and plain yogurts up to 7.7; flavored ones
begin above 9. The line between them is ours, no source."""


def counts_as_added(food: Food) -> bool:
    """Whether a food's total sugars stand in for added sugars.

    Not for whole fruit and vegetables, nor for beans, meats and grains that were cooked and
    nothing else, nor for dairy of at most 8 g of sugars in 100 g; unless the record says that
    they were sweetened. For all else they do.
    """
    record = _NOT_SWEETENED.sub("", food.entry.record)
    if _SWEETENED.search(record):
        return True
    if food.entry.group in {"fruit", "vegetables"}:
        return food.entry.drink
    if food.entry.group in {"protein", "grains"}:
        return not _PLAIN.search(record) or bool(_MORE_THAN_COOKED.search(record))
    sugars = food.value(Measure.SUGARS)
    plain_dairy = food.entry.group == "dairy" and (sugars is None or sugars <= _MOST_LACTOSE)
    return not plain_dairy
