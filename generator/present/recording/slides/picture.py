"""Slides as pictures of 960 by 540 pixels, drawn by typst in a family of the pages, which lies beside them."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import asdict
from pathlib import Path
from typing import cast

import typst

from generator.present.pictures.colours import LIGHT
from generator.present.pictures.plums.plum import PLUM
from generator.present.recording.slides.slide import Slide


class TooFullError(Exception):
    """More stands on some slides than a picture has room for."""

    def __init__(self, slides: Sequence[Slide]) -> None:
        super().__init__(f"{len(slides)} slides are too full")
        self.slides = tuple(slides)


def pictures(slides: Sequence[Slide], theme: Path) -> tuple[bytes, ...]:
    """One PNG for each slide; the same slides give the same bytes on every machine.

    Args:
        slides: what to draw.
        theme: the folder that holds ``slides.typ``.

    Raises:
        TooFullError: with each slide whose words run on to a second picture.
    """
    if not slides:
        return ()
    drawn = _drawn(slides, theme)
    if len(drawn) != len(slides):
        raise TooFullError([slide for slide in slides if len(_drawn([slide], theme)) > 1])
    return drawn


def _drawn(slides: Sequence[Slide], theme: Path) -> tuple[bytes, ...]:
    """The pictures that the slides fill, in order."""
    entries = [
        {"layout": slide.layout, "stop": slide.stop, "stops": slide.stops, **asdict(slide.content)}
        for slide in slides
    ]
    drawn = cast(
        "bytes | list[bytes]",  # typed as bytes, yet several pages come as a list
        typst.compile(
            theme / "slides.typ",
            root=theme,
            format="png",
            ppi=54,  # the page is 1280 points wide
            sys_inputs={
                "slides": json.dumps(entries, ensure_ascii=False),
                "colours": json.dumps(asdict(LIGHT)),
                "plum": PLUM,
            },
            font_paths=[theme / "vendor" / "noto-sans"],
            ignore_system_fonts=True,  # they are other ones on every machine
        ),
    )
    return tuple(drawn) if isinstance(drawn, list) else (drawn,)
