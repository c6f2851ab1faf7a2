"""A group of commands that proposes the one that was meant."""

from __future__ import annotations

from difflib import get_close_matches

import click


class Proposing(click.Group):
    """Names the nearest command where there is none of the name that was typed."""

    def resolve_command(
        self, ctx: click.Context, args: list[str]
    ) -> tuple[str | None, click.Command | None, list[str]]:
        try:
            return super().resolve_command(ctx, args)
        except click.UsageError as error:
            near = get_close_matches(args[0].lower(), self.list_commands(ctx), n=1, cutoff=0.6)
            if not near:
                raise
            what = f"there is no command `{args[0]}`; did you mean `{near[0]}`?"
            raise click.UsageError(what, error.ctx) from None
