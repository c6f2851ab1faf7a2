"""Where the numbers of a comparison come from, in sentences for the page."""

from __future__ import annotations

from generator.compute.holding import Holding
from generator.compute.result import Comparison
from generator.model.measure import Measure
from generator.present.views.amounts import SourceView
from generator.present.words.amounts import food_name
from generator.present.words.food_amount import amount_words
from generator.present.words.foreign import cited
from generator.present.words.say import Say, as_decimal


def source_views(comparison: Comparison, say: Say) -> tuple[SourceView, ...]:
    """One sentence for each food, in the order of the rows."""
    return holding_sources(comparison.holdings, comparison.stop.measure, say)


def holding_sources(
    holdings: tuple[Holding, ...], measure: Measure, say: Say
) -> tuple[SourceView, ...]:
    """One sentence for each holding.

    The order is theirs, and a food named twice is told twice, for its amounts may differ.
    """
    return tuple(
        SourceView(food_name(held, say), _sentence(held, measure, say)) for held in holdings
    )


def _sentence(held: Holding, measure: Measure, say: Say) -> str:
    shown = say.quantity(held.shown.value, measure)
    if held.food is None or held.serving is None or held.per_100g is None:
        source = held.item.source or ""
        return say(
            "source_own",
            source=source + (f", {held.item.read_on}" if held.item.read_on else ""),
            shown=shown,
        )
    return say(
        "source_record",
        record=cited(held.food.entry.record, say.language),
        release=held.food.release,
        fdc=held.food.entry.fdc,
        per_100g=say.quantity(as_decimal(held.per_100g, 3), measure),
        amount=amount_words(held, say),
        grams=say.number(as_decimal(held.serving.grams)),
        exact=say.number(as_decimal(held.shown.exact)),
        shown=shown,
    )
