"""Addresses of the headings of hand-written pages, which leave the page's own ids free."""

from __future__ import annotations

from collections.abc import Callable

from markdown.extensions.toc import slugify  # type: ignore[import-untyped]  # Markdown has no types
from mkdocs.config.defaults import MkDocsConfig

from generator.author.pages import PAGE_IDS


def keep_page_ids_free(config: MkDocsConfig) -> None:
    """Let a heading such as *Main* be called ``section-main``, since ``main`` is where the page's text begins.

    Two elements of one id would send the link past the navigation, or a link to the heading, to the other.
    """
    settings = config.mdx_configs.setdefault("toc", {})
    settings["slugify"] = _apart(settings.get("slugify", slugify))


def _apart(named: Callable[[str, str], str]) -> Callable[[str, str], str]:
    def name(heading: str, separator: str) -> str:
        made = named(heading, separator)
        return f"section{separator}{made}" if made in PAGE_IDS else made

    return name
