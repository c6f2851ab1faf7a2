"""Slides as pictures of 960 by 540 pixels, drawn by typst with the fonts it brings along."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import asdict
from pathlib import Path

import typst

from generator.present.pictures.colours import LIGHT
from generator.present.recording.slides.slide import Slide


def pictures(slides: Sequence[Slide], theme: Path) -> tuple[bytes, ...]:
    """One PNG for each slide; the same slides give the same bytes on every machine.

    Args:
        slides: what to draw.
        theme: the folder that holds ``slides.typ``.
    """
    if not slides:
        return ()
    entries = [
        {"layout": slide.layout, "stop": slide.stop, "stops": slide.stops, **asdict(slide.content)}
        for slide in slides
    ]
    drawn: object = typst.compile(  # typed as bytes, yet several pages come as a list
        theme / "slides.typ",
        root=theme,
        format="png",
        ppi=54,  # the page is 1280 points wide
        sys_inputs={
            "slides": json.dumps(entries, ensure_ascii=False),
            "colours": json.dumps(asdict(LIGHT)),
        },
        ignore_system_fonts=True,
    )
    return (
        tuple(drawn)
        if isinstance(drawn, list)
        else (bytes(drawn),)
        if isinstance(drawn, bytes)
        else ()
    )
