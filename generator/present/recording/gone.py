"""A number of the film that the lesson has no more, told to whoever films it again."""

from __future__ import annotations

from generator.compute.recorded import ChangedFigure
from generator.model.moment import clock
from generator.present.words.say import Say


def gone_line(changed: ChangedFigure, say: Say) -> str:
    """Its time, its value and its foods by their ids, as the record keeps them."""
    filmed = changed.filmed
    return say(
        "recording_again_gone",
        from_=clock(filmed.start),
        to=clock(filmed.end),
        filmed=say.number(filmed.value),
        id=", ".join(filter(None, (filmed.move, *(one.food for one in filmed.foods)))),
    )
