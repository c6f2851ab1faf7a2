"""The lesson page, its chart, the cards, the worksheet and the answer key show the numbers of the trace."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Mapping
from decimal import Decimal
from pathlib import Path
from xml.etree.ElementTree import Element

import pytest

from generator.compute.figure import Figure
from generator.steps.work import work
from tests.html_page import having, one, read_page, text
from tests.site_project import ROOT

Traced = Mapping[str, Decimal]
LESSONS = sorted(file.parent.name for file in (ROOT / "lessons").glob("*/lesson.yaml"))
NUMBER = re.compile(r"\d+(?:,\d{3})*(?:\.\d+)?")


@pytest.fixture(scope="module")
def figures(built_site: Path) -> dict[str, dict[str, Decimal]]:
    """What the trace says of every lesson: values by their id."""
    results = work(built_site.parent).results
    return {
        result.lesson.id: {name(figure): figure.value for figure in result.figures}
        for result in results
    }


def name(figure: Figure) -> str:
    """Its id, with ``first`` and ``second`` for the sides: ``lunch.apple-raw_pear-raw.first``."""
    if figure.side is None:
        return figure.id
    return f"{figure.stop}.{figure.row}.{('first', 'second')[figure.side]}"


def test_there_are_lessons_to_compare() -> None:
    assert LESSONS


@pytest.mark.parametrize("lesson", LESSONS)
def test_the_rows_of_the_lesson_page(
    built_site: Path, figures: dict[str, dict[str, Decimal]], lesson: str
) -> None:
    traced = figures[lesson]
    page = read_page(built_site / lesson / "index.html")
    assert rows(traced)
    for row in rows(traced):
        form = by_id(page, row.replace(".", "--"))
        first, second, gap = (traced[f"{row}.{part}"] for part in ("first", "second", "gap"))
        given = {"first": first, "second": second}
        assert {name: Decimal(form.attrib[f"data-{name}"]) for name in given} == given
        if "data-gap" in form.attrib:
            assert Decimal(form.attrib["data-gap"]) == gap
        if "data-count" in form.attrib:
            assert Decimal(form.attrib["data-count"]) == traced[f"{row}.count"]
        shown = [number(text(next(held.iter("b")))) for held in having(form, "holding")]
        assert shown == [first, second]
        laid = [blocks(pile) for pile in having(one(form, "piles"), "blocks")]
        assert laid == [first, second]
        if asks(form):
            assert blocks(one(one(form, "left"), "blocks")) == gap
        assert working(form, row, traced)


@pytest.mark.parametrize("lesson", LESSONS)
def test_the_totals_of_the_lesson_page(
    built_site: Path, figures: dict[str, dict[str, Decimal]], lesson: str
) -> None:
    traced = figures[lesson]
    page = read_page(built_site / lesson / "index.html")
    forms = [form for form in page.iter("form") if form.get("id", "").endswith("--total")]
    for form in forms:
        stop = form.attrib["id"].removesuffix("--total")
        wanted = [traced[f"{stop}.total.{part}"] for part in ("first", "second", "gap")]
        assert [Decimal(form.attrib[f"data-{side}"]) for side in ("first", "second")] == wanted[:2]
        assert [number(text(next(held.iter("b")))) for held in having(form, "holding")] == wanted[
            :2
        ]
        assert Decimal(form.get("data-gap", str(wanted[2]))) == wanted[2]
        lines = [text(line) for line in one(form, "working").iter("li")]
        assert [number(line.rpartition("=")[2]) for line in lines] == wanted


@pytest.mark.parametrize("lesson", LESSONS)
def test_the_chart_and_its_figure(
    built_site: Path, figures: dict[str, dict[str, Decimal]], lesson: str
) -> None:
    traced = figures[lesson]
    page = read_page(built_site / lesson / "index.html")
    charts = list(page.iter("gap-chart"))
    wanted = sorted(
        value
        for name, value in traced.items()
        if is_a_holding(name) and name.rpartition(".")[0] in rows(traced)
    )
    assert charts
    assert wanted == sorted(
        number(text(cell))
        for chart in charts
        for cell in chart.iter("td")
        if NUMBER.search(text(cell))
    )
    drawn = [
        json.loads((built_site / lesson / chart.attrib["data-figure"]).read_text("utf-8"))
        for chart in charts
    ]
    assert wanted == sorted(
        Decimal(str(value))
        for chart in drawn
        for bar in chart["ways"][0]["data"]
        for value in bar["x"]
    )


@pytest.mark.parametrize("lesson", LESSONS)
@pytest.mark.parametrize("name", ["index", "cards", "answers"])
def test_the_counts_of_the_moves(
    built_site: Path, figures: dict[str, dict[str, Decimal]], lesson: str, name: str
) -> None:
    traced = figures[lesson]
    page = read_page(built_site / lesson / f"{name}.html")
    wanted = [traced[f"{row}.count"] for row in moved(traced)]
    if name == "answers":
        shown = [
            one(item, "line") for counts in having(page, "counts") for item in counts.iter("li")
        ]
    else:
        shown = list(having(page, "number" if name == "index" else "count"))
    assert wanted
    assert [number(text(each)) for each in shown] == wanted


@pytest.mark.parametrize("lesson", LESSONS)
def test_the_gap_that_a_card_counts(
    built_site: Path, figures: dict[str, dict[str, Decimal]], lesson: str
) -> None:
    traced = figures[lesson]
    page = read_page(built_site / lesson / "cards.html")
    told = [text(each).rpartition(":")[2] for each in having(page, "for")]
    counted = moved(traced)
    counts = [traced[f"{row}.count"] for row in counted]
    left = [traced[f"{row}.left-over"] for row in counted]
    for line, count, rest in zip(told, counts, left, strict=True):
        gap, per, whole, *over = [number(each) for each in NUMBER.findall(line)]
        assert (gap // per, gap % per) == (count, rest)
        assert whole == count
        assert over == [rest] * bool(rest)


@pytest.mark.parametrize("lesson", LESSONS)
def test_the_problems_on_the_worksheet(
    built_site: Path, figures: dict[str, dict[str, Decimal]], lesson: str
) -> None:
    traced = figures[lesson]
    page = read_page(built_site / lesson / "worksheet.html")
    problems = [each for each in having(page, "problem") if "total" not in each.get("class", "")]
    for problem, row in zip(problems, rows(traced), strict=True):
        held = [traced[f"{row}.first"], traced[f"{row}.second"]]
        assert [number(text(value)) for value in having(problem, "value")] == held
        asked = having(one(problem, "asked"), "line")
        lines = [text(line) for line in asked if not str(line.tag).endswith("svg")]
        on_screen = by_id(read_page(built_site / lesson / "index.html"), row.replace(".", "--"))
        is_worked = not asks(on_screen)
        if not is_worked:  # a row that is worked out has its hops, and no blocks to match
            assert [blocks(pile) for pile in having(one(problem, "given"), "blocks")] == list(held)
        if not is_worked:
            assert set(lines) == {""}
            continue
        gap = traced[f"{row}.gap"]
        assert number(lines[1]) == gap
        if f"{row}.count" in traced and len(lines) > 2:
            wanted = [gap, traced[f"{row}.count"], traced[f"{row}.left-over"]]
            assert [number(line) for line in lines[2:]] == wanted
        assert squares(problem) == [max(held), min(held), gap]


@pytest.mark.parametrize("lesson", LESSONS)
def test_the_rows_of_the_answer_key(
    built_site: Path, figures: dict[str, dict[str, Decimal]], lesson: str
) -> None:
    traced = figures[lesson]
    page = read_page(built_site / lesson / "answers.html")
    table_rows = [each for key in having(page, "key") for each in key.iter("tr")]
    answered = [each for each in table_rows if list(having(each, "value"))]
    for each, row in zip(answered, rows(traced), strict=True):
        held = [traced[f"{row}.first"], traced[f"{row}.second"]]
        assert [number(text(value)) for value in having(each, "value")] == held
        assert number(text(one(each, "gap"))) == traced[f"{row}.gap"]
        counts = [number(text(count)) for count in having(each, "counted")]
        assert counts in ([], [traced.get(f"{row}.count")])
        over = [number(text(left)) for left in having(each, "left-over")]
        assert over == [traced[f"{row}.left-over"] for _ in counts if traced[f"{row}.left-over"]]


@pytest.mark.parametrize("lesson", LESSONS)
def test_the_totals_in_the_answer_key(
    built_site: Path, figures: dict[str, dict[str, Decimal]], lesson: str
) -> None:
    traced = figures[lesson]
    page = read_page(built_site / lesson / "answers.html")
    stops = [name.partition(".")[0] for name in traced if name.endswith("total.gap")]
    asked = [
        stop
        for stop in stops
        if by_id_or_none(read_page(built_site / lesson / "index.html"), f"{stop}--total")
    ]
    sums = [number(text(each)) for each in having(page, "sum")]
    told = [sums[at : at + 3] for at in range(0, len(sums), 3)]
    wanted = [
        [traced[f"{stop}.total.{part}"] for part in ("first", "second", "gap")] for stop in asked
    ]
    assert all(each in wanted for each in told)
    assert told or lesson not in ADDED


ADDED = ("bean-stew", "garden-baskets", "river-walk", "two-days")
"""Lessons that ask for all rows together."""


def asks(form: Element) -> bool:
    """Whether a row asks for anything; one that is worked shows all there is."""
    return any(True for _ in form.iter("input"))


def rows(traced: Traced) -> list[str]:
    """``lunch.apple-raw_pear-raw`` ..., in order."""
    gaps = [one.removesuffix(".gap") for one in traced if re.search(r"\.[^.]+\.gap$", one)]
    return [
        row
        for row in gaps
        if not row.endswith(".total") and {f"{row}.first", f"{row}.second"} <= traced.keys()
    ]


def moved(traced: Traced) -> list[str]:
    """Those with something to move: for a count of 0 there is no card, and on the page a rest."""
    return [row for row in rows(traced) if traced.get(f"{row}.count")]


def is_a_holding(name: str) -> bool:
    return bool(re.search(r"\.(?!total\.)[^.]+\.(?:first|second)$", name))


def number(shown: str) -> Decimal:
    """The first number in a text, written as English does."""
    found = NUMBER.search(shown)
    assert found, f"no number in {shown!r}"
    return Decimal(found[0].replace(",", ""))


def by_id_or_none(page: Element, name: str) -> Element | None:
    return next((each for each in page.iter() if each.get("id") == name), None)


def by_id(page: Element, name: str) -> Element:
    found = by_id_or_none(page, name)
    assert found is not None, name
    return found


def working(form: Element, row: str, traced: Traced) -> bool:
    """Whether what the working says is the gap, and the count where one is asked."""
    lines = [text(line) for line in one(form, "working").iter("li")]
    results = [number(line.partition("=")[2]) for line in lines]
    wanted = [traced[f"{row}.gap"]]
    if "data-count" in form.attrib:
        wanted.append(traced[f"{row}.count"])
    return results == wanted


def blocks(pile: Element) -> Decimal:
    """What the blocks of a pile are worth, by the picture each of them uses."""
    worth = {
        "hundred": 100,
        "tens": 100,
        "ten": 10,
        "one": 1,
        "half": Decimal("0.5"),
        "tenth": Decimal("0.1"),
    }
    return sum((Decimal(worth[href]) for href in _used(pile)), Decimal(0))


def _used(pile: Element) -> Iterator[str]:
    for use in pile.iter():
        if str(use.tag).rpartition("}")[2] == "use":
            yield use.attrib["href"].removeprefix("#")


def squares(problem: Element) -> list[Decimal]:
    """The three numbers of a subtraction written digit under digit."""
    body = next(one(problem, "squares").iter("tbody"))
    read = [re.sub(r"[^\d.,]", "", text(line)).replace(",", ".") for line in body.iter("tr")]
    return [Decimal(digits) for digits in read]
