"""What became of addresses that the record of publications knows, and that hold nothing today."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace
from html import escape

from generator.model.published import LessonState
from generator.model.site import PAGE
from generator.present.languages import folder_of
from generator.present.pages.embed import EMBED
from generator.present.pages.formerly import Former, Why
from generator.present.policy import FRAMED
from generator.steps.lessons import KeptLesson
from generator.steps.site import FRONT, Site

_Led = tuple[Why, str, str, str]
"""Why nothing is there, the title of what to go to, its path, and its language where that is another."""


@dataclass(frozen=True, slots=True)
class WentOut:
    """A lesson as it went out in one language."""

    name: str
    """Of its folder then."""
    language: str
    title: str
    """When it last went out; safe HTML."""
    pages: tuple[str, ...]
    """Every page it ever had, by its name in the folder; the one for frames stands elsewhere."""


def published_formers(
    site: Site, heirs: Mapping[str, KeptLesson], moved: Callable[[str, str], str | None]
) -> Iterator[tuple[str, Former]]:
    """Every page of a lesson that went out and is not there, and the language that its address speaks.

    Args:
        site: as it is today.
        heirs: the lessons of today, by each name that they have or had.
        moved: the page that stands for a lesson that is gone, by its name, in a language.
    """
    first = next(iter(site.presenters))
    for said in went_out(site.published.lessons):
        speaks = said.language if said.language in site.presenters else first
        one = _marked(said, speaks)
        folder = folder_of(one.language, site.library.site)
        front = folder_of(speaks, site.library.site) + FRONT
        heir, to = heirs.get(one.name), moved(one.name, speaks)
        for page in _not_there(one, heir):
            led = _led(site, one, page, heir) if heir else _lost(one, to, front)
            yield speaks, Former(f"{folder}{one.name}/{page}", *led)
            if page == FRONT:
                yield speaks, Former(f"{FRAMED}{folder}{one.name}/{EMBED}", *led)


def pages_of_lost_languages(site: Site) -> Iterator[tuple[str, Former]]:
    """Every page that is no lesson's and went out in a language the site has no more, such as its front page."""
    first = next(iter(site.presenters))
    folders = {
        folder_of(language, site.library.site)
        for one in site.published.publications
        for language in one.languages
        if language not in site.presenters
    }
    home = folder_of(first, site.library.site)
    for path in dict.fromkeys(page for one in site.published.publications for page in one.pages):
        folder, name = next(
            ((one, path[len(one) :]) for one in folders if path.startswith(one)), ("", "")
        )
        if folder:
            target = home + (name if home + name in site.pages else FRONT)
            title = escape(site.library.site.name_in(first), quote=False)
            yield first, Former(path, Why.PAGE_LANGUAGE, title, target, first)


def _marked(one: WentOut, speaks: str) -> WentOut:
    """With its title marked where the page that names it speaks another language (WCAG 2.2, 3.1.2)."""
    if one.language == speaks:
        return one
    return replace(one, title=f'<span lang="{escape(one.language)}">{one.title}</span>')


def _not_there(one: WentOut, heir: KeptLesson | None) -> Iterator[str]:
    """The pages that its lesson has no more under this name."""
    here = heir.facts.addresses.get(one.language, {}) if heir and heir.id == one.name else {}
    yield from (page for page in one.pages if page not in here)


def went_out(lessons: Mapping[str, tuple[LessonState, ...]]) -> Iterator[WentOut]:
    """Every lesson in every language that it ever went out in."""
    for name, states in lessons.items():
        for language in dict.fromkeys(one.language for one in states):
            said = [one for one in states if one.language == language and not one.gone]
            if said:
                pages = dict.fromkeys(page for one in said for page in one.pages)
                html = tuple(page for page in pages if page.endswith(PAGE) and page != EMBED)
                yield WentOut(name, language, escape(said[-1].title), html)


def _lost(one: WentOut, stands_for_it: str | None, front: str) -> _Led:
    """Where a lesson leads that has none in its place."""
    if stands_for_it:
        return Why.MOVED, one.title, stands_for_it, ""
    return Why.GONE, one.title, front, ""


def _led(site: Site, one: WentOut, page: str, heir: KeptLesson) -> _Led:
    """Where a page leads of a lesson that is there, under this or another name."""
    titles = {entry.language: entry.title for entry in heir.facts.entries}
    language = one.language if one.language in titles else next(iter(titles))
    has = page in heir.facts.addresses[language]
    folder = folder_of(language, site.library.site)
    target = f"{folder}{heir.id}/{page if has else FRONT}"
    if language != one.language:
        return Why.NO_LANGUAGE, one.title, target, language
    return (Why.RENAMED if has else Why.NO_PAGE), titles[language], target, ""
