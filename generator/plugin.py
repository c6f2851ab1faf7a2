"""The thin side towards MkDocs: our pages become its files, its Markdown pages wear our theme."""

from __future__ import annotations

import logging
from pathlib import Path
from typing import Literal

from markupsafe import Markup
from mkdocs.commands.build import build as mkdocs_build
from mkdocs.commands.serve import serve as mkdocs_serve
from mkdocs.config import load_config
from mkdocs.config.base import Config
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import PluginError
from mkdocs.plugins import BasePlugin
from mkdocs.structure.files import File, Files
from mkdocs.structure.pages import Page
from mkdocs.structure.toc import get_toc

from generator.build import Built, build, finish, with_problems, write_site
from generator.problems import LessonError, Problem

log = logging.getLogger("mkdocs.plugins.plumline")
FRONT = "index.html"
"""Address of the front page from the site's root; it lists the lessons, with or without a text by hand."""


class NoOptions(Config):  # type: ignore[no-untyped-call]  # MkDocs leaves its hook untyped
    """Everything there is to choose stands in ``site_data/site.yaml``."""


class PlumlinePlugin(BasePlugin[NoOptions]):  # type: ignore[no-untyped-call]  # MkDocs leaves its hook untyped
    """Lessons into pages."""

    def __init__(self) -> None:
        self.own_build = False
        """Whether MkDocs runs for our own command, which shows each problem with its line."""
        self._preview = False
        self._built: Built | None = None
        self._problems: tuple[Problem, ...] = ()
        """What is wrong since the last build that went well; only a preview goes on with it."""

    def on_startup(self, *, command: Literal["build", "gh-deploy", "serve"], dirty: bool) -> None:
        """Remember whether this is a preview; also makes MkDocs keep one plugin for all its builds."""
        self._preview = command == "serve"

    def on_config(self, config: MkDocsConfig) -> MkDocsConfig:
        """Read, compute and render before MkDocs empties the old site, so that a mistake leaves it whole."""
        self._problems = ()
        try:
            self._built = build(Path(config.config_file_path).parent, preview=self._preview)
        except LessonError as error:
            if self.own_build:
                raise
            if not (self._preview and self._built):
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

    def on_files(self, files: Files, *, config: MkDocsConfig) -> Files:
        """Add what was made; the theme's sources stay at home."""
        theme = {Path(folder) for folder in config.theme.dirs}
        for file in [file for file in files if file.src_dir and Path(file.src_dir) in theme]:
            files.remove(file)
        for output in self.built.outputs:
            if theirs := files.get_file_from_path(output.path):
                files.remove(theirs)  # captions of the educator's, published with corrections
            if output.title:
                page = LessonFile.generated(config, output.path, content="")
                LessonPage(output.title, page, config, str(output.content))
                files.append(page)
            else:
                files.append(File.generated(config, output.path, content=output.content))
        # A README.md makes the front page as well as an index.md.
        for folder in self.built.folders.values():
            if not any(file.dest_uri == folder + FRONT for file in files):
                files.append(File.generated(config, f"{folder}index.md", content=""))
        return files

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
        if path == FRONT:
            return self.built.front(language, Markup(html))  # noqa: S704  # the educator's own Markdown
        return self.built.presenters[language].prose(path, str(page.title), html)

    def on_post_build(self, *, config: MkDocsConfig) -> None:
        """Add what is made of the finished pages; a preview, which makes them anew all the time, does without."""
        if not self._preview:
            finish(Path(config.site_dir), self.built)

    @property
    def built(self) -> Built:
        """What was made of the lessons in this run."""
        if self._built is None:
            raise RuntimeError("MkDocs asked for files before its configuration was read")
        return self._built


class LessonFile(File):
    """A page called what it is called on the site, so that Markdown can link to ``soup/index.html``."""

    def is_documentation_page(self) -> bool:
        """MkDocs would take a file for a page by its ``.md``."""
        return True


class LessonPage(Page):
    """A page that needs no Markdown: it holds its HTML from the start."""

    def __init__(self, title: str, file: File, config: MkDocsConfig, html: str) -> None:
        super().__init__(title, file, config)
        self._html = html

    def read_source(self, config: MkDocsConfig) -> None:
        """There is no Markdown to read."""
        self.markdown, self.meta = "", {}

    def render(self, config: MkDocsConfig, files: Files) -> None:
        """Hand over the finished page."""
        self.content, self.toc = self._html, get_toc([])


def build_site(root: Path) -> Path:
    """Build the whole site and put it in the place of the old one; returns its folder.

    Raises:
        LessonError: with every problem; the old site is untouched.
    """

    def write(folder: Path) -> None:
        config = load_config(str(root / "mkdocs.yml"), site_dir=str(folder), strict=True)
        for plugin in config.plugins.values():
            if isinstance(plugin, PlumlinePlugin):
                plugin.own_build = True
        mkdocs_build(config)

    return write_site(root, write)


def preview_site(root: Path, address: str) -> None:
    """Serve the site at ``host:port`` and reload pages when a file changes; ends with Ctrl+C."""
    mkdocs_serve(str(root / "mkdocs.yml"), dev_addr=address)
