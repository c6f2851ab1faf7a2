"""The preview: the site as it is now, from the first mistake to the last right page, until it is stopped."""

from __future__ import annotations

import socket
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path
from time import perf_counter
from typing import Protocol

from mkdocs.commands.build import build as mkdocs_build
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import Abort

from generator.author.pages import page_of_problems
from generator.plugin import PlumlinePlugin
from generator.plugin.band import with_band, with_page
from generator.plugin.headers import with_headers
from generator.plugin.ranges import with_ranges
from generator.plugin.said import SETTINGS, listening, told
from generator.plugin.server import PreviewServer
from generator.plugin.settings import load_settings
from generator.problems import LessonError, Problem
from generator.steps.scratch import scratch
from generator.steps.sent_with import preview_headers
from generator.steps.work import site_problems

_PROBLEMS = ".problems.html"
"""Page of the preview's own, in the place of those that could not be made."""


class Telling(Protocol):
    """Whoever types sees in the terminal what became of a change."""

    def right(self, seconds: float, questions: int, *, first: bool, again: bool) -> None:
        """Say that the pages are as the files are.

        Args:
            seconds: that making them took.
            questions: things to look at.
            first: whether there were no pages before.
            again: whether something was wrong before.
        """

    def wrong(self, problems: tuple[Problem, ...], *, made: bool) -> None:
        """Say what is to be put right, and whether there are pages from before."""

    def refused(self, error: OSError) -> Problem:
        """What the machine would not do."""


def preview_site(root: Path, bound: socket.socket, tell: Telling) -> None:
    """Show a site and follow every change, until Ctrl+C.

    Args:
        root: folder of the site.
        bound: listens where the browser will ask.
        tell: hears what becomes of each change.

    Raises:
        LessonError: there is no site here.
        OSError: the machine does not let the pages be kept anywhere.
    """
    if problems := site_problems(root):
        raise LessonError(problems)
    with scratch(root) as folder, listening():
        shown = _Shown(root, folder, bound, tell)
        server = PreviewServer(shown.renew, bound, folder, "/")
        shown.renew()
        for path in shown.watched():
            server.watch(str(path))
        plain = server.serve_request
        pages = with_band(plain, lambda: shown.problems)
        parts = with_ranges(with_page(pages, plain, f"/{_PROBLEMS}", shown.lacks))
        server.set_app(with_headers(parts, preview_headers))
        try:
            with suppress(KeyboardInterrupt):
                server.serve()  # type: ignore[no-untyped-call]  # MkDocs leaves it untyped
        finally:
            server.shutdown()
            shown.end()


class _Shown:
    """What a browser sees, and what is wrong since then."""

    def __init__(self, root: Path, folder: Path, bound: socket.socket, tell: Telling) -> None:
        self.problems: tuple[Problem, ...] = ()
        self.made = False
        """Whether there are pages, of now or of before."""
        self._root, self._folder, self._tell = root, folder, tell
        host, port = bound.getsockname()[:2]
        self._url = f"http://{f'[{host}]' if ':' in host else host}:{port}/"
        self._config: MkDocsConfig | None = None
        self._plugin: PlumlinePlugin | None = None

    def renew(self) -> None:
        """Make what has changed, and tell."""
        began, before = perf_counter(), self.problems
        try:
            self.problems, questions = self._build()
        except LessonError as error:
            self.problems, questions = error.problems, 0
        except OSError as error:
            self.problems, questions = (self._tell.refused(error),), 0
        first, self.made = not self.made, (self._folder / "index.html").exists()
        if self.problems:
            self._tell.wrong(self.problems, made=self.made)
        else:
            took = perf_counter() - began
            self._tell.right(took, questions, first=first, again=bool(before))
        if self.problems:
            with suppress(OSError):  # a full disk was told of just now
                page = page_of_problems(self.problems)
                (self._folder / _PROBLEMS).write_text(page, "utf-8")

    def lacks(self, path: str) -> bool:
        """Whether a page is not there because of what is wrong."""
        name = f"{path}index.html" if path.endswith("/") else path
        return bool(self.problems) and not (self._folder / name.lstrip("/")).is_file()

    def watched(self) -> Iterator[Path]:
        """Everything whose change is a change of the site."""
        named = self._config.watch if self._config else []
        own = [self._root / name for name in ("lessons", "site_data", SETTINGS)]
        every = dict.fromkeys(path.absolute() for path in (*own, *map(Path, named)))
        yield from (path for path in every if path.exists())

    def end(self) -> None:
        """Clear away what was made."""
        if self._config:
            self._config.plugins.on_shutdown()

    def _build(self) -> tuple[tuple[Problem, ...], int]:
        """What is wrong although there are pages, and how many things are to be looked at."""
        config = load_settings(self._root)
        config.site_dir, config.site_url = str(self._folder), self._url
        plugin = self._started(config)
        with listening() as said:
            try:
                mkdocs_build(config, serve_url=self._url)
            except Abort:
                raise LessonError(told(self._root, said)) from None
        return plugin.problems, len(plugin.questions)

    def _started(self, config: MkDocsConfig) -> PlumlinePlugin:
        """Our plugin, which is told once that it serves a preview of ours."""
        if self._plugin is None:
            config.plugins.on_startup(command="serve", dirty=False)
            found = (one for one in config.plugins.values() if isinstance(one, PlumlinePlugin))
            self._plugin = next(found)
            self._plugin.ours = True
        self._config = config
        return self._plugin
