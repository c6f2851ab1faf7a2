"""The command ``plumline video``: the films of a lesson, made from the file of a camera."""

from __future__ import annotations

import re
from fractions import Fraction
from pathlib import Path

import click

from generator.author.video import MadeFilm, make_video
from generator.cli.here import TypedPath
from generator.cli.options import lesson_argument, root_option

_ABOUT = {
    "file": "the film for the web",
    "smaller": "a smaller one, for homes whose internet is metered",
    "slides": "the slides with its voice, smallest of all",
    "poster": "a still picture, shown before it plays",
}
_MOMENT = re.compile(r"(\d{1,3}):([0-5]\d)(\.\d{1,3})?")


def _moment(ctx: click.Context, parameter: click.Parameter, written: str | None) -> Fraction | None:
    """Seconds of a moment as it was written."""
    if written is None:
        return None
    found = _MOMENT.fullmatch(written)
    if not found:
        what = f"`{written}` is no moment; write minutes and seconds, such as 0:05"
        raise click.BadParameter(what, ctx, parameter)
    return int(found[1]) * 60 + Fraction(found[2] + (found[3] or ""))


@click.command()
@lesson_argument
@click.argument(
    "source",
    metavar="[FILE]",
    required=False,
    type=TypedPath(exists=True, dir_okay=False),
)
@click.option(
    "--poster-at",
    metavar="MOMENT",
    callback=_moment,
    help="The moment of the film that the still picture shows, such as 0:05.",
)
@root_option
def video(lesson: str, source: Path | None, poster_at: Fraction | None, root: Path) -> None:
    """Make the films of LESSON from FILE, as a camera wrote it; without FILE, from the film it names."""
    click.echo(
        "This takes about as long as the film, and can be stopped: nothing is lost.", err=True
    )
    made = make_video(root, lesson, source, poster_at)
    for one in made:
        path = one.file.relative_to(root).as_posix()
        click.echo(f"{path}: {max(float(one.megabytes), 0.1):.1f} MB, {_ABOUT[one.key]}")
    if "slides" not in {one.key for one in made}:
        click.echo(
            "No slides with the voice: that takes a sound, times at the stops, and slides that fit."
        )
    if not all(one.is_named for one in made):
        _say_what_to_write(lesson, made)


def _say_what_to_write(lesson: str, made: tuple[MadeFilm, ...]) -> None:
    click.echo(f"Name them in lessons/{lesson}/lesson.yaml:\n\nvideo:")
    for one in made:
        click.echo(f"  {one.key}: {one.file.name}")
