"""The command ``plumline``: each word an educator types, and what it prints."""

from __future__ import annotations

import sys
from pathlib import Path

import click
from rich.cells import cell_len
from rich.console import Console
from rich.text import Text

from generator.build import (
    begin_lesson,
    begin_translation,
    lesson_ids,
    mark_translated,
    trace_text,
    work,
    write_reference,
)
from generator.cli_foods import foods
from generator.cli_recording import recorded, rehearse
from generator.problems import LessonError, Place, Problem, Weight

root_option = click.option(
    "--root",
    type=click.Path(exists=True, file_okay=False, path_type=Path),
    default=".",
    help="Folder of the site, the one that holds lessons/. Here, unless you say otherwise.",
)


class _Commands(click.Group):
    """Ends every command in one way: problems are shown, and the exit code says whether there were any."""

    def invoke(self, ctx: click.Context) -> object:
        try:
            return super().invoke(ctx)
        except LessonError as error:
            show(error.problems, Path(ctx.meta.get("root", ".")))
            sys.exit(1)


@click.group(cls=_Commands, context_settings={"help_option_names": ["-h", "--help"]})
@click.version_option(package_name="plumline")
def main() -> None:
    """Home video lessons from plain files: write, check, look, publish."""


main.add_command(foods)
main.add_command(rehearse)
main.add_command(recorded)


@main.command()
@root_option
@click.pass_context
def check(ctx: click.Context, root: Path) -> None:
    """Say everything that is wrong with the lessons."""
    ctx.meta["root"] = root
    worked = work(root)
    show(worked.questions, root)
    number = len(worked.results)
    click.echo(f"{number} lesson{'s' if number != 1 else ''} checked: nothing has to be put right.")


@main.command()
@root_option
@click.pass_context
def build(ctx: click.Context, root: Path) -> None:
    """Build the site into the folder site/; a mistake leaves the old site as it was."""
    from generator.plugin import build_site  # noqa: PLC0415  # MkDocs takes a quarter second to load

    ctx.meta["root"] = root
    folder = build_site(root)
    click.echo(f"The site is in {folder.name}/. Open {folder.name}/index.html to look at it.")


@main.command()
@root_option
@click.option(
    "--address",
    default="127.0.0.1:8000",
    show_default=True,
    help="Where the browser finds it, as host:port.",
)
@click.pass_context
def preview(ctx: click.Context, root: Path, address: str) -> None:
    """Show the site in a browser and renew it whenever a file changes."""
    from generator.plugin import preview_site  # noqa: PLC0415  # MkDocs takes a quarter second to load

    ctx.meta["root"] = root
    work(root)  # a mistake is told in full before the server starts
    click.echo(f"Open http://{address}/ in a browser. Stop with Ctrl+C.")
    preview_site(root, address)


@main.command()
@click.argument("title")
@root_option
@click.pass_context
def new(ctx: click.Context, title: str, root: Path) -> None:
    """Begin a lesson called TITLE from a filled-in example."""
    ctx.meta["root"] = root
    file = begin_lesson(root, title)
    click.echo(
        f"{file.relative_to(root).as_posix()} is ready. Change it in a text editor, and look with: plumline preview"
    )


@main.command(name="trace")
@click.argument("lesson")
@click.option("--json", "as_json", is_flag=True, help="For another program.")
@root_option
@click.pass_context
def trace_command(ctx: click.Context, lesson: str, as_json: bool, root: Path) -> None:  # noqa: FBT001  # click passes a flag by name
    """Say where every number of LESSON comes from."""
    ctx.meta["root"] = root
    _must_exist(lesson, root)
    click.echo(trace_text(root, lesson, as_json=as_json))


@main.command()
@click.argument("lesson")
@click.argument("language")
@root_option
@click.pass_context
def translate(ctx: click.Context, lesson: str, language: str, root: Path) -> None:
    """Begin a translation of LESSON into LANGUAGE: a file with every text to fill in."""
    ctx.meta["root"] = root
    _must_exist(lesson, root)
    file = begin_translation(root, lesson, language).relative_to(root).as_posix()
    click.echo(f"{file} is ready. Fill it in, then write: plumline translated {lesson} {language}")


@main.command()
@click.argument("lesson")
@click.argument("language")
@root_option
@click.pass_context
def translated(ctx: click.Context, lesson: str, language: str, root: Path) -> None:
    """Say that LESSON and its translation into LANGUAGE agree as they stand."""
    ctx.meta["root"] = root
    _must_exist(lesson, root)
    file = mark_translated(root, lesson, language).relative_to(root).as_posix()
    click.echo(f"{file} is marked. You are told when a text of the lesson changes after this.")


def _must_exist(lesson: str, root: Path) -> None:
    """Refuse a lesson that is not there, naming those that are."""
    known = lesson_ids(root)
    if lesson not in known:
        raise click.BadParameter(
            f"there is no lesson `{lesson}`; there are {', '.join(known)}", param_hint="LESSON"
        )


@main.command()
@root_option
def reference(root: Path) -> None:
    """Write the lesson file's reference page and its JSON Schema anew, after the program changed."""
    for file in write_reference(root):
        click.echo(f"{file.relative_to(root).as_posix()} is written.")


def show(problems: tuple[Problem, ...], root: Path) -> None:
    """Each problem with its line of the file and a mark below the place."""
    console = Console(stderr=True, highlight=False, soft_wrap=True)
    for problem in problems:
        console.print(Text(f"{problem.place}: ", "bold"), Text(problem.what), sep="", end="\n")
        line, before = _line(root / problem.place.path, problem.place)
        if line.strip():
            number = f"{problem.place.line:>5} | "
            console.print(Text(number + line, "dim"))
            console.print(Text(" " * (len(number) + cell_len(before)) + "^", "magenta"))
        if problem.hint:
            console.print(Text(f"        {problem.hint}"))
    must = sum(problem.weight is Weight.MUST for problem in problems)
    if must:
        console.print(f"{must} thing{'s' if must != 1 else ''} to put right. Nothing was written.")


_WIDEST = 160
"""Signs of a line that are shown; of a longer one, those around the place."""


def _line(file: Path, place: Place) -> tuple[str, str]:
    """A line of a file and the part of it before a place; nothing where there is none."""
    try:
        line = file.read_text("utf-8-sig").splitlines()[place.line - 1].replace("\t", " ")
    except (OSError, UnicodeDecodeError, IndexError):
        return "", ""
    start = max(0, place.column - _WIDEST // 2) if len(line) > _WIDEST else 0
    return line[start : start + _WIDEST], line[start : place.column - 1]
