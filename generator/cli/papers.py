"""The command ``papers``: worksheets, keys and packets as files, also a set for a whole class."""

from __future__ import annotations

from pathlib import Path

import click

from generator.author.papers import MOST, SIZES, ClassSet, Size, papers_of, write_papers
from generator.cli.here import TypedPath, here
from generator.cli.options import lessons_argument, root_option

_SEED = 40
"""Most letters of a seed: as many as the practice page takes."""


def _children(ctx: click.Context, parameter: click.Parameter, number: int | None) -> int | None:
    """How many children a class has."""
    if number is not None and not 1 <= number <= MOST:
        what = f"a class set has 1 to {MOST} sheets, one for each child, and not {number}"
        raise click.BadParameter(what, ctx, parameter)
    return number


def _seed(ctx: click.Context, parameter: click.Parameter, seed: str) -> str:
    """A word that a child can type."""
    if len(seed) > _SEED or not seed.isprintable():
        what = f"a seed is a word of at most {_SEED} letters, such as the one of a class link"
        raise click.BadParameter(what, ctx, parameter)
    return seed.strip()


@click.command()
@lessons_argument
@click.option(
    "--size",
    type=click.Choice([size.value for size in Size]),
    help="The size of the paper; both, unless you say one.",
)
@click.option("--large", is_flag=True, help="In large print, 18 pt.")
@click.option(
    "--class",
    "children",
    metavar="N",
    type=int,
    callback=_children,
    help="A numbered worksheet for each of N children, with practice of its own, and one key.",
)
@click.option(
    "--seed",
    metavar="WORD",
    default="",
    callback=_seed,
    help="With --class: what the practice is made from; another word, other problems.",
)
@click.option(
    "--numbers",
    type=click.Choice([str(size) for size in SIZES]),
    help="With --class: the largest number of the practice; that of the lesson, unless you say one.",
)
@click.option(
    "--into",
    type=TypedPath(file_okay=False),
    default="papers",
    show_default=True,
    help="The folder that the files are written into.",
)
@root_option
def papers(  # noqa: PLR0913, PLR0917  # click passes each option by name
    lessons: tuple[str, ...],
    size: str | None,
    children: int | None,
    seed: str,
    numbers: str | None,
    into: Path,
    root: Path,
    *,
    large: bool,
) -> None:
    """Make the papers of all lessons, or of each LESSON that is named, as PDF files."""
    if (seed or numbers) and children is None:
        what = "--seed and --numbers are for a class set; say --class N too"
        raise click.UsageError(what)
    sizes = (Size(size),) if size else tuple(Size)
    wanted = ClassSet(children, seed, int(numbers or 0)) if children is not None else None
    made = [*write_papers(papers_of(root, lessons, sizes, (large,), wanted), into)]
    for file in made:
        click.echo(file.relative_to(here()) if file.is_relative_to(here()) else file)
    click.echo(f"{len(made)} file{'s'[: len(made) != 1]} written.")
