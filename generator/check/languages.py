"""What cannot be checked in a language of the site, said once."""

from __future__ import annotations

from collections.abc import Iterator

from generator.language import language_of
from generator.model.library import Library
from generator.problems import Place, Problem, Weight


def checked_less(library: Library) -> Iterator[Problem]:
    """For each language of which something is not known here: what nobody checks in it."""
    for number, tag in enumerate(library.site.languages):
        if unchecked := language_of(tag).unchecked:
            place = library.places.get(("languages", number), Place("site_data/site.yaml"))
            what = f"in {tag} this is not checked: {', '.join(unchecked)}"
            hint = "let somebody who speaks it read the lessons for that; all else is checked"
            yield Problem(place, what, hint, Weight.QUESTION)
