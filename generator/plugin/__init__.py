"""The thin side towards MkDocs: it renders what is written by hand, and knows lessons by their addresses."""

from __future__ import annotations

import logging
from pathlib import Path
from typing import Literal

from mkdocs.commands.build import build as mkdocs_build
from mkdocs.config.base import Config
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import Abort, PluginError
from mkdocs.livereload import LiveReloadServer
from mkdocs.plugins import BasePlugin
from mkdocs.structure.files import Files, InclusionLevel
from mkdocs.structure.pages import Page
from mkdocs.theme import Theme

from generator.author.pages import linked_folders, page_text, what_goes_out
from generator.carried import theme_of
from generator.plugin.band import with_band
from generator.plugin.clean import clean
from generator.plugin.files import is_own, with_front_pages, with_lessons
from generator.plugin.ranges import with_ranges
from generator.plugin.said import listening, told
from generator.plugin.settings import load_settings
from generator.plugin.survey import Survey, survey
from generator.plugin.tasks import OwnTask, Showing, Task, WholeSiteTask
from generator.problems import LessonError, Problem, Weight
from generator.steps.by_hand import ByHand, Output
from generator.steps.scratch import scratch
from generator.steps.site import Site, SiteMap

log = logging.getLogger("mkdocs.plugins.plumline")


class NoOptions(Config):  # type: ignore[no-untyped-call]  # MkDocs leaves its hook untyped
    """Everything there is to choose stands in ``site_data/site.yaml``."""


