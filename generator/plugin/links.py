"""Links and pictures of hand-written pages that lead nowhere, each with its line."""

from __future__ import annotations

import logging
from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from pathlib import Path
from posixpath import dirname, join, normpath, relpath, splitext
from urllib.parse import unquote, urlsplit

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File

from generator.plugin.addresses import Address, PageAddresses
from generator.problems import Place, Problem, Weight


@dataclass(frozen=True, slots=True)
class Targets:
    """Everything a link can lead to, by its path on the site."""

    pages: Mapping[str, frozenset[str]]
    """Hand-written pages with the ids in them."""
    lessons: Mapping[str, frozenset[str] | None]
    """Pages of lessons; where stops have addresses in one, their ids."""
    files: frozenset[str]
    """All files, pages included."""
    sources: frozenset[str]
    """What an educator calls them: paths below ``lessons/``."""
    drafts: frozenset[str]
    """Folders of lessons that are drafts."""
    broken: frozenset[str]
    """Folders of lessons that have no pages until something in them is put right; that is told there."""
    kept: frozenset[str]
    """Files that are there, by the same paths, and of a kind or in a place that does not go out."""


@dataclass(frozen=True, slots=True)
class _Fault:
    """What is wrong with one address."""

    level: int
    """What ``validation:`` says of its kind, as a level of logging."""
    what: str
    hint: str


def link_problems(
    root: Path, file: File, page: PageAddresses, targets: Targets, config: MkDocsConfig
) -> Iterator[Problem]:
    """What is wrong with the links of one page, as far as ``validation:`` wants to know."""
    path = f"lessons/{file.src_uri}"
    text = (root / path).read_text("utf-8-sig", errors="replace")
    seen: Counter[str] = Counter()
    for found in page.leads:
        lead = Address(found.tag, found.url, _written(found.url, text))
        fault = _fault(lead, file, targets, config)
        if fault and fault.level >= logging.INFO:
            weight = Weight.MUST if fault.level >= logging.WARNING else Weight.QUESTION
            place = _place(path, text, lead.written, seen[lead.written])
            seen[lead.written] += 1
            yield Problem(place, fault.what, fault.hint, weight)


def _fault(lead: Address, file: File, targets: Targets, config: MkDocsConfig) -> _Fault | None:
    """The first thing wrong with an address; nothing for one of another site."""
    levels, url, said = config.validation.links, lead.url, lead.written
    try:
        parts = urlsplit(url)
    except ValueError:
        return _Fault(levels.not_found, f"`{said}` is no address", "correct it")
    if parts.scheme or parts.netloc:
        return None
    path = unquote(parts.path)
    if path.startswith(("/", "\\")):
        what = f"the link `{said}` begins at the root of the server, where this site may not stand"
        return _Fault(levels.absolute_links, what, "write it as seen from this page")
    target = normpath(join(dirname(file.dest_uri), path)) if path else file.dest_uri
    if target not in targets.files:
        names = set(target.split("/")[:2])
        if names & targets.broken:
            return None
        if draft := next(iter(names & targets.drafts), ""):
            what = f"the link `{said}` leads to the lesson `{draft}`, a draft that is not published"
            return _Fault(levels.not_found, what, _UNTIL)
        level = levels.not_found if splitext(path)[1] else levels.unrecognized_links
        return _Fault(level, _nowhere(lead), _meant(path, file, targets))
    if parts.fragment and not _has(target, unquote(parts.fragment), targets):
        what = f"the link `{said}` leads to a place on its page that is not there"
        return _Fault(levels.anchors, what, "correct what stands after `#`, or take it out")
    return None


_UNTIL = "take the link out until it is, or take `draft: true` out of the lesson"


def _nowhere(lead: Address) -> str:
    kind = "picture" if lead.tag == "img" else "link"
    return f"the {kind} `{lead.written}` leads to no page and no file of the site"


def _meant(path: str, file: File, targets: Targets) -> str:
    """The page or file whose name is nearest, as seen from this page."""
    here = dirname(file.src_uri) or "."
    if normpath(join(here, path)) in targets.kept:
        return "it is there and stays at home: only pages, pictures, videos and documents go out"
    known = {relpath(source, here): source for source in targets.sources}
    near = get_close_matches(path, known, n=1, cutoff=0.6)
    return f"did you mean `{near[0]}`?" if near else "correct it, or take it out"


def _has(target: str, fragment: str, targets: Targets) -> bool:
    """Whether a page has an id; a lesson has those of its stops, and what is inside them begins so."""
    if target in targets.pages:
        return fragment in targets.pages[target]
    stops = targets.lessons.get(target)
    return stops is None or any(
        fragment == stop or fragment.startswith(f"{stop}-") for stop in stops
    )


def _written(url: str, text: str) -> str:
    """An address as its page's text has it: MkDocs turns ``care.md`` into ``care.html``."""
    spelled = (url, unquote(url), url.replace(".html", ".md", 1), url[url.find("#") :])
    return next((one for one in spelled if one in text), url)


def _place(path: str, text: str, written: str, number: int) -> Place:
    """Where an address stands for the so-manieth time; its page where it is written otherwise."""
    at = -1
    for _ in range(number + 1):
        found = text.find(written, at + 1)
        at = found if found >= 0 else at
    if at < 0:
        return Place(path)
    return Place(path, text.count("\n", 0, at) + 1, at - text.rfind("\n", 0, at))
