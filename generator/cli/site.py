"""The commands ``build`` and ``preview``: the whole site, written or shown."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

import click

from generator.cli import NOTHING_CHANGED
from generator.cli.options import root_option
from generator.write.fresh import is_fresh

if TYPE_CHECKING:  # what the program is made of loads when a site is built
    from generator.steps.by_hand import ByHand
    from generator.steps.site import Site


@click.command()
@click.option("--anew", is_flag=True, help="Make everything anew, whatever was made before.")
@root_option
def build(root: Path, *, anew: bool) -> None:
    """Build the site into the folder site/; a mistake leaves the old site as it was."""
    if not anew and is_fresh(str(root)):
        click.echo(NOTHING_CHANGED, nl=False)
        return
    from generator.build import build as build_site  # noqa: PLC0415  # takes longer to load than to find nothing changed

    questions = build_site(root, partial(_write_by_hand, root), anew=anew)
    if questions:
        from generator.cli.show import show  # noqa: PLC0415  # as above

        show(questions, root)
    click.echo("The site is in site/. Open site/index.html to look at it.")


def _write_by_hand(root: Path, site: Site) -> ByHand:
    """MkDocs is loaded when there is something to render."""
    from generator.plugin import write_by_hand  # noqa: PLC0415  # as the name says

    return write_by_hand(root, site)


@click.command()
@root_option
@click.option(
    "--address",
    default="127.0.0.1:8000",
    show_default=True,
    help="Where the browser finds it, as host:port.",
)
def preview(root: Path, address: str) -> None:
    """Show the site in a browser and renew it whenever a file changes."""
    from generator.plugin import preview_site  # noqa: PLC0415  # as above
    from generator.steps.run import begin  # noqa: PLC0415  # as above

    begin(root, root, preview=True).site()  # a mistake is told in full before the server starts
    click.echo(f"Open http://{address}/ in a browser. Stop with Ctrl+C.")
    preview_site(root, address)
