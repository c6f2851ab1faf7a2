"""The commands about lessons: ``check``, ``new``, ``trace`` and ``reference``."""

from __future__ import annotations

from pathlib import Path

import click

from generator.author.lesson import begin_lesson
from generator.author.reference_files import write_reference
from generator.author.trace import trace_text
from generator.cli.options import lesson_argument, root_option
from generator.cli.show import show
from generator.steps.site import map_of
from generator.steps.work import work


@click.command()
@root_option
def check(root: Path) -> None:
    """Say everything that is wrong with the lessons."""
    from generator.plugin import check_pages  # noqa: PLC0415  # the other commands here do without MkDocs

    worked = work(root)
    questions = (*worked.questions, *check_pages(root, map_of(worked)))
    show(questions, root)
    number = len(worked.results)
    checked = f"{number} lesson{'s' if number != 1 else ''} checked: nothing has to be put right"
    asked = len(questions)
    more = f", {asked} thing{'s' if asked != 1 else ''} to look at" if asked else ""
    click.echo(f"{checked}{more}.")


@click.command()
@click.argument("title")
@root_option
def new(title: str, root: Path) -> None:
    """Begin a lesson called TITLE from a filled-in example."""
    file = begin_lesson(root, title)
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
