"""The command ``check``: what is wrong, for the educator, for another program, or for a forge."""

from __future__ import annotations

import os
import sys
from collections import Counter
from pathlib import Path

import click

from generator.cli.here import TypedPath
from generator.cli.options import lessons_argument, root_option
from generator.cli.report import as_json, code_quality, workflow_commands
from generator.cli.show import show
from generator.problems import LessonError, Problem, Weight
from generator.steps.checking import check_lessons


@click.command()
@lessons_argument
@click.option("--json", "json", is_flag=True, help="For another program: a list of problems.")
@click.option("--strict", is_flag=True, help="End with 1 where there is anything to look at, too.")
@click.option(
    "--code-quality",
    type=TypedPath(dir_okay=False),
    metavar="FILE",
    help="Also write a report that GitLab shows beside the lines.",
)
@root_option
def check(
    lessons: tuple[str, ...],
    root: Path,
    code_quality: Path | None,
    *,
    json: bool,
    strict: bool,
) -> None:
    """Say everything that is wrong with the lessons, or with each LESSON that is named."""
    number, problems = found(root, lessons)
    counts = Counter(problem.weight for problem in problems)
    _tell(problems, root, code_quality, json=json)
    if not (counts[Weight.MUST] or json):
        click.echo(_summary(number, counts))
    if counts[Weight.MUST] or (strict and counts[Weight.QUESTION]):
        sys.exit(1)


def found(root: Path, lessons: tuple[str, ...]) -> tuple[int, tuple[Problem, ...]]:
    """How many lessons were looked at, and every problem in the order of the files."""
    try:
        checked = check_lessons(root, lessons)
    except LessonError as error:
        return 0, error.problems
    if lessons:
        return checked.lessons, LessonError(checked.problems).problems
    from generator.plugin import check_pages  # noqa: PLC0415  # a named lesson does without MkDocs

    pages = check_pages(root, checked.map)
    return checked.lessons, LessonError((*checked.problems, *pages)).problems


def _tell(problems: tuple[Problem, ...], root: Path, report: Path | None, *, json: bool) -> None:
    """Each problem wherever it is wanted."""
    if report:
        report.write_text(code_quality(problems, root), "utf-8")
    if json:
        click.echo(as_json(problems))
        return
    show(problems, root)
    if os.environ.get("GITHUB_ACTIONS") == "true":
        click.echo("".join(f"{line}\n" for line in workflow_commands(problems, root)), nl=False)


def _summary(number: int, counts: Counter[Weight]) -> str:
    asked, drafts = counts[Weight.QUESTION], counts[Weight.DRAFT]
    parts = [f"{number} lesson{'s'[: number != 1]} checked: nothing has to be put right"]
    if asked:
        parts.append(f"{asked} thing{'s'[: asked != 1]} to look at")
    if drafts:
        parts.append(f"{drafts} thing{'s'[: drafts != 1]} said of drafts")
    return f"{', '.join(parts)}."
