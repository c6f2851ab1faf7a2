"""The estimate of a comparison, put into words and on its line."""

from __future__ import annotations

from decimal import Decimal

from generator.compute.estimate import line_for, rounded
from generator.compute.result import Comparison
from generator.compute.stops.compare import estimated
from generator.present.pictures.estimate_line import estimate_line
from generator.present.stops.row import row_address
from generator.present.views.estimate import EstimateView
from generator.present.views.notes import AnswerView
from generator.present.words.number import number
from generator.present.words.prose import inline
from generator.present.words.say import Say, digits


def estimate_view(comparison: Comparison, say: Say) -> EstimateView | None:
    """What is estimated; nothing where nothing is."""
    estimate, found = comparison.stop.estimate, estimated(comparison)
    if estimate is None or found is None:
        return None
    row, gap = found
    near = rounded(gap)
    line = line_for(max(gap.larger, near.larger, *map(Decimal, estimate.choices)))
    return EstimateView(
        id=f"{comparison.stop.id}--estimate",
        prompt=inline(estimate.prompt),
        choices=tuple(number(one, say) for one in estimate.choices),
        unit=comparison.stop.measure.unit,
        line=estimate_line(line, say),
        end=digits(line.end),
        gap=digits(gap.size),
        row=row_address(comparison.stop.id, row),
        sensible=say.from_left(
            f"{say.number(gap.larger)} − {say.number(gap.smaller)} ≈ "
            f"{say.number(near.larger)} − {say.number(near.smaller)} = {say.number(near.gap)}"
        ),
    )


def estimate_answer(view: EstimateView | None, say: Say) -> tuple[AnswerView, ...]:
    """A sensible estimate for the teacher; none where nothing is estimated."""
    if view is None:
        return ()
    return (AnswerView(say("estimate_title"), (view.sensible,), say("estimate_teacher"), ()),)
