"""The commands ``plumline rehearse`` and ``plumline recorded``: what is made for filming, and kept of it."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

import click

from generator.build import lesson_ids

_root = click.option(
    "--root",
    type=click.Path(exists=True, file_okay=False, path_type=Path),
    default=".",
    help="Folder of the site, the one that holds lessons/. Here, unless you say otherwise.",
)


@click.command()
@click.argument("lesson")
@_root
@click.pass_context
def rehearse(ctx: click.Context, lesson: str, root: Path) -> None:
    """Make a silent video of LESSON from its slides, and a draft of its captions."""
    from generator.build_recording import rehearse as make  # noqa: PLC0415  # drawing slides takes a while to load

    ctx.meta["root"] = root
    made = make(root, _known(root, lesson))
    video, captions = (file.relative_to(root).as_posix() for file in (made.video, made.captions))
    length = f"{made.seconds // 60}:{made.seconds % 60:02}"
    kept = "is the draft of its captions" if made.drafted else "was edited, so it stays as it is"
    click.echo(f"{video} is made, {length} long, and {captions} {kept}.")
    if made.recorded:
        click.echo(
            f"The film it takes the place of was on record. Renew that: plumline recorded {lesson}"
        )


@click.command()
@click.argument("lesson")
@click.option(
    "--on",
    type=click.DateTime(["%Y-%m-%d"]),
    help="The day of filming, such as 2026-03-14. Today, unless you say otherwise.",
)
@_root
@click.pass_context
def recorded(ctx: click.Context, lesson: str, on: datetime | None, root: Path) -> None:
    """Keep what the numbers of LESSON were when it was filmed; `check` tells when one changes."""
    from generator.build_recording import record  # noqa: PLC0415  # drawing slides takes a while to load

    ctx.meta["root"] = root
    day = (on or datetime.now(UTC).astimezone()).date().isoformat()
    made = record(root, _known(root, lesson), day)
    file = made.file.relative_to(root).as_posix()
    numbers = f"{made.figures} number{'s'[: made.figures != 1]}"
    click.echo(f"{file} keeps {numbers} as filmed on {day}.")


def _known(root: Path, lesson: str) -> str:
    """The lesson's id, where there is such a lesson."""
    known = lesson_ids(root)
    if lesson not in known:
        raise click.BadParameter(
            f"there is no lesson `{lesson}`; there are {', '.join(known)}", param_hint="LESSON"
        )
    return lesson
