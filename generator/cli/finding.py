"""The command ``plumline foods find``: foods by words or by number, in one table."""

from __future__ import annotations

import json
from decimal import Decimal
from math import isfinite
from pathlib import Path
from shutil import get_terminal_size

import click

from generator.author.food_search import (
    MEASURES,
    Asked,
    FoundFood,
    FoundFoods,
    asked_for,
    find_foods,
)
from generator.cli.food_table import table
from generator.cli.options import root_option


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
@click.option("--json", "as_json", is_flag=True, help="A list of foods, for a program.")
@root_option
def find(  # noqa: PLR0913, PLR0917  # click passes each option by name
    words: tuple[str, ...],
    measure: str,
    at_least: float | None,
    at_most: float | None,
    most: int,
    as_json: bool,  # noqa: FBT001  # as above
    root: Path,
) -> None:
    """Look for a food by WORDS, in English or Spanish, in the library and the official records.

    A number is looked up: an FDC id, a food code, or what stands below a package's barcode.
    """
    wanted = " ".join(words)
    asked = asked_for(measure, _exact(at_least), _exact(at_most))
    found = find_foods(root, wanted, asked, most)
    if as_json:
        click.echo(json.dumps([_plain(food, asked) for food in found.foods], indent=1))
        return
    width = get_terminal_size().columns
    for line in table(found.foods, asked.columns, width) if found.foods else ():
        click.echo(line)
    for line in _next_steps(found, wanted, asked):
        click.echo(line)


def _exact(bound: float | None) -> Decimal | None:
    if bound is not None and not isfinite(bound):
        raise click.BadParameter(f"a bound is a number such as 300, not {bound}")
    return None if bound is None else Decimal(str(bound))


def _plain(food: FoundFood, asked: Asked) -> dict[str, object]:
    """A food for a program; a value is a number as it is shown, or null where there is none."""
    values = {
        column.name: None if value is None else float(value)
        for column, value in zip(asked.columns, food.values, strict=True)
    }
    return {
        "call": food.call,
        "food": food.name,
        "portion": food.amount,
        "values": values,
        "in_library": food.in_library,
        "package": food.package,
        "release": food.release,
    }


def _next_steps(found: FoundFoods, wanted: str, asked: Asked) -> list[str]:
    """How many more there are, and what to write or run next."""
    if not found.foods:
        return [_nothing(found, wanted, asked)]
    steps = [""]
    more = found.total - len(found.foods)
    if more > 0:
        at_least = "" if found.whole else "At least "
        steps.append(f"{at_least}{more:,} more. Another word makes it fewer; --most 50 shows more.")
    own = next((food for food in found.foods if food.in_library and not food.raw), None)
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
    if asked.bounded and not found.whole:
        return (
            f"None of the first that fit “{wanted}” holds so much, and they are too many to look "
            "at all of them: add a word."
        )
    if asked.bounded:
        return f"Nothing that fits “{wanted}” holds so much. Try a wider range, or one word."
    return (
        f"Nothing fits “{wanted}”. Try one word, or its beginning: "
        "python3 generator foods find lentil"
    )
