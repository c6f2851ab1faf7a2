"""Foods, moves and texts of the program that a site's own ones stand in the place of."""

from __future__ import annotations

from collections.abc import Iterator

from generator.model.library import Library
from generator.problems import Place, Problem, Weight

_NAMED = 5
"""Entries that are named; of more, their number says enough."""


def replaced_entries(library: Library) -> Iterator[Problem]:
    """A question for each file of the site that changes something of the program's, once."""
    files: dict[str, dict[str, Place]] = {}
    for path, place in library.places.items():
        if path[0] == "replaced":
            files.setdefault(place.path, {})[str(path[-1])] = place
    for names in files.values():
        first = min(names.values())
        shown = [f"`{name}`" for name in names][:_NAMED]
        more = len(names) - len(shown)
        named = ", ".join(shown) + (f" and {more} more" if more else "")
        stands = "stands" if len(names) == 1 else "stand"
        what = f"{named} {stands} here in the place of the program's own"
        hint = "an update of the program changes nothing of it; take it out to have the program's again"
        yield Problem(first, what, hint, Weight.QUESTION)
