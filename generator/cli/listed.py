"""A group of commands that is listed from a table and loads a command only when it is asked for."""

from __future__ import annotations

from collections.abc import Mapping
from importlib import import_module
from typing import ClassVar

import click

from generator.cli.proposing import Proposing


class Listed(Proposing):
    """Most commands load half of the program; to list them loads none of it."""

    table: ClassVar[Mapping[str, tuple[str, str]]]
    """Every command in the order it is listed: its module of this folder and its function there,
    and what it is for."""

    def list_commands(self, ctx: click.Context) -> list[str]:
        return list(self.table)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        if cmd_name not in self.table:
            return None
        module, _, name = self.table[cmd_name][0].partition(":")
        command = getattr(import_module(f"generator.cli.{module}"), name)
        assert isinstance(command, click.Command)  # noqa: S101  # what the table promises
        return command

    def format_commands(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:
        """The list of commands, for which none of them is loaded."""
        with formatter.section("Commands"):
            formatter.write_dl([(name, says) for name, (_, says) in self.table.items()])
