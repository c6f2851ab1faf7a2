"""What leads on from the addresses that lessons and pages had before, for a site whose lessons are made."""

from __future__ import annotations

import json
from collections.abc import Iterator

from generator.present.languages import folder_of
from generator.present.output import Output
from generator.present.pages.embed import EMBED
from generator.present.pages.formerly import Former, FormerPlace, Why
from generator.present.pages.take_home import KEEP_LIST
from generator.present.policy import FRAMED
from generator.present.words.families import STOP
from generator.present.words.prose import plain
from generator.steps.lessons import KeptLesson
from generator.steps.site import FRONT, Site


def formerly(site: Site) -> Iterator[Output]:
    """A page at each address of before, and the lists that scripts ask; none of them is in the way of another page."""
    found = {one.path: (language, one) for language, one in formers(site)}
    for path, (language, one) in found.items():
        if path not in site.map.lessons:
            yield site.presenters[language].formerly(one)
    yield from _kept_lists(site)


def formers(site: Site) -> Iterator[tuple[str, Former]]:
    """Every address of before with where it leads, and the language its page speaks."""
    for lesson in site.lessons:
        for name, _ in lesson.facts.listed.formerly:
            yield from _renamed(site, lesson, name)


def _renamed(site: Site, lesson: KeptLesson, name: str) -> Iterator[tuple[str, Former]]:
    """The addresses of a lesson while its folder had another name, in each language it has."""
    for entry in lesson.facts.entries:
        language = entry.language
        folder, places = folder_of(language, site.library.site), _places(site, lesson, language)
        for page in lesson.facts.addresses[language]:
            shown = places if page == FRONT else ()
            path, target = f"{folder}{name}/{page}", f"{folder}{lesson.id}/{page}"
            yield language, Former(path, Why.RENAMED, entry.title, target, places=shown)
        path, target = (f"{FRAMED}{folder}{one}/{EMBED}" for one in (name, lesson.id))
        yield language, Former(path, Why.RENAMED, entry.title, target, places=places)


def _places(site: Site, lesson: KeptLesson, language: str) -> tuple[FormerPlace, ...]:
    """What an old link may name in a lesson: its stops, by what they are called."""
    say = site.presenters[language].surround.say
    return tuple(
        FormerPlace(
            stop.id, plain(stop.titles.get(language, "")) or say(STOP.key(kind)), stop.formerly
        )
        for (kind, _), stop in zip(lesson.facts.stops, lesson.facts.standing.stops, strict=True)
    )


def _kept_lists(site: Site) -> Iterator[Output]:
    """Where a device looks for a newer version of a lesson that it kept under the older name.

    It finds one, so it asks the site for the page it opens, and is led on from there.
    """
    if not site.library.site.keep_lessons:
        return
    for lesson in site.lessons:
        for name, _ in lesson.facts.listed.formerly:
            for language in lesson.facts.addresses:
                path = f"{folder_of(language, site.library.site)}{name}/{KEEP_LIST}"
                told = json.dumps({"version": f"now {lesson.id}", "files": []})
                yield Output(path, told.encode())
