"""The command ``publish``: the site sent out, or its last publication taken back."""

from __future__ import annotations

import sys
from functools import partial
from pathlib import Path

import click

from generator.cli.checking import found
from generator.cli.options import root_option
from generator.cli.show import show
from generator.plugin import write_by_hand
from generator.problems import LessonError, Problem, Weight
from generator.publish.changes import changes_since
from generator.publish.changes_written import as_text
from generator.publish.from_nothing import build_from_nothing
from generator.publish.going_out import Steps
from generator.publish.publishing import publish as publish_site
from generator.publish.publishing import take_back
from generator.publish.refused import NotPublishedError
from generator.publish.revision import NoStateError
from generator.publish.talk import Talk


@click.command()
@click.option("--note", default="", help="What you say of this publication; it is kept with it.")
@click.option("--yes", is_flag=True, help="Say yes to what is asked, for scripts.")
@click.option("--undo", is_flag=True, help="Put back what stood before the last publication.")
@root_option
def publish(root: Path, note: str, *, yes: bool, undo: bool) -> None:
    """Check, build from nothing, show what changes, ask, and send the site out.

    Goes by git to your forge, or where `publish:` in site_data/site.yaml says. Nothing is ever
    forced: what others sent, what you have not committed and your branch stay as they are.
    """
    root = root.resolve()
    steps = Steps(
        check=partial(_check, root),
        build=lambda: build_from_nothing(root, partial(write_by_hand, root), _no_word),
        changes=partial(_changes, root),
    )
    do = take_back if undo else publish_site
    try:
        do(root, steps, note, Talk(_tell, _yes if yes else _ask))
    except NotPublishedError as error:
        raise click.ClickException(str(error)) from None


def _check(root: Path) -> None:
    """Say everything; stop where something must be put right.

    Raises:
        LessonError: with all of that.
    """
    click.echo("Checking, then building everything anew: a moment.")
    _, problems = found(root, ())
    if any(one.weight is Weight.MUST for one in problems):
        raise LessonError(problems)
    show(problems, root)


def _changes(root: Path, revision: str) -> str:
    """What changed by meaning; nothing where there is no such state, or today's program can make none of it."""
    try:
        return as_text(changes_since(root, revision or None, write_by_hand), everything=False)
    except NoStateError:
        return ""


def _no_word(_: tuple[Problem, ...]) -> None:
    """What a build asks about was told when it was checked."""


def _tell(said: str) -> None:
    if said:
        click.echo(said.strip("\n"))


def _yes(question: str) -> bool:
    click.echo(f"{question} Yes.")
    return True


def _ask(question: str) -> bool:
    """The answer of whoever is there.

    Raises:
        NotPublishedError: nobody is.
    """
    try:
        return click.confirm(question, default=False)
    except click.Abort:
        if sys.stdin.isatty():
            raise
        what = "nobody is here to answer, and nothing was published"
        raise NotPublishedError(what, "in a script say --yes as well") from None
