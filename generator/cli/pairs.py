"""The command ``plumline foods pairs``: rows for a comparison, by what a lesson needs."""

from __future__ import annotations

from pathlib import Path

import click

from generator.author.pair_wishes import Typed, WishError
from generator.author.pairs import pair_text
from generator.cli.options import root_option


@click.command()
@click.option("--measure", default="energy", show_default=True, help="What is compared.")
@click.option("--gap", default="", metavar="FROM-TO", help="The gap of a row, such as 20-60.")
@click.option("--grades", default="3-5", show_default=True, help="Whose arithmetic it keeps to.")
@click.option("--trading", default="", help="none, tens, or zero: across a zero.")
@click.option("--per", default="", help="What one move stands for, as `one_move_per` has it.")
@click.option("--left", default="", help="What is left over of the gap, such as 0.")
@click.option("--groups", default="", help="Groups of the library to choose from: fruit,sweets.")
@click.option("--without", default="", help="Allergens that neither food contains: milk,wheat.")
@click.option("--with", "wanted", default="", help="A food that is to be in every row.")
@click.option("--rows", type=click.IntRange(1, 50), default=5, show_default=True)
@root_option
def pairs(rows: int, root: Path, **typed: str) -> None:
    """Propose rows for a comparison, ready to paste, with why each fits."""
    try:
        click.echo(pair_text(root, Typed(**typed), rows))
    except WishError as error:
        raise click.BadParameter(error.says, param_hint=f"--{error.option}") from None
