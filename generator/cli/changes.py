"""The command ``changes``: what differs from a revision, or from what was published last."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import click

from generator.cli.options import root_option
from generator.publish.changes import changes_since
from generator.publish.changes_written import as_json, as_markdown, as_text
from generator.publish.revision import NoStateError

if TYPE_CHECKING:
    from generator.steps.by_hand import ByHand
    from generator.steps.site import Site


@click.command()
@click.argument("revision", metavar="[REV]", required=False)
@click.option("--all", "everything", is_flag=True, help="Leave nothing out for its length.")
@click.option(
    "--format",
    "shape",
    type=click.Choice(("text", "markdown", "json")),
    default="text",
    help="Text to read, Markdown for a pull request, or JSON for another program.",
)
@root_option
def changes(revision: str | None, shape: str, root: Path, *, everything: bool) -> None:
    """Say what differs from what was published last, or from REV: numbers, texts, links, papers, and who must be told."""
    try:
        compared = changes_since(root, revision, _write_by_hand)
    except NoStateError as error:
        raise click.ClickException(str(error)) from None
    match shape:
        case "json":
            click.echo(as_json(compared))
        case "markdown":
            click.echo(as_markdown(compared, everything=everything))
        case _:
            click.echo(as_text(compared, everything=everything))


def _write_by_hand(root: Path, site: Site) -> ByHand:
    """MkDocs is loaded when there is something to render."""
    from generator.plugin import write_by_hand  # noqa: PLC0415  # as the name says

    return write_by_hand(root, site)
