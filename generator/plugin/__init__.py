"""The thin side towards MkDocs: our pages become its files, its Markdown pages wear our theme."""

from __future__ import annotations

import logging
from pathlib import Path
from typing import Literal

from markupsafe import Markup
from mkdocs.commands.build import build as mkdocs_build
from mkdocs.commands.serve import serve as mkdocs_serve
from mkdocs.config.base import Config
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import Abort, PluginError
from mkdocs.plugins import BasePlugin
from mkdocs.structure.files import File, Files
from mkdocs.structure.pages import Page

from generator.author.pages import linked_folders, page_text, with_lists
from generator.build import Built, Worked, build, with_problems, write_site
from generator.plugin.files import FRONT, LessonFile, LessonPage, is_own, with_front_pages
from generator.plugin.said import listening, told
from generator.plugin.settings import load_settings
from generator.plugin.survey import Survey, survey
from generator.problems import LessonError, Problem, Weight

log = logging.getLogger("mkdocs.plugins.plumline")


class NoOptions(Config):  # type: ignore[no-untyped-call]  # MkDocs leaves its hook untyped
    """Everything there is to choose stands in ``site_data/site.yaml``."""


class PlumlinePlugin(BasePlugin[NoOptions]):  # type: ignore[no-untyped-call]  # MkDocs leaves its hook untyped
    """Lessons into pages."""

    def __init__(self) -> None:
        self.own_build = False
        """Whether MkDocs runs for our own command, which shows each problem with its line."""
        self._preview = False
        self._built: Built | None = None
        self._survey = Survey((), frozenset())
        self._problems: tuple[Problem, ...] = ()
        """What is wrong since the last build that went well; only a preview goes on with it."""

    def on_startup(self, *, command: Literal["build", "gh-deploy", "serve"], dirty: bool) -> None:
        """Remember whether this is a preview; also makes MkDocs keep one plugin for all its builds."""
        self._preview = command == "serve"

    def on_config(self, config: MkDocsConfig) -> MkDocsConfig:
        """Read, compute and render before MkDocs empties the old site, so that a mistake leaves it whole."""
        self._problems = ()
        try:
            self._look(config)
        except LessonError as error:
            if self.own_build:
                raise
            links = linked_folders(Path(config.config_file_path).parent)  # MkDocs would follow them
            if links or not (self._preview and self._built):
                raise PluginError(str(error)) from None
            # A preview that stops answering helps nobody: the last good pages say what is wrong.
            self._problems = error.problems
        for problem in self._problems:
            log.warning("%s", problem)
        for question in self.built.worked.questions:
            log.info("%s", question)
        site = self.built.worked.library.site
        config.site_name = site.programme
        config.site_url = config.site_url or site.address or None
        return config

    def _look(self, config: MkDocsConfig) -> None:
        """Make the lessons' pages, and look through those written by hand.

        Raises:
            LessonError: something must be put right; in a preview, nothing but a lesson stops the pages.
        """
        self._built = build(Path(config.config_file_path).parent, preview=self._preview)
        self._survey = survey(config, self._built.worked, preview=self._preview)
        found = self._survey.problems
        if any(problem.weight is Weight.MUST for problem in found):
            raise LessonError(found)

    def on_files(self, files: Files, *, config: MkDocsConfig) -> Files:
        """Add what was made; the theme's sources stay at home, and what nobody meant for the site."""
        theme = {Path(folder) for folder in config.theme.dirs}
        for file in list(files):
            own = is_own(file, config)
            if (own and file.src_uri not in self._survey.published) or (
                file.src_dir and Path(file.src_dir) in theme
            ):
                files.remove(file)
        for output in self.built.outputs:
            if theirs := files.get_file_from_path(output.path):
                files.remove(theirs)  # captions of the educator's, published with corrections
            if output.title:
                page = LessonFile.generated(config, output.path, content="")
                LessonPage(output.title, page, config, output.content.decode())
                files.append(page)
            else:
                files.append(File.generated(config, output.path, content=output.content))
        return with_front_pages(files, config, self.built.folders.values())

    def on_page_read_source(self, *, page: Page, config: MkDocsConfig) -> str | None:
        """The text of a hand-written page, read as every other text of the educator's."""
        if not is_own(page.file, config):
            return None
        text = page_text(Path(config.config_file_path).parent, f"lessons/{page.file.src_uri}")
        if isinstance(text, Problem):
            raise PluginError(str(text))
        return text

    def on_page_content(self, html: str, *, page: Page, config: MkDocsConfig, files: Files) -> str:
        """A hand-written page in our theme; ours is whole already."""
        return with_problems(self._whole(html, page), self._problems)

    def _whole(self, html: str, page: Page) -> str:
        """The page from its doctype to its end."""
        if isinstance(page, LessonPage):
            return html
        folders = self.built.folders
        language = max(
            folders, key=lambda one: page.file.dest_uri.startswith(folders[one]) * len(folders[one])
        )
        path = page.file.dest_uri.removeprefix(folders[language])
        html = with_lists(self.built, html, language)
        if path == FRONT:
            return self.built.front(language, Markup(html))  # noqa: S704  # the educator's own Markdown
        return self.built.presenters[language].prose(path, str(page.title), html)

    @property
    def built(self) -> Built:
        """What was made of the lessons in this run."""
        if self._built is None:
            raise RuntimeError("MkDocs asked for files before its configuration was read")
        return self._built


def build_site(root: Path) -> Path:
    """Build the whole site and put it in the place of the old one; returns its folder.

    Raises:
        LessonError: with every problem; the old site is untouched.
    """
    load_settings(root)  # before a folder is made for the new site

    def write(folder: Path) -> None:
        config = load_settings(root, folder)
        for plugin in config.plugins.values():
            if isinstance(plugin, PlumlinePlugin):
                plugin.own_build = True
        with listening() as said:
            try:
                mkdocs_build(config)
            except Abort:
                raise LessonError(told(root, said)) from None

    return write_site(root, write)


def check_pages(root: Path, worked: Worked) -> tuple[Problem, ...]:
    """What is wrong with the hand-written pages and with ``mkdocs.yml``; nothing is written.

    Raises:
        LessonError: something must be put right.
    """
    problems = survey(load_settings(root), worked, preview=False).problems
    if any(problem.weight is Weight.MUST for problem in problems):
        raise LessonError(problems)
    return problems


def preview_site(root: Path, address: str) -> None:
    """Serve the site at ``host:port`` and reload pages when a file changes; ends with Ctrl+C."""
    mkdocs_serve(str(root / "mkdocs.yml"), dev_addr=address)
