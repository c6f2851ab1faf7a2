"""Gaps hang as plums: threads in proportion, a gap of 0 at the line, leaves to the side that holds more, one scale.

What the drawing must show is our own look (no source); that its parts can be told from the ground is
WCAG 2.2, success criterion 1.4.11: 3 to 1 (R).
"""

from __future__ import annotations

import re
import struct
import zlib
from decimal import Decimal
from fractions import Fraction
from itertools import pairwise
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.present.pictures.colours import DARK, LIGHT, Colours
from generator.present.pictures.plums.drawing import (
    COVER,
    FLAT,
    NUMBERED,
    POSTER,
    Frame,
    drawn,
    leaf,
    plum,
)
from generator.present.pictures.plums.files import SHARED, cover_files
from generator.present.pictures.plums.hung import Hung, hung
from generator.present.pictures.plums.svg import colours_of, plums_file
from generator.present.words.hung import hung_in_words, numbers_in_words
from generator.present.words.say import Say
from tests.present.test_figure_files import contrast
from tests.project import GOOD, ROOT, library, worked

SVG = "{http://www.w3.org/2000/svg}"
FRAMES = (COVER, FLAT, NUMBERED, POSTER)
SAYS = {tag: Say(library().words[tag]) for tag in ("en", "es")}
TWO = GOOD.replace(
    "  - talk:",
    """\
  - compare:
      id: supper
      at: "2:00"
      measure: energy
      sides: [At home, On the way]
      rows:
        - [{name: Bread, value: 80, source: label}, {name: Rice, value: 80, source: label}]
        - [{name: Stew, value: 300, source: label}, {name: Soup, value: 100, source: label}]
      solve: [gap]
  - talk:""",
)


def rows_of(*gaps: int) -> tuple[Hung, ...]:
    """Gaps of a lesson: above zero where the second side holds more."""
    most = max(map(abs, gaps)) or 1
    return tuple(
        Hung(
            stop="lunch",
            gap=Decimal(abs(gap)),
            share=Fraction(abs(gap), most),
            side=int(gap > 0) if gap else None,
            holder=("Home", "Kiosk")[gap > 0] if gap else "",
        )
        for gap in gaps
    )


GAPS = st.lists(st.integers(-2000, 2000), min_size=1, max_size=12)


def hanging(svg: str) -> list[tuple[float, float, str]]:
    """Each plum in a picture: from the left, from the top, and which kind it is."""
    used = ET.fromstring(svg).findall(f"{SVG}use")  # noqa: S314 - our own text
    return [(float(one.attrib["x"]), float(one.attrib["y"]), one.attrib["href"]) for one in used]


@pytest.mark.parametrize("frame", FRAMES)
@given(GAPS)
def test_threads_are_as_long_as_their_gaps(frame: Frame, gaps: list[int]) -> None:
    drops = [y - frame.line for _, y, _ in hanging(plums_file(drawn(rows_of(*gaps), frame)))]
    assert len(drops) == len(gaps)
    longest = max(map(abs, gaps))
    for drop, gap in zip(drops, gaps, strict=True):
        exact = frame.longest * abs(gap) / longest if longest else 0
        assert abs(drop - exact) <= 0.006  # two places are written


def test_a_gap_of_nothing_hangs_at_the_line_and_has_no_leaf() -> None:
    [_, (_, y, kind), _] = hanging(plums_file(drawn(rows_of(5, 0, -9), COVER)))
    assert (y, kind) == (COVER.line, "#gap-plum")


@given(GAPS)
def test_a_leaf_points_to_the_side_that_holds_more(gaps: list[int]) -> None:
    kinds = [kind for _, _, kind in hanging(plums_file(drawn(rows_of(*gaps), COVER)))]
    told = {-1: "#gap-first", 0: "#gap-plum", 1: "#gap-second"}
    assert kinds == [told[(gap > 0) - (gap < 0)] for gap in gaps]


@pytest.mark.parametrize(("side", "way"), [(0, -1), (1, 1)])
def test_left_is_the_first_side_and_right_the_second(side: int, way: int) -> None:
    [one, marks] = leaf(side, 1)
    assert one.colour == ("first", "second")[side]
    for shape in (*one.shapes, *marks.shapes):
        left, right = shape.across((shape.top + shape.bottom) / 2)
        assert left * way >= -0.01
        assert right * way >= -0.01
        assert left < right


