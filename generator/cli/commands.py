"""Each word an educator types, where it is carried out, and the one way in which all of them end."""

from __future__ import annotations

import errno
import sys
from pathlib import Path

import click

from generator import __version__
from generator.cli.listed import Listed
from generator.cli.refused import sentence
from generator.problems import LessonError

COMMANDS = {
    "start": (
        "own_site:start_command",
        "Begin a site of your own in FOLDER: five questions, each also an option.",
    ),
    "check": (
        "checking:check",
        "Say everything that is wrong with the lessons, or with each LESSON that is named.",
    ),
    "build": (
        "site:build",
        "Build the site into the folder site/; a mistake leaves the old site as it was.",
    ),
    "join": (
        "site:join",
        "Put the shares in FOLDERS, each made with build --part, together into site/.",
    ),
    "publish": (
        "publish:publish",
        "Check, build from nothing, show what changes, ask, and send the site out.",
    ),
    "changes": (
        "changes:changes",
        "Say what differs from what was published last, or from REV: numbers, texts, links, papers, and who must be told.",
    ),
    "preview": (
        "preview:preview",
        "Show the site in a browser and renew it whenever a file changes.",
    ),
    "new": ("lessons:new", "Begin a lesson called TITLE from a filled-in example."),
    "trace": ("lessons:trace_command", "Say where every number of LESSON comes from."),
    "foods": (
        "food_commands:foods",
        "Find foods, and take their figures from the official records.",
    ),
    "translate": (
        "translations:translate",
        "Begin a translation of LESSON into LANGUAGE: a file with every text to fill in.",
    ),
    "translated": (
        "translations:translated",
        "Say that LESSON and its translation into LANGUAGE agree as they stand.",
    ),
    "rehearse": (
        "recording:rehearse",
        "Make a silent video of LESSON from its slides, and a draft of its captions.",
    ),
    "video": (
        "video:video",
        "Make the films of LESSON from FILE, as a camera wrote it; without FILE, from the film it names.",
    ),
    "recorded": (
        "recording:recorded",
        "Keep what the numbers of LESSON were when it was filmed; `check` tells when one changes.",
    ),
    "review": (
        "reviewing:review",
        "Make the sheet by which somebody reads LESSON over, as a PDF file.",
    ),
    "reviewed": (
        "reviewing:reviewed",
        "Keep that LESSON was read as it stands, by whom (a role, never a name), and when.",
    ),
    "papers": (
        "papers:papers",
        "Make the papers of all lessons, or of each LESSON that is named, as PDF files.",
    ),
    "report": (
        "reporting:report",
        "Tell reach and learning of groups from CODES.csv, the files teachers saved from the page for codes.",
    ),
    "update": (
        "own_site:update_command",
        "Move your site to the NEWER program, once that has checked and built it, or --back.",
    ),
    "carry-over": (
        "own_site:carry_over_command",
        "Bring what an older program wrote into today's shape; `update` does it by itself.",
    ),
    "reference": (
        "lessons:reference",
        "Write the lesson file's reference page and its JSON Schema anew, after the program changed.",
    ),
}
"""Every command in the order it is listed: its module here and its function there, and what it is for."""


class _Commands(Listed):
    """Ends every command in one way: problems are shown, and the exit code says whether there were any."""

    table = COMMANDS

    def make_context(
        self,
        info_name: str | None,
        args: list[str],
        parent: click.Context | None = None,
        **extra: object,
    ) -> click.Context:
        """Help names the program as the guide types it, wherever it was installed."""
        return super().make_context("python3 generator", args, parent, **extra)

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
@click.version_option(__version__)
def commands() -> None:
    """Home video lessons from plain files: write, check, look, publish."""
