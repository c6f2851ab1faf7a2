"""What several commands ask for: the folder of the site, and a lesson in it."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import suppress
from datetime import UTC, date, datetime
from pathlib import Path

import click

from generator.cli.here import here
from generator.problems import LessonError


def _keep(ctx: click.Context, _: click.Parameter, root: Path) -> Path:
    """Remember the folder, so that problems can be shown with their lines.

    Raises:
        LessonError: it is not that of a site, in which no command has anything to do.
    """
    ctx.meta["root"] = root
    if not ctx.resilient_parsing and not (root / "lessons").exists():
        from generator.steps.work import site_problems  # noqa: PLC0415  # loads when there may be something wrong

        if problems := site_problems(root):
            raise LessonError(problems)
    return root


root_option = click.option(
    "--root",
    type=click.Path(exists=True, file_okay=False, path_type=Path),
    default=".",
    is_eager=True,
    callback=_keep,
    help="Folder of the site, the one that holds lessons/. Here, unless you say otherwise.",
)


def _known(ctx: click.Context, parameter: click.Parameter, lesson: str) -> str:
    """The lesson's folder by its name or by a path; refuses one that is not there, naming those that are."""
    from generator.steps.work import lesson_ids  # noqa: PLC0415  # `build` needs the folder and no lesson

    root: Path = ctx.meta["root"]
    known = lesson_ids(root)
    if found := next((name for name in _meant(root, lesson) if name in known), None):
        return found
    there = f"there are {', '.join(known)}" if known else "there is none yet"
    raise click.BadParameter(f"there is no lesson `{lesson}`; {there}", param=parameter)


def _all_known(
    ctx: click.Context, parameter: click.Parameter, lessons: tuple[str, ...]
) -> tuple[str, ...]:
    return tuple(dict.fromkeys(_known(ctx, parameter, lesson) for lesson in lessons))


def _meant(root: Path, lesson: str) -> Iterator[str]:
    """What a lesson may be called by a word: its folder's name; a path to it or into it, from here or from the site."""
    yield lesson.rstrip("/\\")
    above = (root / "lessons").resolve()
    for start in (here(), root):
        with suppress(OSError, ValueError):  # of names that no disk can hold
            path = (start / lesson).resolve()
            if path.is_relative_to(above) and path != above:
                yield path.relative_to(above).parts[0]


def day(ctx: click.Context, parameter: click.Parameter, written: str | None) -> str:
    """A day as it was written, or today; none that is still to come."""
    today = datetime.now(UTC).astimezone().date()
    try:
        found = date.fromisoformat(written) if written else today
    except ValueError:
        what = f"`{written}` is no day; write year, month and day, such as 2026-03-14"
        raise click.BadParameter(what, ctx, parameter) from None
    if found > today:
        what = (
            f"{found} is still to come; write the day on which it was done, {today} at the latest"
        )
        raise click.BadParameter(what, ctx, parameter)
    return found.isoformat()


lesson_argument = click.argument("lesson", callback=_known)
lessons_argument = click.argument("lessons", metavar="[LESSON]...", nargs=-1, callback=_all_known)