def test_leaves_are_told_apart_without_colour() -> None:
    """Dots for the first side, lines for the second, as everywhere."""
    first, second = (leaf(side, 1)[1].shapes for side in (0, 1))
    assert {type(one).__name__ for one in first} == {"Round"}
    assert {type(one).__name__ for one in second} == {"Slant"}


@given(GAPS, st.sampled_from(FRAMES))
def test_all_stays_inside_the_picture_and_no_two_plums_touch(gaps: list[int], frame: Frame) -> None:
    drawing = drawn(rows_of(*gaps), frame)
    half = 13 * drawing.size
    for place in drawing.places:
        assert place.x - half >= 0
        assert frame.line + place.drop + 30 * drawing.size <= frame.height
    for one, other in pairwise(drawing.places):
        assert other.x - one.x > 2 * half


def test_rows_of_one_lesson_share_a_scale(tmp_path: Path) -> None:
    rows = hung(worked(tmp_path, TWO))
    most = max(row.gap for row in rows)
    assert len(rows) == 4
    assert {row.stop for row in rows} == {"breakfast", "supper"}
    assert [row.share for row in rows] == [Fraction(row.gap) / Fraction(most) for row in rows]


def test_measures_are_not_held_against_each_other(tmp_path: Path) -> None:
    """200 mg are no longer a thread than 40 kcal because the number is larger."""
    other = TWO.replace('at: "2:00"\n      measure: energy', 'at: "2:00"\n      measure: sodium')
    shares = {row.stop: max(0, row.share) for row in hung(worked(tmp_path, other))}
    longest = [row for row in hung(worked(tmp_path, other)) if row.share == 1]
    assert {row.stop for row in longest} == set(shares)


@pytest.mark.parametrize(
    ("gaps", "says"),
    [
        ((320, -140, 45), "Three gaps, the first the longest."),
        ((5,), "One gap."),
        ((0,), "One gap, with both sides the same."),
        ((7, 7), "Two gaps, all as long."),
        ((3, 9, 0, -9), "Four gaps, the second and the fourth the longest, the third with both sides the same."),
        ((1, 2, 3, 4, 5, 6, 7, 8, 9), "9 gaps, number 9 the longest."),
    ],
)  # fmt: skip
def test_the_drawing_in_words(gaps: tuple[int, ...], says: str) -> None:
    assert hung_in_words([row.share for row in rows_of(*gaps)], SAYS["en"]) == says


@pytest.mark.parametrize("language", SAYS)
@given(gaps=st.lists(st.integers(-9, 9), min_size=2, max_size=8))
def test_the_words_agree_with_the_drawing(language: str, gaps: list[int]) -> None:
    says = hung_in_words([row.share for row in rows_of(*gaps)], SAYS[language])
    drops = [y for _, y, _ in hanging(plums_file(drawn(rows_of(*gaps), COVER)))]
    lowest = [drop == max(drops) > COVER.line for drop in drops]
    if all(lowest) or not any(lowest):
        return
    place = ("la " if language == "es" else "the ") + r"\w+"
    clause = says.split(", ", 1)[1]
    longest = re.split(" the longest| con el hilo", clause)[0]
    assert len(re.findall(place, longest)) == sum(lowest)


def test_a_cover_gives_no_number_away_and_the_ending_has_them_all() -> None:
    rows = rows_of(320, -140, 0)
    assert not re.search(r"\d", hung_in_words([row.share for row in rows], SAYS["en"]))
    assert "<text" not in plums_file(drawn(rows, COVER))
    numbers = re.findall(
        r"<text[^>]*>(\d+)<", plums_file(drawn(rows, NUMBERED), ("320", "140", "0"))
    )
    assert numbers == ["320", "140", "0"]
    told = numbers_in_words(rows, SAYS["en"])
    assert told.endswith("the third with both sides the same: 320 (Kiosk), 140 (Home) and 0.")


