"""What a portion brings, for the trace: each share with its arithmetic and the rule it goes by."""

from __future__ import annotations

from collections.abc import Iterator

from generator.author.step_words import plain
from generator.compute.brings import Share, what_it_brings
from generator.compute.figure import Figure
from generator.compute.rounding import to_places
from generator.model.figure import FigureKind


def brings_words(figure: Figure) -> Iterator[str]:
    """A line for each share that is told of the portion a figure is of; none for any other figure."""
    if figure.kind is not FigureKind.HOLDS:
        return
    for held in figure.foods:
        if held.food and held.serving:
            brings = what_it_brings(held.food, held.serving)
            for share in brings.much:
                yield f"{_share(share)}; 21 CFR 101.54: 10 percent or more"
            for share in brings.little_or_much:
                if share.level:
                    yield f"{_share(share)}; {share.level} by FDA's 5 and 20 percent"
            for measure in brings.unknown:
                yield f"{measure}: no value in the record"


def _share(share: Share) -> str:
    """``fiber: 4.368 g ÷ 28 g = 15.6 percent, shown as 16 (21 CFR 101.9(d)(7)(ii))``."""
    unit, percent = share.measure.unit, share.percent
    divided = f"{plain(share.held)} {unit} ÷ {share.of} {unit}"
    paragraph = percent.rounding.rule.paragraph if percent.rounding else ""
    shown = f"shown as {percent.value} (21 CFR 101.9{paragraph})"
    return f"{share.measure}: {divided} = {to_places(percent.exact, 1)} percent, {shown}"
