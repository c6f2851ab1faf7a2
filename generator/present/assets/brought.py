"""What scripts load by themselves: no page names it, and a page needs it all the same."""

from __future__ import annotations

from collections.abc import Iterable

BRINGS = {
    "work-{locale}.js": ("play-{locale}.js",),
    "day-{locale}.js": ("play-{locale}.js",),
    "projector-{locale}.js": ("play-{locale}.js",),
    "later-{locale}.js": ("later.css",),
    "play-{locale}.js": ("play.css",),
}
"""By script of ``assets/``, the files beside it that its modules ask for; a test holds it against them."""
FOLDER = "assets/"


def brought_by(name: str, locale: str) -> tuple[str, ...]:
    """Paths of what a script of ``assets/`` loads on a page of a language, from the site's root.

    Args:
        name: of the file: ``later-en.js``.
        locale: language and region of the page, as its scripts are named by.
    """
    brings = {script.format(locale=locale): files for script, files in BRINGS.items()}
    return tuple(FOLDER + file.format(locale=locale) for file in brings.get(name, ()))


def with_brought(paths: Iterable[str], locale: str) -> tuple[str, ...]:
    """Files with all that they bring, and what that brings, in order."""
    found: set[str] = set()
    waiting = list(paths)
    while waiting:
        path = waiting.pop()
        if path not in found:
            found.add(path)
            waiting += brought_by(path.removeprefix(FOLDER), locale)
    return tuple(sorted(found))
