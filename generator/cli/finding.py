"""The command ``plumline foods find``: foods by words or by number, in one table."""

from __future__ import annotations

from decimal import Decimal
from math import isfinite
from pathlib import Path
from shutil import get_terminal_size

import click

from generator.author.food_search import (
    MEASURES,
    Asked,
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
    width = get_terminal_size().columns
    for line in table(found.foods, asked.columns, width) if found.foods else ():
        click.echo(line)
    for line in _next_steps(found, wanted, asked):
        click.echo(line)


def _exact(bound: float | None) -> Decimal | None:
    if bound is not None and not isfinite(bound):
        raise click.BadParameter(f"a bound is a number such as 300, not {bound}")
    return None if bound is None else Decimal(str(bound))


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
