"""The commands ``plumline rehearse`` and ``plumline recorded``: what is made for filming, and kept of it."""

from __future__ import annotations

from pathlib import Path

import click

from generator.author.recording import record
from generator.author.recording import rehearse as make
from generator.cli.options import day, lesson_argument, root_option


@click.command()
@lesson_argument
@root_option
def rehearse(lesson: str, root: Path) -> None:
    """Make a silent video of LESSON from its slides, and a draft of its captions."""
    made = make(root, lesson)
    video, captions = (file.relative_to(root).as_posix() for file in (made.video, made.captions))
    length = f"{made.seconds // 60}:{made.seconds % 60:02}"
    kept = "is the draft of its captions" if made.drafted else "was edited, so it stays as it is"
    click.echo(f"{video} is made, {length} long, and {captions} {kept}.")
    if not made.named:
        language = made.captions.name.split(".")[-2]
        click.echo(
            f"Name them in lessons/{lesson}/lesson.yaml, so that the preview shows them:\n\nvideo:\n"
            f"  file: {made.video.name}\n  captions: {{{language}: {made.captions.name}}}"
        )
    if made.recorded:
        click.echo(
            f"The film it takes the place of was on record. Renew that: python3 generator recorded {lesson}"
        )


@click.command()
@lesson_argument
@click.option(
    "--on",
    metavar="DAY",
    callback=day,
    help="The day of filming, such as 2026-03-14. Today, unless you say otherwise.",
)
@root_option
def recorded(lesson: str, on: str, root: Path) -> None:
    """Keep what the numbers of LESSON were when it was filmed; `check` tells when one changes."""
    made = record(root, lesson, on)
    file = made.file.relative_to(root).as_posix()
    numbers = f"{made.figures} number{'s'[: made.figures != 1]}"
    click.echo(f"{file} keeps {numbers} as filmed on {on}.")
