"""An address of the site that is nobody's, and would be printed."""

from __future__ import annotations

from collections.abc import Iterator
from urllib.parse import urlsplit

from generator.model.library import Library
from generator.problems import Place, Problem, Weight

_NOBODYS = (".example", ".test", ".invalid", ".localhost")
"""Ends of names that lead nowhere, for examples and tests: RFC 2606, section 2."""


def address_is_somebodys(library: Library) -> Iterator[Problem]:
    """A question while the address is one that leads nowhere."""
    host = urlsplit(library.site.address).hostname or ""
    if host.endswith(_NOBODYS):
        place = library.places.get(("address",), Place("site_data/site.yaml"))
        what = f"no site can stand at `{host}`, and every sheet that is printed would lead there"
        hint = "write the address of your own site, or nothing until you know it"
        yield Problem(place, what, hint, Weight.QUESTION)
