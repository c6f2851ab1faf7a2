"""What no style reaches wears the colours of the look all the same."""

from __future__ import annotations

import re
from dataclasses import asdict
from pathlib import Path

import pytest

from generator.present.pictures.colours import DARK, LIGHT, Colours

ROOT = Path(__file__).parents[2]
TOKENS = (ROOT / "theme/css/tokens.css").read_text("utf-8")
LEAVE = {"generator/present/pictures/colours.py"}
HEX = re.compile(r"#[0-9a-fA-F]{3}(?:[0-9a-fA-F]{3})?\b")


@pytest.mark.parametrize(
    ("colours", "begins"),
    [(LIGHT, ":root,\n.reel {"), (DARK, "@media (prefers-color-scheme: dark) {")],
)
def test_they_are_those_of_the_style_sheet(colours: Colours, begins: str) -> None:
    block = TOKENS.partition(begins)[2].partition("}")[0]
    there = dict(re.findall(r"--([\w-]+): (#\w+);", block))
    assert {name.replace("_", "-"): colour for name, colour in asdict(colours).items()} == there


def test_no_colour_of_the_look_is_written_a_second_time() -> None:
    files = [*(ROOT / "generator").rglob("*.py"), ROOT / "theme/slides.typ"]
    own = {
        colour for colour in (*asdict(LIGHT).values(), *asdict(DARK).values()) if len(colour) > 4
    }
    for file in files:
        name = file.relative_to(ROOT).as_posix()
        found = {colour.lower() for colour in HEX.findall(file.read_text("utf-8"))}
        assert name in LEAVE or not found & own, name


PALETTES = {
    "theme/css/tokens.css",
    "theme/css/tokens-printed.css",
    "theme/css/paper-page.css",
}
"""Of the screen, of a screen page put on paper, and of a sheet, which is ink on white whatever the screen wears."""
CAPTIONS = re.compile(r"::cue \{[^}]*\}")
"""A browser need not know there what a page's own properties are (WebVTT, section 8.2.1; from memory)."""


def test_a_colour_is_written_in_a_palette_alone() -> None:
    written = {
        file.relative_to(ROOT).as_posix(): HEX.findall(CAPTIONS.sub("", file.read_text("utf-8")))
        for file in (ROOT / "theme").rglob("*.css")
        if "vendor" not in file.parts
    }
    assert {name for name, colours in written.items() if colours} == PALETTES


def test_a_palette_holds_nothing_but_names_for_its_colours() -> None:
    for name in PALETTES:
        for line in (ROOT / name).read_text("utf-8").splitlines():
            assert not HEX.search(line) or line.strip().startswith("--"), f"{name}: {line}"
