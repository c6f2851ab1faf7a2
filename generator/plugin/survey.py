"""Looks through the hand-written pages before anything is built: what they lead to, and what is wrong."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File, Files, InclusionLevel, get_files, set_exclusions
from mkdocs.structure.nav import get_navigation
from mkdocs.structure.pages import Page

from generator.author.pages import addresses, folders, languages_off, page_text
from generator.build import Worked
from generator.plugin.addresses import PageAddresses, addresses_in
from generator.plugin.files import LessonFile, is_own, is_page_here, with_front_pages
from generator.plugin.links import Targets, link_problems
from generator.plugin.said import listening, place_of, told
from generator.problems import Place, Problem, Weight

_PAGES = "mkdocs.structure.pages"
"""Who speaks of dead links in MkDocs; those are looked for here, in raw HTML too and with their lines."""


@dataclass(frozen=True, slots=True)
class Survey:
    """What is known of the hand-written pages."""

    problems: tuple[Problem, ...]
    published: frozenset[str]
    """Files below ``lessons/`` that MkDocs is given, with forward slashes."""


def survey(config: MkDocsConfig, worked: Worked, *, preview: bool) -> Survey:
    """Read every hand-written page and follow its links; nothing is written.

    Args:
        config: of MkDocs; its ``validation:`` says how much each kind of link matters.
        worked: the lessons that pages may lead to.
        preview: whether drafts are looked at as well.
    """
    root = Path(config.config_file_path).parent
    with listening() as said:
        files = _files(config, worked)
        get_navigation(files, config)
        shown = [file for file in files if _is_shown(file, preview=preview)]
        pages = dict(_pages(root, shown, files, config))
    problems = told(root, (record for record in said if record.name != _PAGES))
    read = {file: page for file, page in pages.items() if isinstance(page, PageAddresses)}
    problems += [page for page in pages.values() if isinstance(page, Problem)]
    targets = Targets(
        pages={file.dest_uri: frozenset(page.ids) for file, page in read.items()},
        lessons=addresses(worked),
        files=frozenset(file.dest_uri for file in shown),
        sources=frozenset(file.src_uri for file in shown),
    )
    for file, page in read.items():
        problems += link_problems(root, file, page, targets, config)
    problems += _left_out(config, worked)
    published = frozenset(file.src_uri for file in files if is_own(file, config))
    return Survey(tuple(problems), published)


def _files(config: MkDocsConfig, worked: Worked) -> Files:
    """The site's files as MkDocs will know them; lessons by their addresses alone."""
    places = folders(worked).values()
    found = get_files(config)
    files = Files(
        file for file in found if not file.is_documentation_page() or is_page_here(file, places)
    )
    for address in addresses(worked):
        if theirs := files.get_file_from_path(address):
            files.remove(theirs)
        files.append(LessonFile(address, None, config.site_dir, config.use_directory_urls))
    set_exclusions(with_front_pages(files, config, places), config)
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
        else:
            yield file, addresses_in(page.content or "")


def _left_out(config: MkDocsConfig, worked: Worked) -> Iterator[Problem]:
    """Folders with pages of a language that the site does not have."""
    lessons = Path(config.docs_dir)
    names = sorted(folder.name for folder in lessons.iterdir() if any(folder.glob("*.md")))
    for language in languages_off(names, worked):
        what = f"the pages in lessons/{language}/ are not published"
        first = language == worked.library.site.languages[0]
        hint = (
            "pages of the first language stand in lessons/ itself; move them there"
            if first
            else f"add `{language}` to `languages:` in site_data/site.yaml if they should be"
        )
        yield Problem(Place(f"lessons/{language}"), what, hint, Weight.QUESTION)
