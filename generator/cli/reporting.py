"""The command ``report``: what the finish codes of many teachers tell of groups."""

from __future__ import annotations

import sys
from pathlib import Path

import click

from generator.author.report import (
    AT_LEAST,
    LEAST,
    LEFT_OUT,
    Made,
    NoReportError,
    Size,
    Wishes,
    make_report,
)
from generator.cli.here import TypedPath, here
from generator.cli.options import root_option

_TOLD = 20
"""Lines left out that are told in the terminal; all of them stand in a file."""


@click.command()
@click.argument("files", metavar="CODES.csv...", nargs=-1, required=True, type=TypedPath())
@click.option(
    "--at-least",
    type=click.IntRange(LEAST, 1000),
    default=AT_LEAST,
    show_default=True,
    help="The smallest count that is shown; ask your district for its number.",
)
@click.option("--language", default="", help="A language of the site; its first one otherwise.")
@click.option(
    "--paper",
    type=click.Choice([one.value for one in Size]),
    default=Size.LETTER.value,
    show_default=True,
    help="What the PDF is to be printed on.",
)
@click.option(
    "--into",
    type=TypedPath(file_okay=False),
    default="report",
    show_default=True,
    help="The folder that the report is written into.",
)
@root_option
def report(  # noqa: PLR0913, PLR0917  # click hands every option over by its name
    files: tuple[Path, ...], at_least: int, language: str, paper: str, into: Path, root: Path
) -> None:
    """Tell reach and learning of groups from CODES.csv, the files teachers saved from the page for codes."""
    named, again = _named(files)
    try:
        made = make_report(root, named, Wishes(into, at_least, language, Size(paper)))
    except NoReportError as error:
        raise click.ClickException(f"{error}.") from None
    for name in again:
        click.echo(f"{name}: this file is named twice; it was read once.", err=True)
    _say(made)
    if not made.files:
        click.echo("No finish code was read, so no report was written.", err=True)
        sys.exit(1)


def _named(files: tuple[Path, ...]) -> tuple[list[tuple[Path, str]], list[str]]:
    """Each file once, with its name as it was typed, and the names of those that were typed again."""
    once: dict[Path, str] = {}
    again = []
    for file in files:
        name = file.relative_to(here()).as_posix() if file.is_relative_to(here()) else str(file)
        if file.resolve() in once:
            again.append(name)
        else:
            once[file.resolve()] = name
    return list(once.items()), again


def _say(made: Made) -> None:
    """What was read and what was not; of no line more than where it stands and why."""
    for one in made.left_out[:_TOLD]:
        click.echo(str(one), err=True)
    if (more := len(made.left_out) - _TOLD) > 0:
        rest = f"; all of them stand in {LEFT_OUT}" if made.files else ""
        click.echo(f"And {more} more places that are not counted{rest}.", err=True)
    for first, second, codes in made.alike:
        click.echo(
            f"{second}: this looks like {first} sent twice ({codes} codes in the same order); "
            "both are counted: leave one out if it is.",
            err=True,
        )
    if made.same:
        click.echo(
            f"{made.same} codes are equal to another one of the same file; each is counted, "
            "for two children may well have the same code."
        )
    for file in made.files:
        click.echo(f"Written: {file}")
    if made.files and made.left_out:
        click.echo(f"{LEFT_OUT} names files and lines: it is for you, and goes to nobody else.")
