"""The commands ``build`` and ``preview``: the whole site, written or shown."""

from __future__ import annotations

from pathlib import Path

import click

from generator.cli import NOTHING_CHANGED
from generator.cli.options import root_option
from generator.write.fresh import is_fresh


@click.command()
@click.option("--anew", is_flag=True, help="Build even when nothing has changed.")
@root_option
def build(root: Path, *, anew: bool) -> None:
    """Build the site into the folder site/; a mistake leaves the old site as it was."""
    if not anew and is_fresh(str(root)):
        click.echo(NOTHING_CHANGED, nl=False)
        return
    from generator.plugin import build_site  # noqa: PLC0415  # MkDocs takes longer to load than to find nothing changed

    folder = build_site(root)
    click.echo(f"The site is in {folder.name}/. Open {folder.name}/index.html to look at it.")


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
    from generator.build import work  # noqa: PLC0415  # as above
    from generator.plugin import preview_site  # noqa: PLC0415  # as above

    work(root)  # a mistake is told in full before the server starts
    click.echo(f"Open http://{address}/ in a browser. Stop with Ctrl+C.")
    preview_site(root, address)
