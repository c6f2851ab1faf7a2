"""Looks through the hand-written pages before anything is built: what they lead to, and what is wrong."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from pathlib import Path
from posixpath import dirname, join, normpath
from urllib.parse import unquote, urlsplit

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File, Files, InclusionLevel, get_files, set_exclusions
from mkdocs.structure.nav import get_navigation
from mkdocs.structure.pages import Page

from generator.author.pages import (
    at_home,
    file_problems,
    is_elsewhere,
    is_linked,
    linked_folders,
    page_text,
    words_of_page,
)
from generator.plugin.addresses import PageAddresses, addresses_in
from generator.plugin.clean import clean, left_out
from generator.plugin.files import (
    can_go_out,
    is_own,
    is_page_here,
    with_front_pages,
    with_lessons,
)
from generator.plugin.headings import keep_page_ids_free
from generator.plugin.links import Targets, link_problems
from generator.plugin.said import listening, place_of, told
from generator.problems import LessonError, Place, Problem
from generator.steps.site import SiteMap

_PAGES = "mkdocs.structure.pages"
"""Who speaks of dead links in MkDocs; those are looked for here, in raw HTML too and with their lines."""


@dataclass(frozen=True, slots=True)
class Survey:
    """What is known of the hand-written pages."""

    problems: tuple[Problem, ...]
    published: frozenset[str]
    """Files below ``lessons/`` that MkDocs is given, with forward slashes."""


def survey(config: MkDocsConfig, known: SiteMap, *, preview: bool) -> Survey:
    """Read every hand-written page and follow its links; nothing is written.

    Args:
        config: of MkDocs; its ``validation:`` says how much each kind of link matters.
        known: the lessons that pages may lead to.
        preview: whether drafts are looked at as well.
    """
    root = Path(config.config_file_path).parent
    if linked := linked_folders(root):
        raise LessonError(linked)  # MkDocs would follow them
    keep_page_ids_free(config)
    with listening() as said:
        there = get_files(config)
        files = _files(root, there, config, known)
        get_navigation(files, config)
        shown = [file for file in files if _is_shown(file, preview=preview)]
        pages = dict(_pages(root, shown, files, config))
    read = {file: page for file, page in pages.items() if isinstance(page, PageAddresses)}
    published = _published(files, read, config, known)
    problems = told(root, (record for record in said if record.name != _PAGES))
    problems += [page for page in pages.values() if isinstance(page, Problem)]
    targets = Targets(
        pages={file.dest_uri: frozenset(page.ids) for file, page in read.items()},
        lessons=known.lessons,
        files=frozenset(file.dest_uri for file in shown),
        sources=frozenset(file.src_uri for file in shown),
        drafts=frozenset(known.unmade.drafts),
        broken=known.unmade.broken,
        kept=frozenset(file.src_uri for file in there if file.src_uri not in files.src_uris),
    )
    problems += [problem for page in read.values() for problem in page.left_out]
    for file, page in read.items():
        problems += link_problems(root, file, page, targets, config)
        problems += words_of_page(root, f"lessons/{file.src_uri}", known)
    by_hand = (path for path in sorted(published - known.media) if not path.endswith(".md"))
    problems += [one for path in by_hand for one in file_problems(root, f"lessons/{path}")]
    problems += at_home(root, published, known)
    return Survey(tuple(problems), published)


def _published(
    files: Files, read: Mapping[File, PageAddresses], config: MkDocsConfig, known: SiteMap
) -> frozenset[str]:
    """The educator's files that go out: pages, what a page leads to, and what a lesson names."""
    named = {
        normpath(join(dirname(page.dest_uri), unquote(urlsplit(lead.url).path)))
        for page, found in read.items()
        for lead in found.leads
        if not is_elsewhere(lead.url)
    }
    by_hand = frozenset(
        file.src_uri
        for file in files
        if is_own(file, config) and (file.is_documentation_page() or file.dest_uri in named)
    )
    return by_hand | known.media


def _files(root: Path, there: Files, config: MkDocsConfig, known: SiteMap) -> Files:
    """The site's files as MkDocs will know them, and all that a page might show; lessons by their addresses."""
    places = known.folders.values()
    files = Files(
        file
        for file in there
        if (is_page_here(file, places) or can_go_out(file))
        and not is_linked(root, f"lessons/{file.src_uri}")
    )
    files = with_front_pages(with_lessons(files, config, known), config, places)
    set_exclusions(files, config)
    return files


def _is_shown(file: File, *, preview: bool) -> bool:
    lowest = InclusionLevel.DRAFT if preview else InclusionLevel.NOT_IN_NAV
    return bool(file.inclusion.value >= lowest.value)


def _pages(
    root: Path, shown: list[File], files: Files, config: MkDocsConfig
) -> Iterator[tuple[File, PageAddresses | Problem]]:
    """Each hand-written page with what stands in it, or why it cannot be read."""
    for file in shown:
        if not (is_own(file, config) and file.is_documentation_page()):
            continue
        text = page_text(root, f"lessons/{file.src_uri}")
        if isinstance(text, Problem):
            yield file, text
            continue
        page = file.page or Page(None, file, config)
        page.read_source(config)
        try:
            page.render(config, files)
        except ValueError:  # of `urlsplit`, for a host in brackets that never close
            place = place_of(root, f"lessons/{file.src_uri}", "//[")
            yield file, Problem(place, "an address on this page cannot be read", "correct it")
        except RecursionError:
            place = Place(f"lessons/{file.src_uri}")
            yield file, Problem(place, "lists stand inside one another far too deep", "indent less")
        else:
            html = page.content or ""
            yield (
                file,
                replace(
                    addresses_in(clean(html)),
                    left_out=left_out(root, f"lessons/{file.src_uri}", html),
                ),
            )
