"""The commands about single lessons: ``new`` and ``trace``; and ``reference``."""

from __future__ import annotations

from pathlib import Path

import click

from generator.author.lesson import begin_lesson
from generator.author.reference_files import write_reference
from generator.author.trace import trace_text
from generator.cli.options import lesson_argument, root_option


@click.command()
@click.argument("title", nargs=-1, required=True)
@root_option
def new(title: tuple[str, ...], root: Path) -> None:
    """Begin a lesson called TITLE from a filled-in example."""
    file = begin_lesson(root, " ".join(title))
    click.echo(
        f"{file.relative_to(root).as_posix()} is ready. Change it in a text editor, and look with: python3 generator preview"
    )


@click.command(name="trace")
@lesson_argument
@click.option("--json", "as_json", is_flag=True, help="For another program.")
@root_option
def trace_command(lesson: str, as_json: bool, root: Path) -> None:  # noqa: FBT001  # click passes a flag by name
    """Say where every number of LESSON comes from."""
    click.echo(trace_text(root, lesson, as_json=as_json))


@click.command()
@root_option
def reference(root: Path) -> None:
    """Write the lesson file's reference page and its JSON Schema anew, after the program changed."""
    for file in write_reference(root):
        click.echo(f"{file.relative_to(root).as_posix()} is written.")
