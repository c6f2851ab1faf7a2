"""The command ``plumline foods find``: foods by words or by number, in one table."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from math import isfinite
from pathlib import Path

import click
from rich.console import Console
from rich.table import Table

from generator.author.food_search import (
    MEASURES,
    Asked,
    Column,
    FoundFood,
    FoundFoods,
    asked_for,
    find_foods,
)
from generator.cli.options import root_option

_CALL = "id or number"
_FOOD, _PORTION, _BETWEEN = 16, 10, 2
"""Columns that a food's name and its portion need at least, so that words stay whole, and what
stands between two of them. Where a table has less room, each food is told in lines."""


@click.command()
@click.argument("words", nargs=-1, required=True)
@click.option(
    "--measure",
    type=click.Choice(MEASURES),
    default=MEASURES[0],
    help="What to show of a portion beside its energy, and to look for.",
)
@click.option("--from", "at_least", type=float, help="The least of it in one portion.")
@click.option("--to", "at_most", type=float, help="The most of it in one portion.")
@click.option(
    "--most", type=click.IntRange(1, 200), default=12, show_default=True, help="How many to show."
)
@root_option
def find(  # noqa: PLR0913, PLR0917  # click passes each option by name
    words: tuple[str, ...],
    measure: str,
    at_least: float | None,
    at_most: float | None,
    most: int,
    root: Path,
) -> None:
    """Look for a food by WORDS, in English or Spanish, in the library and the official records.

    A number is looked up: an FDC id, a food code, or what stands below a package's barcode.
    """
    wanted = " ".join(words)
    asked = asked_for(measure, _exact(at_least), _exact(at_most))
    found = find_foods(root, wanted, asked, most)
    if found.foods:
        _show(found, asked.columns)
    for line in _next_steps(found, wanted, asked):
        click.echo(line)


def _exact(bound: float | None) -> Decimal | None:
    if bound is not None and not isfinite(bound):
        raise click.BadParameter(f"a bound is a number such as 300, not {bound}")
    return None if bound is None else Decimal(str(bound))


def _show(found: FoundFoods, columns: tuple[Column, ...]) -> None:
    console = Console(highlight=False, markup=False)
    if console.width < _needed(found, columns):
        for food in found.foods:
            console.print(f"{food.call}: {food.name}")
            console.print(f"    {food.amount}: {', '.join(_held(food, columns))}")
        return
    table = Table(box=None, pad_edge=False, header_style="bold")
    table.add_column(_CALL, no_wrap=True)
    table.add_column("food", overflow="fold", min_width=_FOOD)
    table.add_column("portion", overflow="fold", min_width=_PORTION, max_width=24)
    for number, column in enumerate(columns):
        table.add_column(_title(number, column), justify="right", no_wrap=True)
    for food in found.foods:
        table.add_row(food.call, food.name, food.amount, *map(_said, food.values))
    console.print(table)


def _needed(found: FoundFoods, columns: tuple[Column, ...]) -> int:
    """Columns of the screen below which a table would break what has to stay whole."""
    call = max(len(_CALL), *(len(food.call) for food in found.foods))
    values = sum(len(_title(number, column)) for number, column in enumerate(columns))
    return call + _FOOD + _PORTION + values + _BETWEEN * (2 + len(columns))


def _title(number: int, column: Column) -> str:
    """Energy, which stands first, is known by its unit."""
    return f"{column.name}, {column.unit}" if number else column.unit


def _held(food: FoundFood, columns: tuple[Column, ...]) -> Iterator[str]:
    """What a portion holds, energy first: ``140 kcal``, ``480 mg sodium``."""
    for number, (column, value) in enumerate(zip(columns, food.values, strict=True)):
        unit = "" if value is None else f" {column.unit}"
        yield f"{_said(value)}{unit}{f' {column.name}' if number else ''}"


def _said(value: Decimal | None) -> str:
    return "no value" if value is None else f"{value.normalize():,f}"


def _next_steps(found: FoundFoods, wanted: str, asked: Asked) -> list[str]:
    """How many more there are, and what to write or run next."""
    if not found.foods:
        return [_nothing(found, wanted, asked)]
    steps = [""]
    more = found.total - len(found.foods)
    if more > 0:
        at_least = "" if found.whole else "At least "
        steps.append(f"{at_least}{more:,} more. Another word makes it fewer; --most 50 shows more.")
    own = next((food for food in found.foods if food.in_library), None)
    new = next((food for food in found.foods if not food.in_library), None)
    if own is not None:
        steps.append(f"In a lesson, write {{food: {own.call}, amount: {own.amount}}}")
    if new is not None:
        name = ' --name "A plain name"' if new.package else ""
        steps.append(
            f"To have a record in your library: python3 generator foods add {new.call}{name}"
        )
    if releases := sorted({food.release for food in found.foods if not food.in_library}):
        steps.append(f"The records: {'; '.join(releases)}.")
    return steps


def _nothing(found: FoundFoods, wanted: str, asked: Asked) -> str:
    if found.misread:
        return (
            f"No food has the number {wanted}, and its digits do not fit together: read them again."
        )
    if not found.searched:
        return (
            f"Nothing in your library fits “{wanted}”. To look through the official records, get a CSV "
            "download at https://fdc.nal.usda.gov/download-datasets and run: "
            "python3 generator foods import FILE.zip"
        )
    if asked.bounded:
        return f"Nothing that fits “{wanted}” holds so much. Try a wider range, or one word."
    return (
        f"Nothing fits “{wanted}”. Try one word, or its beginning: "
        "python3 generator foods find lentil"
    )