class PlumlinePlugin(BasePlugin[NoOptions]):  # type: ignore[no-untyped-call]  # MkDocs leaves its hook untyped
    """What MkDocs asks for while it renders, and what becomes of it."""

    def __init__(self) -> None:
        self.own: OwnTask | None = None
        """Set where MkDocs runs for our own command, which shows each problem with its line."""
        self.ours = False
        """Whether a preview is our own command's, for which the same holds."""
        self._preview: Showing | None = None
        """What a preview shows; nothing where this is none."""
        self._task: Task | None = None
        """What MkDocs runs for, or ran for when all was right."""
        self._due: Task | None = None
        """What waits for the end of this run."""
        self._survey = Survey((), frozenset())
        self.problems: tuple[Problem, ...] = ()
        """What is wrong since the last build that went well; only a preview goes on with it."""
        self._pages: list[Output] = []
        """The bodies of the hand-written pages, as they come."""
        self._headed: set[str] = set()
        """Paths of those with a main heading of their own."""
        self._drafts: set[str] = set()
        """Paths of those that ``draft_docs`` keeps in the preview."""
        self._folders = "", ""
        """Where MkDocs would have written, and read."""

    def on_startup(self, *, command: Literal["build", "gh-deploy", "serve"], dirty: bool) -> None:
        """Remember whether this is a preview; also makes MkDocs keep one plugin for all its builds."""
        self._preview = Showing() if command == "serve" else None
        self.own, self.ours = (
            None,
            False,
        )  # one plugin serves every run of a process, and this one MkDocs began

    def on_config(self, config: MkDocsConfig) -> MkDocsConfig:
        """Make the lessons before MkDocs empties a folder, so that a mistake leaves the old site whole."""
        self.problems, self._pages, self._due = (), [], None
        self._headed, self._drafts = set(), set()
        try:
            self._look(config)
        except LessonError as error:
            links = linked_folders(Path(config.config_file_path).parent)  # MkDocs would follow them
            if self.own or links or not (self._preview and self._task):
                if self.own or self.ours:
                    raise
                raise PluginError(str(error)) from None
            # A preview that stops answering helps nobody: the last good pages say what is wrong.
            self.problems = error.problems
        self.problems += self._ready.faults
        for problem in self.problems:
            log.warning("%s", problem)
        for question in self.questions:
            log.info("%s", question)
        site = self._ready.site.library.site
        config.site_name = site.programme
        theme = theme_of(Path(config.config_file_path).parent)
        if (
            theme not in config.theme.dirs
        ):  # a site of its own leaves the pages' looks to the program
            config.theme = Theme(name=None, custom_dir=theme)
        config.site_url = config.site_url or site.address or None
        self._folders = config.site_dir, config.docs_dir
        config.site_dir = str(self._ready.folder)
        if not self._renders:
            config.docs_dir, config.nav = config.site_dir, None  # an empty folder is soon read
        return config

    def _look(self, config: MkDocsConfig) -> None:
        """Make the lessons, and look through the pages written by hand.

        Raises:
            LessonError: something must be put right; in a preview, nothing but a lesson stops the pages.
        """
        root, target = Path(config.config_file_path).parent, Path(config.site_dir)
        self._due = self.own or (
            self._preview.task(root, target) if self._preview else WholeSiteTask(root, target)
        )
        self._task = self._due
        if not self._renders:
            return
        self._survey = survey(config, self._due.site.map, preview=bool(self._preview))
        found = self._survey.problems
        if any(problem.weight is Weight.MUST for problem in found):
            error = LessonError(found)
            self._due.fail(error)
            raise error

    def on_files(self, files: Files, *, config: MkDocsConfig) -> Files:
        """What pages written by hand are made of, and what they may lead to; the rest stays at home."""
        if not self._renders:
            return Files([])
        known, theme = self._ready.site.map, {Path(folder) for folder in config.theme.dirs}
        for file in list(files):
            stays = is_own(file, config) and file.src_uri not in self._survey.published
            if stays or (file.src_dir and Path(file.src_dir) in theme):
                files.remove(file)
        return with_front_pages(with_lessons(files, config, known), config, known.folders.values())

    def on_page_read_source(self, *, page: Page, config: MkDocsConfig) -> str | None:
        """The text of a hand-written page, read as every other text of the educator's."""
        if not is_own(page.file, config):
            return None
        text = page_text(Path(config.config_file_path).parent, f"lessons/{page.file.src_uri}")
        if isinstance(text, Problem):
            raise PluginError(str(text))
        return text

    def on_page_markdown(
        self, markdown: str, *, page: Page, config: MkDocsConfig, files: Files
    ) -> str:
        """A page says nothing above its text but its title: no template, no redirection."""
        page.meta = {name: said for name, said in page.meta.items() if name == "title"}
        return markdown

    def on_page_content(self, html: str, *, page: Page, config: MkDocsConfig, files: Files) -> None:
        """Take the body of a page; it is made whole beside the lessons."""
        self._pages.append(Output(page.file.dest_uri, clean(html).encode(), str(page.title)))
        if any(heading.level == 1 for heading in page.toc):
            self._headed.add(page.file.dest_uri)
        if page.file.inclusion is InclusionLevel.DRAFT:
            self._drafts.add(page.file.dest_uri)

    def on_post_build(self, *, config: MkDocsConfig) -> None:
        """Let the site be made of what was rendered."""
        rendered = Path(config.site_dir)
        config.site_dir, config.docs_dir = self._folders
        if self._due:
            self._due.finish(self._due.by_hand or self._made(rendered))

    def on_build_error(self, *, error: Exception) -> None:
        """Leave the old site as it was."""
        if self._due:
            self._due.fail(error)

    def on_serve(
        self, server: LiveReloadServer, *, config: MkDocsConfig, builder: object
    ) -> LiveReloadServer:
        """Let every page of a preview say what is wrong, and every film be sought in."""
        server.set_app(with_ranges(with_band(server.serve_request, lambda: self.problems)))
        return server

    def on_shutdown(self) -> None:
        """Clear away what a preview has written."""
        if self._preview:
            self._preview.end()

    @property
    def questions(self) -> tuple[Problem, ...]:
        """What the site is shown with and somebody should look at."""
        return (*self._ready.site.questions, *self._survey.problems)

    def _made(self, rendered: Path) -> ByHand:
        paths = {page.path for page in self._pages} | {"sitemap.xml", "sitemap.xml.gz"}
        found = {
            file.relative_to(rendered).as_posix(): file for file in sorted(rendered.rglob("*"))
        }
        files = (
            Output(path, what_goes_out(file))
            for path, file in found.items()
            if file.is_file() and path not in paths
        )
        headed, drafts = frozenset(self._headed), frozenset(self._drafts)
        return ByHand(tuple(self._pages), tuple(files), self._survey.problems, headed, drafts)

    @property
    def _renders(self) -> bool:
        """Whether MkDocs has something to render."""
        return self._due is not None and self._due.by_hand is None

    @property
    def _ready(self) -> Task:
        """What MkDocs runs for."""
        if self._task is None:
            raise RuntimeError("MkDocs asked for files before its configuration was read")
        return self._task


def write_by_hand(root: Path, site: Site) -> ByHand:
    """Have MkDocs render what is written by hand.

    Raises:
        LessonError: with every problem of these pages and of ``mkdocs.yml``.
    """
    load_settings(root)  # before there is a folder to write to
    with scratch(root) as folder:
        config = load_settings(root, folder)
        task = OwnTask(site, folder)
        for plugin in config.plugins.values():
            if isinstance(plugin, PlumlinePlugin):
                plugin.own = task
        with listening() as said:
            try:
                mkdocs_build(config)
            except Abort:
                raise LessonError(told(root, said)) from None
    if task.by_hand is None:
        raise RuntimeError("MkDocs ended without a word")
    return task.by_hand


def check_pages(root: Path, known: SiteMap) -> tuple[Problem, ...]:
    """What is wrong with the hand-written pages and with ``mkdocs.yml``; nothing is written."""
    try:
        return survey(load_settings(root), known, preview=False).problems
    except LessonError as error:
        return error.problems
