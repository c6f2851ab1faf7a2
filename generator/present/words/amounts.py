"""Blocks, holdings and workings of one row, put into words."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from generator.compute.blocks import to_blocks
from generator.compute.count import Count
from generator.compute.gap import Gap
from generator.compute.holding import Holding
from generator.compute.rounding import whole
from generator.model.measure import Measure
from generator.present.views.amounts import BlocksView, HoldingView, WorkingView
from generator.present.words.food_amount import amount_words
from generator.present.words.foreign import of_library
from generator.present.words.number import number
from generator.present.words.say import Say

SIDE_KEYS = ("first", "second")
_HUNDRED, _TEN, _HALF = 100, 10, 5
"""Sizes of blocks, and the tenths that are said and drawn as one half."""
_QUARTERS = {1: "¼", 2: "½", 3: "¾"}


def holding_view(
    holding: Holding, side: int, side_name: str, measure: Measure, say: Say
) -> HoldingView:
    """One side of a row."""
    value = holding.shown.value
    return HoldingView(
        side=side_name,
        side_key=SIDE_KEYS[side],
        name=food_name(holding, say),
        amount=amount_words(holding, say),
        value=number(value, say),
        unit=measure.unit,
        blocks=blocks_view(value, say),
        teaspoons=teaspoons(value, measure, say),
        asked_for=False,
        grams=weight(holding, say),
    )


def food_name(holding: Holding, say: Say) -> str:
    """The lesson's own wording, or the library's name."""
    name = holding.name(say.language)
    return of_library(name.words) if name.foreign else name.words


def portion(held: Holding, say: Say) -> str:
    """``Apple, 1 medium``: a food with its amount, where it has one."""
    name, amount = food_name(held, say), amount_words(held, say)
    return say("brings_portion", name=name, amount=amount) if amount else name


def weighed(held: Holding, say: Say) -> str:
    """``1 medium apple, 182 g``: a food to have ready, with its weight where the amount does not say it."""
    amount, name, grams = amount_words(held, say), food_name(held, say), weight(held, say)
    if grams and not amount.endswith(" g"):
        return say("recording_food_weighed", amount=amount, name=name, grams=grams)
    return say("recording_food", amount=amount, name=name) if amount else name


def weight(holding: Holding, say: Say) -> str:
    """``182 g``, to the gram; empty for a value of its own."""
    if holding.serving is None:
        return ""
    return say("grams", grams=say.number(whole(holding.serving.grams)))


def blocks_view(value: Decimal, say: Say, *, opened: int = 1000) -> BlocksView:
    """Base-ten blocks of a value; no label and no value of a lesson is finer than a tenth.

    Args:
        value: what to lay, in the unit of its measure.
        opened: blocks of this size and larger are opened into smaller ones, as they are counted:
            100 for ``32 tens``, 10 for ``25 ones``.
    """
    laid = to_blocks(value)
    hundreds, tens, ones = laid.hundreds, laid.tens, laid.ones
    said_hundreds = 0 if opened <= _HUNDRED else hundreds
    said_tens = tens + 10 * (hundreds - said_hundreds)
    if opened <= _TEN:
        hundreds, tens, said_tens, ones = 0, 0, 0, ones + 10 * said_tens
    parts = (
        ("blocks_hundreds", said_hundreds),
        ("blocks_tens", said_tens),
        ("blocks_ones", ones),
        ("blocks_half" if laid.tenths == _HALF else "blocks_tenths", laid.tenths),
    )
    said = tuple(say(key, n=number, number=say.number(number)) for key, number in parts if number)
    return BlocksView(say.listed(said) or say("blocks_none"), hundreds, tens, ones, laid.tenths)


def teaspoons(grams: Decimal, measure: Measure, say: Say) -> str:
    """Grams as teaspoons to the nearest quarter; empty for a measure that has none."""
    in_one = measure.entry.grams_per_teaspoon
    if in_one is None:
        return ""
    if grams == 0:
        return say("teaspoons_none")
    spoons, quarters = divmod(whole(Fraction(grams) * 4 / in_one), 4)
    part = _QUARTERS.get(quarters, "")
    if spoons:
        # 1½ teaspoons are several
        return say("teaspoons", n=spoons + bool(part), spoons=say.number(spoons) + part)
    if not part:
        return say("teaspoons_trace")
    return say("teaspoons_half" if part == _QUARTERS[2] else "teaspoons_part", spoons=part)


def gap_working(
    gap: Gap, count: Count | None, sides: tuple[str, str], measure: Measure, say: Say
) -> WorkingView:
    """How a gap and its count are worked out, step by step."""
    lines = [subtraction(gap, say)]
    if count is not None:
        left = say.number(count.left_over) if count.left_over else ""
        lines.append(
            division(gap, count, say) + (say("left_over_after", left=left) if left else "")
        )
    return WorkingView(tuple(lines), gap_sentence(gap, sides, measure, say))


def subtraction(gap: Gap, say: Say) -> str:
    """``2,430 − 1,880 = 550``: the smaller number from the larger."""
    return say.from_left(
        f"{say.number(gap.larger)} − {say.number(gap.smaller)} = {say.number(gap.size)}"
    )


def division(gap: Gap, count: Count, say: Say) -> str:
    """``320 ÷ 10 = 32``: from the gap on a count is a bare number, of no food and no unit."""
    return say.from_left(
        f"{say.number(gap.size)} ÷ {say.number(count.per)} = {say.number(count.whole)}"
    )


def gap_sentence(gap: Gap, sides: tuple[str, str], measure: Measure, say: Say) -> str:
    """Which side holds more, and by how much."""
    if gap.holder is None:
        return say("gap_even", value=say.quantity(gap.first, measure))
    return say("gap_more", side=sides[gap.holder], gap=say.quantity(gap.size, measure))
