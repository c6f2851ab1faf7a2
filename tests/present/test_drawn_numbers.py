"""What a reader sees in the pictures of a few hundred rows is the numbers of the rows, in both languages.

The pictures are read by their geometry: areas of blocks, rings around them, lengths along a line.
Base-ten blocks and number lines: common practice in classrooms, no source.
"""

from __future__ import annotations

import random
import re
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from itertools import pairwise
from xml.etree.ElementTree import Element

import pytest

from generator.compute.gap import Gap
from generator.present.pictures.block_rings import left_view
from generator.present.pictures.number_line import number_line
from generator.present.words.say import Say
from tests.drawn import SVG, Drawing, subpaths
from tests.html_page import having, one, read_html, text
from tests.made import page_outputs
from tests.project import ROOT, library

STEPS = ["10", "20", "100", "4", "2", "5", "1", "25", "50", "0.5", "1.5", "30", ""]
"""How much is one count; the last stop has none."""
ROWS = 12
CAP = 12
"""Counts that every move allows."""


@dataclass(frozen=True)
class Row:
    """Numbers of a row as the lesson has them."""

    first: Decimal
    second: Decimal
    per: Decimal | None

    @property
    def gap(self) -> Decimal:
        return abs(self.first - self.second)


def rows_of(step: str, chance: random.Random) -> list[Row]:
    """Rows whose gaps are up to twelve counts, some with a rest, some of nothing but tenths."""
    made = []
    for _ in range(ROWS):
        if step:
            per = Decimal(step)
            fine = per % 1 or per < 10
            rest = (
                Decimal(chance.randrange(int(per * 10))) / 10
                if chance.random() < 0.6
                else Decimal(0)
            )
            gap = per * chance.randint(1, CAP) + (rest if fine else rest // 1)
        else:
            fine = chance.random() < 0.4
            gap = Decimal(chance.randrange(10 ** chance.randint(2, 5))) / 10
            gap = gap if fine else gap // 1
        smaller = Decimal(chance.randrange(10 ** chance.randint(1, 4))) / (10 if fine else 1)
        numbers = [smaller, smaller + gap]
        chance.shuffle(numbers)
        made.append(Row(numbers[0], numbers[1], Decimal(step) if step else None))
    return made


def lesson(rows: list[Row], step: str) -> str:
    """All rows, four in a stop: the counts of one stop together have a cap."""
    return (
        "title: Pictures\nsummary: Two sides.\ngrades: 3-5\nminutes: 10\ngoals: [Look.]\nstops:\n"
        + "".join(stop(rows[at : at + 4], step, at) for at in range(0, ROWS, 4))
    )


def stop(rows: list[Row], step: str, number: int) -> str:
    lines = "".join(
        f"        - {{id: r{at}, foods: [{{name: Red {at}, value: {row.first}, source: card}},"
        f" {{name: Blue {at}, value: {row.second}, source: card}}]}}\n"
        for at, row in enumerate(rows, number)
    )
    moves = "march, side-step, wall-push, march"
    move = f"  - move: {{for: pair-{number}, one_move_per: {step}, moves: [{moves}]}}\n"
    return (
        f"  - compare:\n      id: pair-{number}\n      measure: sodium\n      sides: [Red side, Blue side]\n"
        f"      rows:\n{lines}      solve: [gap{', count' if step else ''}]\n{move if step else ''}"
    )


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> tuple[dict[str, str], dict[str, list[Row]]]:
    """Pages by their path, and the rows of each lesson."""
    root = tmp_path_factory.mktemp("pictures")
    for shared in ("site_data", "theme"):
        (root / shared).symlink_to(ROOT / shared)
    chance = random.Random(125)  # noqa: S311  # nothing secret: a seed, so that a failure comes back
    rows: dict[str, list[Row]] = {}
    for number, step in enumerate(STEPS):
        name = f"step-{number}"
        rows[name] = rows_of(step, chance)
        folder = root / "lessons" / name
        folder.mkdir(parents=True)
        (folder / "lesson.yaml").write_text(lesson(rows[name], step), "utf-8")
        (folder / "lesson.es.yaml").write_text("title: Dibujos\n", "utf-8")
    pages = {
        one.path: one.content.decode() for one in page_outputs(root) if one.path.endswith(".html")
    }
    return pages, rows


def page_of(pages: dict[str, str], name: str, language: str, file: str) -> Element:
    return read_html(pages[f"{'es/' if language == 'es' else ''}{name}/{file}.html"])


LANGUAGES = ["en", "es"]
EACH = [f"step-{number}" for number in range(len(STEPS))]
Site = tuple[dict[str, str], dict[str, list[Row]]]

SIZES = {
    "en": {"hundred": "100", "tenth": "0.1", "ten": "10", "one": "1"},
    "es": {"centena": "100", "decena": "10", "unidad": "1", "décima": "0.1"},
}


def said_number(written: str) -> Decimal:
    return Decimal(written.replace(",", ""))


def said_blocks(words: str, language: str) -> Decimal:
    """What a phrase such as ``3 hundreds and 2 tens`` makes."""
    total = Decimal(0)
    for number, name in re.findall(r"(?:(\d[\d,]*) |\b(?=one half|media unidad))(\w+)", words):
        if not number:
            total += Decimal("0.5")
            continue
        size = next(size for unit, size in SIZES[language].items() if name.startswith(unit))
        total += said_number(number) * Decimal(size)
    return total


def said_picture(words: str, language: str) -> tuple[Decimal, list[Decimal]]:
    """What a caption makes in all, and what each of its groups makes."""
    found = re.match(
        r"([\d,]+) (?:groups? of|grupos? de) (.*?)(?:, (?:and|y) (.*) (?:outside|fuera))?$", words
    )
    if not found:
        return said_blocks(words, language), []
    times, each = int(said_number(found[1])), said_blocks(found[2], language)
    return times * each + said_blocks(found[3] or "", language), [each] * times


def drawn_picture(drawing: Drawing, pile: Element) -> tuple[Decimal, list[Decimal]]:
    """What blocks make in all, and what each ring holds."""
    worth = [block for svg in pile.iter(f"{SVG}svg") for block in drawing.blocks(svg)]
    assert set(worth) <= {Decimal(one) for one in ("100", "10", "1", "0.5", "0.1")}
    rings = [drawn_picture(drawing, ring)[0] for ring in having(pile, "ring") if ring is not pile]
    return sum(worth, Decimal(0)), rings


def check_left(row: Row, drawing: Drawing, pile: Element, caption: str, language: str) -> None:
    """The gap, in groups of the divisor where that is more than one block, and what is left over outside."""
    total, rings = drawn_picture(drawing, pile)
    assert (total, rings) == said_picture(caption, language)
    assert total == row.gap
    if row.per in {None, 1, 10, 100}:
        assert rings == []
    else:
        assert row.per
        assert rings == [row.per] * int(row.gap // row.per)
        outside = total - sum(rings)
        assert outside == row.gap % row.per
    if row.per == 10:
        blocks = [block for svg in pile.iter(f"{SVG}svg") for block in drawing.blocks(svg)]
        assert blocks.count(Decimal(10)) == row.gap // 10


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", EACH)
def test_blocks_on_the_page(site: Site, name: str, language: str) -> None:
    pages, rows = site
    page = page_of(pages, name, language, "index")
    drawing = Drawing(page, 5)
    forms = [form for form in having(page, "gap-row", "form") if any(having(form, "piles"))]
    for row, form in zip(rows[name], forms, strict=True):
        piles = list(having(one(form, "piles"), "blocks"))
        for value, pile in zip((row.first, row.second), piles, strict=True):
            assert drawn_picture(drawing, pile) == (value, [])
            assert said_blocks(pile.get("aria-label", ""), language) == value
        matched, left = one(form, "matched"), one(form, "left")
        assert drawn_picture(drawing, one(matched, "blocks"))[0] == min(row.first, row.second)
        caption = text(next(left.iter("figcaption"))).split(": ", 1)[1]
        check_left(row, drawing, one(left, "blocks"), caption, language)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", EACH)
def test_blocks_on_the_worksheet(site: Site, name: str, language: str) -> None:
    pages, rows = site
    page = page_of(pages, name, language, "worksheet")
    drawing = Drawing(page, 10)
    problems = [one for one in having(page, "problem") if any(having(one, "given"))]
    for row, problem in zip(rows[name], problems, strict=True):
        for value, pile in zip((row.first, row.second), having(problem, "blocks"), strict=True):
            assert drawn_picture(drawing, pile) == (value, [])
            assert said_blocks(pile.get("aria-label", ""), language) == value


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", EACH)
def test_number_lines(site: Site, name: str, language: str) -> None:
    """Hops without a break are to one scale; a hop with one would be longer; the line begins at 0 or has a break."""
    pages, rows = site
    page = page_of(pages, name, language, "index")
    lines = list(having(page, "line"))
    unequal = [row for row in rows[name] if row.gap]
    for row, line in zip(unequal, lines, strict=True):
        path, hops = line.iter(f"{SVG}path")
        parts = [points for points, _ in subpaths(path.get("d", ""))]
        ticks = [
            points[0][0] for points in parts if points[0][0] == points[-1][0] and len(points) == 2
        ]
        zigzags = [x for points in parts for x, y in points if y not in {58, 53, 63}]
        texts = [
            (float(one.get("x", 0)), float(one.get("y", 0)), "".join(one.itertext()))
            for one in line.iter(f"{SVG}text")
        ]
        below = [(x, said_number(said)) for x, y, said in texts if y > 70]
        above = [(x, said_number(said.removeprefix("+"))) for x, y, said in texts if y < 30]
        assert [x for x, _ in below] == ticks
        stops = [number for _, number in below]
        assert [stops[0], stops[-1]] == [min(row.first, row.second), max(row.first, row.second)]
        assert [size for _, size in above] == [end - start for start, end in pairwise(stops)]
        ((feet, _),) = subpaths(hops.get("d", ""))
        assert [x for x, _ in feet] == ticks
        assert any(x < ticks[0] for x in zigzags) == bool(stops[0]), "not from 0, and no break"
        scales, broken = [], []
        for (left, right), (x, size) in zip(pairwise(ticks), above, strict=True):
            assert left < x < right
            if any(left < at < right for at in zigzags):
                broken.append((right - left, float(size)))
            else:
                scales.append(
                    ((right - left - 0.5) / float(size), (right - left + 0.5) / float(size))
                )
        assert scales, "nothing is to scale"
        low, high = max(least for least, _ in scales), min(most for _, most in scales)
        assert low <= high, "two scales in one line"
        assert all(width < size * high for width, size in broken), "a break that nothing asks for"
        width = float(line.get("viewBox", "").split()[2])
        assert ticks[-1] < width <= (440 if len(above) <= 5 else 560)
        for row_of_texts in (below, above):
            for (x, said), (other, more) in pairwise(row_of_texts):
                assert other - x >= 4.5 * (len(f"{said:,}") + len(f"{more:,}")), (said, more)


@pytest.mark.parametrize(
    ("language", "said"), [("en", "4 ones and 3 tenths"), ("es", "4 unidades y 3 décimas")]
)
def test_tenths_are_drawn_and_said(language: str, said: str) -> None:
    """12.5 g against 8.2 g: once the tenths were lost, and 4 ones were left."""
    say = Say(library().words[language])
    gap = Gap(Decimal("12.5"), Decimal("8.2"), Fraction(43, 10))
    left = left_view(gap, None, say)
    assert (left.label, left.ones, left.tenths) == (said, 4, 3)
    assert ">12</text>" in number_line(gap, say)


def test_hundreds_of_rows_were_looked_at(site: Site) -> None:
    """The numbers differ enough to mean something: halves, other tenths, thousands, rests and none."""
    _, rows = site
    all_rows = [row for each in rows.values() for row in each]
    assert len(all_rows) == len(STEPS) * ROWS
    assert any(row.gap > 1000 for row in all_rows)
    assert {row.gap * 10 % 10 for row in all_rows} >= {0, 3, 5}
    assert {bool(row.per and row.gap % row.per) for row in all_rows} == {True, False}
