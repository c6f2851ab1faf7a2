"""A figure as a file wears every palette by itself, and arms are read in front of the shirt."""

from __future__ import annotations

import re

import pytest

from generator.present.pictures.colours import DARK, LIGHT, Colours
from generator.present.pictures.figures.file import SHIRT, drawn_alone, picture_files
from tests.present.figure_poses import PAIRS

LEAST = 3.0
"""Contrast of what is needed to understand a picture (WCAG 2.2, 1.4.11 non-text contrast)."""


def luminance(colour: str) -> float:
    """Relative luminance (WCAG 2.2, definitions)."""
    digits = colour[1:] if len(colour) == 7 else "".join(2 * digit for digit in colour[1:])
    parts = [int(digits[i : i + 2], 16) / 255 for i in (0, 2, 4)]
    red, green, blue = (p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    dark, light = sorted((luminance(one), luminance(other)))
    return (light + 0.05) / (dark + 0.05)


@pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
def test_arms_stand_out_from_the_shirt_and_all_from_the_card(colours: Colours) -> None:
    assert contrast(colours.ink, SHIRT[colours]) >= LEAST
    for part in (SHIRT[colours], colours.ink, colours.plum, colours.thread, colours.quiet):
        assert contrast(part, colours.card) >= LEAST, part


def test_every_part_has_its_colour_in_light_dark_and_forced_colours() -> None:
    for name, poses in PAIRS.items():
        for svg in picture_files(poses):
            style, drawing = re.findall(r"<style>(.*?)</style>(.*)", svg)[0]
            light, dark, forced = re.split(r"@media\([^)]*\)", style)
            for part in set(re.findall(r'class="(figure-\w+)"', drawing)):
                assert f".{part}{{" in light, name
                assert f".{part}{{" in dark, name
            assert "[class]{color:CanvasText}" in forced
            assert not re.search(r'(?:stroke|fill|color)="#', drawing), "colours stand in the style"
            assert len(svg.encode()) <= 3_000, name


def test_what_knows_no_style_gets_the_light_colours() -> None:
    for poses in PAIRS.values():
        for svg in drawn_alone(poses):
            assert f'color="{LIGHT.plum}"' in svg
            assert f'color="{SHIRT[LIGHT]}"' in svg
            assert "class=" not in svg.replace('class="figure"', "")
