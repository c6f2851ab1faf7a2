"""Where ``formerly:`` of ``site_data/site.yaml`` leads: from an address that is free, to one that is there."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from difflib import get_close_matches

from generator.model.library import Library
from generator.model.site import PAGE
from generator.problems import Place, Problem

_AT = Place("site_data/site.yaml")


def former_pages_lead_on(
    library: Library, lessons: Collection[str], pages: Collection[str], claimed: Collection[str]
) -> Iterator[Problem]:
    """Each line that could lead to two pages, or to none; such a site cannot be built.

    Args:
        library: of the site.
        lessons: names of the lessons' folders, drafts among them.
        pages: every other page of the site's first language, by its path.
        claimed: names that lessons say they had.
    """
    there = {*lessons, *pages}
    for old, new in library.site.formerly.items():
        place = library.places.get(("formerly", old), _AT)
        if old in there:
            kind = "page" if old.endswith(PAGE) else "lesson"
            what = f"`{old}` is a {kind} of the site, so its address leads to itself"
            yield Problem(place, what, "take it out of `formerly:`")
        elif old in claimed:
            what = f"a lesson lists `{old}` under its own `formerly:`"
            yield Problem(place, what, "take it out of one of them")
        elif new and new.partition("#")[0] not in there:
            yield Problem(place, f"there is no `{new}` on the site to lead to", _near(new, there))


def _near(new: str, there: Collection[str]) -> str:
    """The page that may be meant."""
    near = get_close_matches(new, sorted(there), n=1)
    if near:
        return f"did you mean `{near[0]}`?"
    return (
        "name a page such as `teachers.html`, the folder of a lesson, or nothing for what is gone"
    )
