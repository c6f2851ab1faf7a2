"""Everything on a site that is written by hand: pages in Markdown, and the files they show."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from pydantic import TypeAdapter

from generator.engine.pack import DamagedPackError, Fact
from generator.engine.store import Store
from generator.present.output import Output
from generator.problems import Problem

__all__ = ["ByHand", "Output", "keep_by_hand", "kept_by_hand"]


@dataclass(frozen=True, slots=True)
class ByHand:
    """What MkDocs made of it."""

    pages: tuple[Output, ...]
    """Each with its title; it holds the body of the page, in the order of the navigation."""
    files: tuple[Output, ...]
    """Pictures and whatever else is published as it was written."""
    questions: tuple[Problem, ...] = ()
    """Problems these pages are published with."""
    headed: frozenset[str] = frozenset()
    """Paths of the pages that have a main heading of their own."""
    drafts: frozenset[str] = frozenset()
    """Paths of the pages that only a preview shows."""


@dataclass(frozen=True, slots=True)
class _Facts:
    titles: dict[str, str]
    """Of every page, by its path from the site's root."""
    questions: tuple[Problem, ...]
    headed: frozenset[str]
    drafts: frozenset[str]


def keep_by_hand(store: Store, key: str, made: ByHand) -> None:
    """Keep what was made under a key, and forget what was made before."""
    titles = {page.path: page.title for page in made.pages}
    facts = _Facts(titles, made.questions, made.headed, made.drafts)
    told: dict[str, Fact] = _adapter().dump_python(facts, mode="json")
    outputs = ((output.path, output.content) for output in (*made.pages, *made.files))
    store.keep(key, told, outputs)
    store.sweep([key], spare=4)


def kept_by_hand(store: Store, key: str) -> ByHand | None:
    """What was made under a key; nothing where it is not kept, or damaged."""
    pack = store.find(key)
    if pack is None:
        return None
    try:
        facts = _adapter().validate_python(pack.facts)
        outputs = [
            Output(entry.path, content, facts.titles.get(entry.path, ""))
            for entry, content in pack.contents()
        ]
    except (DamagedPackError, ValueError):
        return None
    return ByHand(
        tuple(output for output in outputs if output.path in facts.titles),
        tuple(output for output in outputs if output.path not in facts.titles),
        facts.questions,
        facts.headed,
        facts.drafts,
    )


@cache
def _adapter() -> TypeAdapter[_Facts]:
    return TypeAdapter(_Facts)
