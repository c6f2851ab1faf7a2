"""The commands ``plumline foods``: from an official download to a food a lesson can name."""

from __future__ import annotations

from collections import Counter
from pathlib import Path
from typing import TypedDict, Unpack

import click
from rich.console import Console
from rich.progress import BarColumn, DownloadColumn, Progress, TextColumn
from rich.table import Table

from generator.author.food_care import FoodCare, said_allergens
from generator.author.food_entry import Wishes
from generator.author.foods import FoundFoods, add_food, find_foods, import_download, refresh_foods
from generator.cli.here import TypedPath
from generator.cli.options import root_option
from generator.cli.pairs import pairs
from generator.cli.proposing import Proposing

_SOURCE = "USDA FoodData Central, "


class Said(TypedDict):
    """The options of `add`, by their names."""

    id_: str
    name: str
    group: str
    allergens: str
    choking: bool | None


@click.group(cls=Proposing)
def foods() -> None:
    """Find foods, and take their figures from the official records."""


foods.add_command(pairs)


@foods.command(name="import")
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
    click.echo('Look for a food with: python3 generator foods find "black beans"')


@foods.command()
@click.argument("words", nargs=-1, required=True)
@root_option
def find(words: tuple[str, ...], root: Path) -> None:
    """Look for a food by WORDS, in English or Spanish, in the library and the official records."""
    wanted = " ".join(words)
    found = find_foods(root, wanted)
    for food in found.foods:
        amount = food.entry.portions[0].name("en").words
        click.echo(f"{food.name('en').words}: in your library as `{food.id}`")
        click.echo(f"    write {{food: {food.id}, amount: {amount}}}")
    if found.records:
        click.echo()
        _show_records(found)
    click.echo(_next_step(found, wanted))


@foods.command()
@click.argument("fdc_id", type=int)
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
def add(fdc_id: int, root: Path, **said: Unpack[Said]) -> None:
    """Write the record FDC_ID with its portions into site_data/foods.yaml."""
    care = FoodCare(said_allergens(said["allergens"]), said["choking"])
    wishes = Wishes(said["id_"], said["name"], said["group"], care)
    entry = add_food(root, fdc_id, wishes)
    click.echo(f"site_data/foods.yaml holds `{entry.id}` now, in the group {entry.group}:\n")
    click.echo("\n".join(f"  {line}" for line in entry.lines))
    click.echo(
        f"\nLook over the name (“{entry.name}”: plain words, no brand), the group and the portions; "
        "add the Spanish names, and `drink: true` where it belongs."
    )
    for one in entry.left:
        click.echo(one)
    click.echo(f"In a lesson, write {{food: {entry.id}, amount: {entry.amount}}}")


@foods.command()
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


def _show_records(found: FoundFoods) -> None:
    """The records as a table; their release below it where it is the same for all."""
    releases = {record.release.removeprefix(_SOURCE) for record in found.records}
    table = Table(box=None, pad_edge=False, header_style="bold", expand=True)
    table.add_column("FDC id", justify="right", no_wrap=True)
    table.add_column("record", overflow="fold", ratio=1)
    table.add_column("kcal in 100 g", justify="right")
    table.add_column("portions", justify="right")
    table.add_column("in your library as", no_wrap=True)
    if len(releases) > 1:
        table.add_column("release", no_wrap=True)
    for record in found.records:
        cells = [str(record.fdc), record.description, record.energy or "no value"]
        cells += [str(record.portions), found.known.get(record.fdc, "")]
        cells += [record.release.removeprefix(_SOURCE)] if len(releases) > 1 else []
        table.add_row(*cells)
    console = Console(highlight=False, markup=False)
    console.print(table)
    console.print(f"From {_SOURCE}{'; '.join(sorted(releases))}.", soft_wrap=True)


def _next_step(found: FoundFoods, wanted: str) -> str:
    new = next((one for one in found.records if one.fdc not in found.known), None)
    if new is not None:
        return f"\nTo have a record in your library, give its FDC id: python3 generator foods add {new.fdc}"
    if found.foods or found.records:
        return ""
    if found.searched:
        return f"Nothing fits “{wanted}”. Try one word, or its beginning: python3 generator foods find lentil"
    return (
        f"Nothing in your library fits “{wanted}”. To look through the official records, get a CSV "
        "download at https://fdc.nal.usda.gov/download-datasets and run: python3 generator foods import FILE.zip"
    )
