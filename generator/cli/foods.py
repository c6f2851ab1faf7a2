"""The commands ``plumline foods``: from an official download to a food a lesson can name."""

from __future__ import annotations

from collections import Counter
from pathlib import Path
from typing import TypedDict, Unpack

import click
from rich.console import Console
from rich.progress import BarColumn, DownloadColumn, Progress, TextColumn

from generator.author.food_care import FoodCare, said_allergens
from generator.author.food_entry import Wishes
from generator.author.foods import add_food, import_download, impossible, refresh_foods
from generator.cli.here import TypedPath
from generator.cli.options import root_option


class Said(TypedDict):
    """The options of `add`, by their names."""

    id_: str
    name: str
    group: str
    allergens: str
    choking: bool | None


@click.command(name="import")
@click.argument("file", type=TypedPath())
@root_option
def import_command(file: Path, root: Path) -> None:
    """Read FILE, a FoodData Central CSV zip as it was downloaded, for find, add and refresh."""
    columns = (TextColumn("{task.description}", markup=False), BarColumn(), DownloadColumn())
    with Progress(*columns, console=Console(stderr=True), transient=True) as bar:
        task = bar.add_task(file.name)
        imported = import_download(
            root, file, lambda read, total: bar.update(task, advance=read, total=total)
        )
    for one in imported:
        click.echo(
            f"{one.kind}, published {one.published}: {one.foods:,} foods, {one.values:,} figures, "
            f"{one.portions:,} portions."
        )
        for number, why in (
            (one.weightless, "an amount or a weight of 0"),
            (one.unmeasured, "no stated quantity"),
        ):
            if number:
                click.echo(f"  Left out: {number:,} portion{'s'[: number != 1]} with {why}.")
        if one.unsized:
            click.echo(
                f"  Left out: {one.unsized:,} package{'s'[: one.unsized != 1]} whose serving is "
                "given neither in grams nor in milliliters."
            )
        if one.unfit:
            click.echo(
                f"  Left out: {one.unfit:,} figure{'s'[: one.unfit != 1]} of labels that are no "
                "figure, or another one for the same nutrient."
            )
        _tell_impossible(impossible(root, one))
    click.echo('Look for a food with: python3 generator foods find "black beans"')


def _tell_impossible(told: tuple[str, ...]) -> None:
    """The first records that no food can be, and how many more there are."""
    shown = 3
    for one in told[:shown]:
        click.echo(f"  Cannot be, and is not added by `foods add`: {one}.")
    if more := max(0, len(told) - shown):
        click.echo(f"  And {more:,} record{'s'[: more != 1]} more that cannot be.")


@click.command()
@click.argument("number")
@click.option("--id", "id_", default="", help="What a lesson calls it, such as black-beans.")
@click.option("--name", default="", help="Its plain name in English.")
@click.option("--group", default="", help="The group of the library it stands in.")
@click.option(
    "--allergens",
    default="",
    help="The major allergens it plainly contains, such as “milk, wheat”, or none.",
)
@click.option(
    "--choking/--no-choking", default=None, help="Whether a child under 4 can choke on it."
)
@root_option
def add(number: str, root: Path, **said: Unpack[Said]) -> None:
    """Write the record NUMBER with its portions into site_data/foods.yaml.

    NUMBER is an FDC id, a food code, or what stands below a package's barcode.
    """
    care = FoodCare(said_allergens(said["allergens"]), said["choking"])
    wishes = Wishes(said["id_"], said["name"], said["group"], care)
    entry = add_food(root, number, wishes)
    click.echo(f"site_data/foods.yaml holds `{entry.id}` now, in the group {entry.group}:\n")
    click.echo("\n".join(f"  {line}" for line in entry.lines))
    click.echo(
        f"\nLook over the name (“{entry.name}”: plain words, no brand), the group and the portions; "
        "add the Spanish names, and `drink: true` where it belongs."
    )
    for one in entry.left:
        click.echo(one)
    if not entry.raw:
        click.echo(f"In a lesson, write {{food: {entry.id}, amount: {entry.amount}}}")


@click.command()
@root_option
def refresh(root: Path) -> None:
    """Take every figure of site_data/foods.yaml anew from the official records."""
    compared = refresh_foods(root)
    for change in compared.changes:
        click.echo(f"{change.place}: {change.food}: {change.what}: {change.old} → {change.new}")
    for title, listed in (
        ("The record is gone; the entry was left as it was", compared.gone),
        (
            "The record does not weigh this portion any more; it was left as it was",
            compared.unweighed,
        ),
    ):
        for one in listed:
            click.echo(f"{title}: {one}")
    if compared.unread:
        number = len(compared.unread)
        click.echo(f"Not compared, for their kind of food was not imported: {number} foods")
    figures = Counter(figure for one in compared.missing for figure in one.figures)
    for figure, number in figures.items():
        some = f"{number} food{'s' if number != 1 else ''}"
        click.echo(f"{figure}: written for {some} that did not have it")
    count = len(compared.changes) + figures.total()
    click.echo(
        f"{count or 'No'} figure{'s' if count != 1 else ''} changed in site_data/foods.yaml."
    )
