"""The commands ``translate`` and ``translated``: another language, kept in step."""

from __future__ import annotations

from pathlib import Path

import click

from generator.author.translation import begin_translation, mark_translated
from generator.cli.options import lesson_argument, root_option


@click.command()
@lesson_argument
@click.argument("language")
@root_option
def translate(lesson: str, language: str, root: Path) -> None:
    """Begin a translation of LESSON into LANGUAGE: a file with every text to fill in."""
    made, lacking = begin_translation(root, lesson, language)
    file = made.relative_to(root).as_posix()
    if lacking:
        names = f"{lacking} name{'s'[: lacking != 1]} of foods and moves"
        click.echo(f"{language} lacks {names}; {file} says where to write them.")
    click.echo(
        f"{file} is ready. Fill it in, then write: python3 generator translated {lesson} {language}"
    )


@click.command()
@lesson_argument
@click.argument("language")
@root_option
def translated(lesson: str, language: str, root: Path) -> None:
    """Say that LESSON and its translation into LANGUAGE agree as they stand."""
    file, lacking = mark_translated(root, lesson, language)
    path = file.relative_to(root).as_posix()
    click.echo(f"{path} is marked. You are told when a text of the lesson changes after this.")
    if lacking:
        click.echo(f"It still lacks {lacking} text{'s'[: lacking != 1]}: python3 generator check")
