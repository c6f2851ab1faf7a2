"""What leads on from the addresses that lessons and pages had before, for a site whose lessons are made."""

from __future__ import annotations

import json
from collections.abc import Iterator
from html import escape

from generator.model.site import PAGE
from generator.present.languages import folder_of
from generator.present.output import Output
from generator.present.pages.embed import EMBED
from generator.present.pages.formerly import Former, FormerPlace, Why
from generator.present.pages.page import Build
from generator.present.pages.table import PAGES, START
from generator.present.policy import FRAMED
from generator.present.words.families import STOP
from generator.present.words.prose import plain
from generator.steps.formerly_kept import kept_lists
from generator.steps.formerly_published import pages_of_lost_languages, published_formers
from generator.steps.lessons import KeptLesson
from generator.steps.site import FRONT, Site
from generator.steps.standing import OLDER_NAMES


def formerly(site: Site) -> Iterator[Output]:
    """A page at each address of before, and the lists that scripts ask; none of them is in the way of another page."""
    found = {one.path: (language, one) for language, one in formers(site)}
    there = site.pages | set(_framed(site))
    pages = {
        path: site.presenters[language].formerly(one)
        for path, (language, one) in found.items()
        if path not in there
    }
    yield from pages.values()
    yield from kept_lists(site, pages)
    yield from _older_names(site)


def formers(site: Site) -> Iterator[tuple[str, Former]]:
    """Every address of before with where it leads, and the language its page speaks; the last of one path counts."""
    moved = site.library.site.formerly
    now = {lesson.id: lesson for lesson in site.lessons}
    renamed = {name: one for one in site.lessons for name in one.facts.standing.formerly}
    renamed |= {
        old: now[new] for old, new in moved.items() if new in now and not old.endswith(PAGE)
    }
    lost = {old: new for old, new in moved.items() if not old.endswith(PAGE) and new not in now}
    yield from pages_of_lost_languages(site)
    for old in lost:
        yield from _taken_away(site, old)
    replaced = {old: new for old, new in lost.items() if new}
    yield from published_formers(
        site, renamed | now, lambda old, language: _page(site, language, replaced.get(old))
    )
    for old, new in moved.items():
        if new and old.endswith(PAGE):
            yield from _moved(site, old, new)
    for old, lesson in renamed.items():
        yield from _renamed(site, lesson, old)


def _renamed(site: Site, lesson: KeptLesson, name: str) -> Iterator[tuple[str, Former]]:
    """The addresses of a lesson while its folder had another name, in each language it has."""
    for entry in lesson.facts.entries:
        language = entry.language
        folder, places = folder_of(language, site.library.site), _places(site, lesson, language)
        for page in lesson.facts.addresses[language]:
            shown = places if page == FRONT else ()
            path, target = f"{folder}{name}/{page}", f"{folder}{lesson.id}/{page}"
            label = _label(site, language, page)
            yield (
                language,
                Former(path, Why.RENAMED, entry.title, target, label=label, places=shown),
            )
        path, target = (f"{FRAMED}{folder}{one}/{EMBED}" for one in (name, lesson.id))
        yield language, Former(path, Why.RENAMED, entry.title, target, places=places)


def _taken_away(site: Site, name: str) -> Iterator[tuple[str, Former]]:
    """The usual addresses of a lesson that is gone for good, in every language, for a site without a record of it."""
    title = name.replace("-", " ").capitalize()
    for language in site.presenters:
        folder = folder_of(language, site.library.site)
        to = _page(site, language, site.library.site.formerly[name])
        why, target = (Why.MOVED, to) if to else (Why.GONE, folder + FRONT)
        for page in PAGES:
            if Build.PUBLISHED in page.builds:
                path = f"{FRAMED if page.framed else ''}{folder}{name}/{page.name}"
                yield language, Former(path, why, title, target)


def _moved(site: Site, old: str, new: str) -> Iterator[tuple[str, Former]]:
    """The address that a page had, in each language that has the page, or in that whose folder is named."""
    others = {one: folder_of(one, site.library.site) for one in [*site.presenters][1:]}
    named = [one for one, folder in others.items() if old.startswith(folder)]
    for language in named or site.presenters:
        folder = folder_of(language, site.library.site)
        old, new = old.removeprefix(folder), new.removeprefix(folder)
        to = _page(site, language, new)
        if to and to.startswith(folder):
            titles = {folder + page: escape(title) for page, title in site.around.pages[language]}
            titles |= {f"{folder}{one.id}/{FRONT}": one.title for one in site.entries(language)}
            name = escape(site.library.site.name_in(language))
            title = titles.get(to.partition("#")[0], name)
            yield language, Former(folder + old, Why.MOVED, title, to)


def _page(site: Site, language: str, new: str | None) -> str | None:
    """Where a page or a lesson of the site stands in a language, else in the first; nothing where it does in none."""
    if not new:
        return None
    name, sign, place = new.partition("#")
    page = name if name.endswith(PAGE) else f"{name}/{FRONT}"
    for one in (language, next(iter(site.presenters))):
        path = folder_of(one, site.library.site) + page
        if path in site.pages:
            return f"{path}{sign}{place}"
    return None


def _label(site: Site, language: str, page: str) -> str:
    """What a page of a lesson is called; nothing for the lesson itself."""
    words = {one.name: one.link for one in PAGES if one is not START}
    return site.presenters[language].surround.say(words[page]) if page in words else ""


def _places(site: Site, lesson: KeptLesson, language: str) -> tuple[FormerPlace, ...]:
    """What an old link may name in a lesson: its stops, by what they are called."""
    say = site.presenters[language].surround.say
    return tuple(
        FormerPlace(
            stop.id, plain(stop.titles.get(language, "")) or say(STOP.key(kind)), stop.formerly
        )
        for (kind, _), stop in zip(lesson.facts.stops, lesson.facts.standing.stops, strict=True)
    )


def _older_names(site: Site) -> Iterator[Output]:
    """Where the folders of lessons stand now by where they stood, in each language; for files that hold no page."""
    folders = {language: folder_of(language, site.library.site) for language in site.presenters}
    names = {
        f"{folders[language]}{name}/": f"{folders[language]}{lesson.id}/"
        for lesson in site.lessons
        for name in lesson.facts.standing.formerly
        for language in lesson.facts.addresses
    }
    if names:
        yield Output(OLDER_NAMES, json.dumps(names).encode())


def _framed(site: Site) -> Iterator[str]:
    """What other sites may show of the lessons of today."""
    for lesson in site.lessons:
        for language in lesson.facts.addresses:
            yield f"{FRAMED}{folder_of(language, site.library.site)}{lesson.id}/{EMBED}"
