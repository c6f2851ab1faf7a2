"""The slides of the rehearsal video as pages, to be shown full screen while filming."""

from __future__ import annotations

import re
from decimal import Decimal

from markupsafe import Markup

from generator.compute.result import LessonResult
from generator.model.moment import clock
from generator.present.recording.slides import MoveCount, Slide, slides
from generator.present.recording.views import SlideView
from generator.present.words.say import Say


def slide_views(result: LessonResult, say: Say) -> tuple[SlideView, ...]:
    """Every slide, in order."""
    shown = slides(result, say)
    return tuple(_view(slide, number, len(shown), say) for number, slide in enumerate(shown, 1))


def _view(slide: Slide, number: int, of: int, say: Say) -> SlideView:
    content = slide.content
    pictures = content.figures if isinstance(content, MoveCount) else ()
    knots = tuple(
        "done" if stop < slide.stop else "here" if stop == slide.stop else "ahead"
        for stop in range(slide.stops)
    )
    return SlideView(
        layout=re.sub(r"(?<=[a-z])(?=[A-Z])", "-", slide.layout).lower(),
        label=say("recording_slide", number=number, of=of, at=clock(Decimal(slide.start) / 1000)),
        number=number,
        knots=knots,
        content=content,
        figures=tuple(Markup(svg) for svg in pictures),  # noqa: S704  # drawn by us from angles
    )
