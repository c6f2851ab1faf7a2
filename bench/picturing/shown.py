"""The page of the guide that shows the pictures, made of their table."""

from __future__ import annotations

from collections.abc import Iterator

from bench.picturing.picture import SCHEMES, SIZES, Picture
from bench.picturing.table import GROUPS

PAGE = "lessons/guide/pictures.md"
_SCREENS = {390: "on a phone", 1280: "on a wide screen"}
_BEGINNING = (
    "# What it looks like",
    "These pictures are made by `python bench/pictures.py` from the demo, so they are what you get. Each page is shown on a phone, 390 pixels wide, and on a screen of 1280, in the light and beside it in the dark.",
)


def page() -> str:
    """The whole page as Markdown."""
    return "\n\n".join((*_BEGINNING, *_parts())) + "\n"


def _parts() -> Iterator[str]:
    for title, group in GROUPS:
        yield f"## {title}"
        for picture in group:
            yield f"### {picture.title}"
            yield f"{picture.says}."
            for width in SIZES:
                yield " ".join(_pair(picture, width))


def _pair(picture: Picture, width: int) -> Iterator[str]:
    for scheme in SCHEMES:
        said = f"{picture.title} {_SCREENS[width]}, {scheme}: {picture.says}"
        yield f"![{said}](pictures/{picture.file(width, scheme)})"
