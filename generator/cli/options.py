"""What several commands ask for: the folder of the site, and a lesson in it."""

from __future__ import annotations

from pathlib import Path

import click


def _keep(ctx: click.Context, _: click.Parameter, root: Path) -> Path:
    """Remember the folder, so that problems can be shown with their lines."""
    ctx.meta["root"] = root
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
    """Refuse a lesson that is not there, naming those that are."""
    from generator.steps.work import lesson_ids  # noqa: PLC0415  # `build` needs the folder and no lesson

    known = lesson_ids(ctx.meta["root"])
    if lesson not in known:
        there = f"there are {', '.join(known)}" if known else "there is none yet"
        raise click.BadParameter(f"there is no lesson `{lesson}`; {there}", param=parameter)
    return lesson


lesson_argument = click.argument("lesson", callback=_known)