@pytest.mark.parametrize("colours", [LIGHT, DARK])
def test_every_part_is_told_from_the_ground(colours: Colours) -> None:
    parts = colours_of(colours)
    for name in ("thread", "plum", "first", "second"):
        assert contrast(parts[name], parts["wash"]) >= 3, name


@given(st.lists(st.integers(-2000, 2000), min_size=1, max_size=6), st.sampled_from(FRAMES))
def test_a_drawing_is_small(gaps: list[int], frame: Frame) -> None:
    rows = rows_of(*gaps)
    numbers = [str(row.gap) for row in rows] if frame is NUMBERED else ()
    assert len(plums_file(drawn(rows, frame), numbers).encode()) < 2048


def test_the_shared_picture_is_a_png_of_the_same_drawing(tmp_path: Path) -> None:
    result = worked(tmp_path, TWO)
    made = {one.path: one.content for one in cover_files(result)}
    picture = made["meal/plums.png"]
    assert picture == {one.path: one.content for one in cover_files(result)}["meal/plums.png"]
    dots = decoded(picture)
    assert (len(dots[0]), len(dots)) == SHARED
    scale = SHARED[1] / COVER.height
    left = (SHARED[0] - COVER.width * scale) / 2
    for place in drawn(hung(result), COVER).places:
        x, end = round(place.x * scale + left), (COVER.line + place.drop) * scale
        assert dots[round(end + 20 * scale)][x] == LIGHT.plum
        below = round(end + 31 * scale)
        assert below >= SHARED[1] or dots[below][x] == LIGHT.plum_wash
        assert dots[round(end - 4 * scale)][x] == LIGHT.plum  # its stem, or the knot
        if place.drop > 14:
            assert dots[round(end - 7 * scale)][x] == LIGHT.thread


def decoded(picture: bytes) -> list[list[str]]:
    """The dots of a PNG of eight-bit palette numbers without filters, as the specification has them (W3C, 5, 9, 11)."""
    assert picture[:8] == b"\x89PNG\r\n\x1a\n"
    chunks, at = {}, 8
    while at < len(picture):
        [length] = struct.unpack(">I", picture[at : at + 4])
        name, data = picture[at + 4 : at + 8], picture[at + 8 : at + 8 + length]
        [check] = struct.unpack(">I", picture[at + 8 + length : at + 12 + length])
        assert check == zlib.crc32(name + data)
        chunks[name], at = data, at + 12 + length
    width, height, depth, kind = struct.unpack(">IIBB", chunks[b"IHDR"][:10])
    assert (depth, kind) == (8, 3)
    palette = [f"#{chunks[b'PLTE'][i : i + 3].hex()}" for i in range(0, len(chunks[b"PLTE"]), 3)]
    held = zlib.decompress(chunks[b"IDAT"])
    lines = [held[y * (width + 1) : (y + 1) * (width + 1)] for y in range(height)]
    assert not any(line[0] for line in lines)
    return [[palette[dot] for dot in line[1:]] for line in lines]


def test_the_script_hangs_the_same_plums() -> None:
    """What a found gap hangs at its stop is what the cover shows."""
    script = (ROOT / "theme/js/hung-plum.js").read_text("utf-8")

    def written(name: str) -> str:
        return re.search(rf'^(?:const|  ) ?{name}(?: =|:) "([^"]+)"', script, re.MULTILINE)[1]  # type: ignore[index]  # else it fails

    fruit, shine = ("".join(shape.path for shape in part.shapes) for part in plum(1))
    outline = (ROOT / "theme/js/plum-outline.js").read_text("utf-8")
    assert f'PLUM = "{fruit}"' in outline
    assert written("SHINE") == shine
    for side, name in enumerate(("first", "second")):
        both = re.findall(rf'^  {name}: "([^"]+)"', script, re.MULTILINE)
        assert both == ["".join(shape.path for shape in part.shapes) for part in leaf(side, 1)]


def test_a_lesson_that_compares_nothing_has_no_drawing(tmp_path: Path) -> None:
    start, end = GOOD.index("  - compare:"), GOOD.index("  - talk:")
    result = worked(tmp_path, GOOD[:start] + GOOD[end:])
    assert list(cover_files(result)) == []
    assert hung_in_words([], SAYS["en"]) == ""
