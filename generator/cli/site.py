"""The commands ``build`` and ``join``: the whole site, written."""

from __future__ import annotations

import re
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

import click

from generator.cli import NOTHING_CHANGED
from generator.cli.here import TypedPath
from generator.cli.options import root_option
from generator.write.fresh import is_fresh

if TYPE_CHECKING:  # what the program is made of loads when a site is built
    from generator.problems import Problem
    from generator.steps.by_hand import ByHand
    from generator.steps.parts import Part
    from generator.steps.site import Site


def _share(_: click.Context, parameter: click.Parameter, text: str | None) -> Part | None:
    """``3/8`` as the third of eight shares."""
    from generator.steps.parts import Part  # noqa: PLC0415  # loads when a share is asked for

    found = re.fullmatch(r"(\d{1,4})/(\d{1,4})", text or "")
    if text is None:
        return None
    if not found or not 1 <= int(found[1]) <= int(found[2]):
        raise click.BadParameter(f"`{text}` is no share; write it like 3/8", param=parameter)
    return Part(int(found[1]), int(found[2]))


@click.command()
@click.option("--anew", is_flag=True, help="Make everything anew, whatever was made before.")
@click.option("--part", callback=_share, help="Make one share of the lessons only, such as 3/8.")
@root_option
def build(root: Path, part: Part | None, *, anew: bool) -> None:
    """Build the site into the folder site/; a mistake leaves the old site as it was."""
    if part:
        _build_part(root, part)
    elif not anew and is_fresh(str(root)):
        click.echo(NOTHING_CHANGED, nl=False)
    else:
        _build(root, anew=anew)


@click.command()
@click.argument(
    "folders",
    nargs=-1,
    required=True,
    type=TypedPath(exists=True, file_okay=False),
)
@root_option
def join(folders: tuple[Path, ...], root: Path) -> None:
    """Put the shares in FOLDERS, each made with build --part, together into site/."""
    from generator.steps.parts import take_in  # noqa: PLC0415  # as above

    take_in(root, folders)
    _build(root, anew=False)


def _build(root: Path, *, anew: bool) -> None:
    from generator.build import build as build_site  # noqa: PLC0415  # takes longer to load than to find nothing changed

    _show(build_site(root, partial(_write_by_hand, root), anew=anew), root)
    click.echo("The site is in site/. Open site/index.html to look at it.")


def _build_part(root: Path, part: Part) -> None:
    from generator.steps.parts import build_part  # noqa: PLC0415  # as above

    folder, questions = build_part(root, part)
    _show(questions, root)
    click.echo(f"The share is in {folder.name}/. Put all shares together with: join part-*")


def _show(questions: tuple[Problem, ...], root: Path) -> None:
    if questions:
        from generator.cli.show import show  # noqa: PLC0415  # colours load only when there is something to show

        show(questions, root)


def _write_by_hand(root: Path, site: Site) -> ByHand:
    """MkDocs is loaded when there is something to render."""
    from generator.plugin import write_by_hand  # noqa: PLC0415  # as the name says

    return write_by_hand(root, site)
