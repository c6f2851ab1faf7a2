"""The commands ``plumline review`` and ``plumline reviewed``: the sheet to read a lesson by, and what is kept of it."""

from __future__ import annotations

from pathlib import Path

import click

from generator.author.review import Size, write_review
from generator.author.reviewed import (
    NotARoleError,
    NotItsLanguageError,
    keep_review,
    roles_of,
)
from generator.cli.here import TypedPath, here
from generator.cli.options import day, lesson_argument, root_option


@click.command()
@lesson_argument
@click.argument("target", required=False, type=TypedPath())
@click.option(
    "--language",
    metavar="LANGUAGE",
    default="",
    help="The language it is read in, such as es. The lesson's own, unless you say one.",
)
@click.option(
    "--size",
    type=click.Choice([size.value for size in Size]),
    default=Size.A4.value,
    show_default=True,
    help="The size of the paper.",
)
@root_option
def review(lesson: str, target: Path | None, language: str, size: str, root: Path) -> None:
    """Make the sheet by which somebody reads LESSON over, as a PDF file.

    TARGET is the file to write, or the folder that it is written into; the folder you are in, unless you name one.
    """
    try:
        file = write_review(root, lesson, language, Size(size), target or here())
    except NotItsLanguageError as error:
        raise click.BadParameter(str(error), param_hint="--language") from None
    shown = file.relative_to(here()) if file.is_relative_to(here()) else file
    click.echo(
        f"{shown} has every number with its source, every text and every line of care. "
        f"Once it was read: python3 generator reviewed {lesson} --by ROLE"
    )


@click.command()
@lesson_argument
@click.option(
    "--by",
    metavar="ROLE",
    multiple=True,
    required=True,
    help='What the reader is, and never who: "registered dietitian". '
    'Again with a language before it, "es: dietista registrada", for the pages in that language.',
)
@click.option(
    "--on",
    metavar="DAY",
    callback=day,
    help="The day of the reading, such as 2026-03-14. Today, unless you say otherwise.",
)
@click.option(
    "--language",
    "languages",
    metavar="LANGUAGE",
    multiple=True,
    help="The language it was read in, such as es; again for another. The lesson's own, unless you say one.",
)
@root_option
def reviewed(
    lesson: str, by: tuple[str, ...], on: str, languages: tuple[str, ...], root: Path
) -> None:
    """Keep that LESSON was read as it stands, by whom (a role, never a name), and when."""
    try:
        kept = keep_review(root, lesson, roles_of(by), on, languages)
    except NotARoleError as error:
        raise click.BadParameter(str(error), param_hint="--by") from None
    except NotItsLanguageError as error:
        raise click.BadParameter(str(error), param_hint="--language") from None
    file = kept.file.relative_to(root).as_posix()
    click.echo(
        f"{file} keeps that {kept.numbers} numbers and {kept.texts} texts were read on {on}. "
        "When one changes, the mark holds for the others; `check` says which."
    )
