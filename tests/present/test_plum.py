"""Every plum is one drawing, stem and all, whatever draws it: the look is our own (no source)."""

from __future__ import annotations

import re
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest

from generator.present.assets.environment import Theme
from generator.present.assets.shared import shared_files
from generator.present.pictures.figures.body import HEAD
from generator.present.pictures.plums.drawing import COVER, drawn
from generator.present.pictures.plums.plum import HIGH, PLUM, STALK, STEM, WIDE, Plum
from generator.present.pictures.plums.svg import plums_file
from tests.present.test_plums import SVG, rows_of
from tests.project import ROOT

THEME = ROOT / "theme"
OUTLINE = re.compile(
    r"M(-?[\d.]+)[ ]?(-?[\d.]+)h([\d.]+)v([\d.]+)a([\d.]+) ([\d.]+) 0 1 1-([\d.]+) 0z"
)


def written(file: str, pattern: str) -> str:
    """What stands in a file of the theme, in the one group of a pattern."""
    found: str = re.search(pattern, (THEME / file).read_text("utf-8"))[1]  # type: ignore[index]  # else it fails
    return found


def icon() -> str:
    files = {one.path: one.content for one in shared_files(THEME, recording=False)}
    [path] = ET.fromstring(files["assets/favicon.svg"]).iter(f"{SVG}path")  # noqa: S314 - our own text
    return path.attrib["d"]


def gap() -> str:
    svg = ET.fromstring(plums_file(drawn(rows_of(5), COVER)))  # noqa: S314 - our own text
    [path] = svg.findall(f".//{SVG}g[@id='gap-plum']/{SVG}path[@class='plum']")
    return path.attrib["d"]


def plumb_line() -> str:
    template = Theme(THEME)._environment.get_template("parts/plumb-line.html")
    drawn_alone = str(template.module.plum(""))  # type: ignore[attr-defined]  # a macro of the template
    return re.search(r'class="plum" .* d="([^"]+)"', drawn_alone)[1]  # type: ignore[index]  # else it fails


@pytest.mark.parametrize(
    "outline",
    [
        PLUM,
        HEAD,
        icon(),
        gap(),
        plumb_line(),
        written("css/mark.css", r'--plum-shape: path\("([^"]+)"\)'),
        written("js/plum-outline.js", r'export const PLUM = "([^"]+)"'),
    ],
    ids=["plum", "head", "icon", "gap", "day", "style", "script"],
)
def test_every_plum_is_the_same_fruit_with_its_stem(outline: str) -> None:
    found = OUTLINE.fullmatch(outline)
    assert found
    _, _, stalk, down, wide, high, back = map(float, found.groups())
    size = wide / WIDE
    assert (stalk, back) == (pytest.approx(STALK * size, abs=0.006),) * 2
    assert high == pytest.approx(HIGH * size, abs=0.006)
    assert down == pytest.approx((STEM + 0.1) * size, abs=0.01)


def test_nothing_else_is_cut_out_as_a_plum() -> None:
    """The knot, the bob and the mark name the one shape; slides are handed it."""
    cut = re.findall(r"clip-path: (.*);", (THEME / "css/knots.css").read_text("utf-8"))
    cut += re.findall(r"clip-path: (.*);", (THEME / "css/mark.css").read_text("utf-8"))
    assert cut == ["var(--plum-shape)"] * 3
    slides = (THEME / "slides.typ").read_text("utf-8")
    assert "sys.inputs.plum" in slides
    assert "curve" not in slides
    assert "{{ plum_outline }}" in (THEME / "recording/slides.html").read_text("utf-8")


def test_the_shape_of_the_styles_stands_in_its_box() -> None:
    """26 by 36 pixels, as the knot, the bob and the mark are wide and high."""
    cut = written("css/mark.css", r'--plum-shape: path\("([^"]+)"\)')
    assert cut == Plum(WIDE, STEM, 1).path
    assert (2 * WIDE, STEM + 2 * HIGH) == (26, 36)
    for style in ("css/mark.css", "css/knots.css"):
        text = (THEME / style).read_text("utf-8")
        assert text.count("width: 26px;\n") == text.count("height: 36px;\n") > 0


def test_it_covers_what_its_outline_says() -> None:
    plum = Plum(10, 20, 2)
    assert (plum.top, plum.bottom) == (8, 80)
    assert plum.across(10) == (7, 13)  # the stem
    assert plum.across(50) == (-16, 36)  # its middle
    assert plum.across(80) == pytest.approx((10, 10))
    assert plum.across(5) == (10, 10)


def test_no_picture_of_the_theme_stands_beside_it() -> None:
    assert not [*Path(THEME).rglob("*.svg")]
