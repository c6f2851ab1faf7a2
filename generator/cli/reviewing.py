"""The command ``plumline reviewed``: what is kept of somebody's reading of a lesson."""

from __future__ import annotations

from pathlib import Path

import click

from generator.author.reviewed import (
    NotARoleError,
    NotItsLanguageError,
    keep_review,
    roles_of,
)
from generator.cli.options import day, lesson_argument, root_option


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
