"""Each word an educator types, where it is carried out, and the one way in which all of them end."""

from __future__ import annotations

import errno
import sys
from importlib import import_module
from pathlib import Path

import click

from generator.cli.refused import sentence
from generator.problems import LessonError

COMMANDS = {
    "check": "lessons:check",
    "build": "site:build",
    "join": "site:join",
    "preview": "site:preview",
    "new": "lessons:new",
    "trace": "lessons:trace_command",
    "foods": "foods:foods",
    "translate": "translations:translate",
    "translated": "translations:translated",
    "rehearse": "recording:rehearse",
    "recorded": "recording:recorded",
    "reference": "lessons:reference",
}
"""Every command in the order it is listed: its module here and its function there.

A module is loaded when its command is asked for; most load half of the program.
"""


class _Commands(click.Group):
    """Ends every command in one way: problems are shown, and the exit code says whether there were any."""

    def make_context(
        self,
        info_name: str | None,
        args: list[str],
        parent: click.Context | None = None,
        **extra: object,
    ) -> click.Context:
        """Help names the program as the guide types it, wherever it was installed."""
        return super().make_context("python3 generator", args, parent, **extra)

    def list_commands(self, ctx: click.Context) -> list[str]:
        return list(COMMANDS)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        if cmd_name not in COMMANDS:
            return None
        module, _, name = COMMANDS[cmd_name].partition(":")
        command = getattr(import_module(f"generator.cli.{module}"), name)
        assert isinstance(command, click.Command)  # noqa: S101  # what COMMANDS promises
        return command

    def invoke(self, ctx: click.Context) -> object:
        try:
            return super().invoke(ctx)
        except LessonError as error:
            from generator.cli.show import show  # noqa: PLC0415  # colours load only when there is something to show

            show(error.problems, Path(ctx.meta.get("root", ".")))
        except OSError as error:
            if error.errno == errno.EPIPE:  # whoever read our lines has had enough
                raise
            click.echo(sentence(error, str(ctx.meta.get("root", "."))), err=True)
        sys.exit(1)


@click.group(cls=_Commands, context_settings={"help_option_names": ["-h", "--help"]})
@click.version_option(package_name="plumline")
def commands() -> None:
    """Home video lessons from plain files: write, check, look, publish."""
