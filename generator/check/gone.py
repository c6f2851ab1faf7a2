"""What was sent or printed and is no longer there: nobody who comes by an old link should end nowhere."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass
from difflib import get_close_matches
from typing import TypeVar

from generator.check.standing import Standing, StandingStop
from generator.model.ids import PAGE_IDS
from generator.model.published import LessonState, Published, last_of
from generator.model.site import PAGE
from generator.problems import Place, Problem, Weight

_SITE = Place("site_data/site.yaml")
_OLDER = re.compile(r"updates-\d+\.html")
"""A page of older updates, which the program makes as many of as it needs."""
_CLOSE = 0.5
"""How alike two names are that may be one: `two-lunches` and `lunches`."""


Named = TypeVar("Named", Standing, StandingStop)


@dataclass(frozen=True, slots=True)
class Today:
    """A site as it stands."""

    lessons: tuple[Standing, ...]
    """Those that go out."""
    held_back: Collection[str]
    """Names, today's and older ones, of lessons that do not go out just now, of which is told why."""
    languages: tuple[str, ...]
    """The one that lessons are written in first."""
    languages_at: Place
    """Where they are listed."""
    pages: Collection[str]
    """Every page that is no lesson's, by its path from the site's root."""
    is_whole: bool
    """Whether every lesson could be read: one that cannot may be what another is called now."""
    formerly: Collection[str]
    """What ``site_data/site.yaml`` says had another address, or is gone."""


def gone_without_a_word(published: Published, today: Today) -> Iterator[Problem]:
    """A question for each lesson, stop, language and page that went out and leads nowhere now.

    Args:
        published: the record of publications.
        today: the site as it stands.
    """
    heirs = {name: one for one in today.lessons for name in (one.folder, *one.formerly)}
    for name, states in published.lessons.items():
        heir = heirs.get(name)
        if heir:
            yield from _stops_gone(states, heir)
            yield from _languages_gone(states, heir, today)
        elif today.is_whole and name not in {*today.formerly, *today.held_back}:
            yield _lesson_gone(name, published.lessons, today)
    yield from _site_languages_gone(published, today)
    yield from _pages_gone(published, today)


def _lesson_gone(
    name: str, published: Mapping[str, tuple[LessonState, ...]], today: Today
) -> Problem:
    said = [one for one in published[name] if not one.gone]
    titles = {one.language: one.title for one in said}
    heir = _like(name, titles, today.lessons, published)
    what = f"the lesson `{name}` went out and is gone; {_since(said)} lead to its address"
    if heir is None:
        hint = (
            f"write `{name}: ` below `formerly:` here where it is gone for good, or list `{name}` "
            "under `formerly:` in the lesson that takes its place"
        )
        return Problem(_SITE, what, hint, Weight.QUESTION)
    listed = ", ".join((*heir.formerly, name))
    hint = f"where this is the lesson, write `formerly: [{listed}]` above its stops"
    return Problem(heir.place, what, hint, Weight.QUESTION)


def _stops_gone(states: tuple[LessonState, ...], heir: Standing) -> Iterator[Problem]:
    """Each address of a stop that was ever sent or printed and leads nowhere in the lesson now."""
    there = {name for stop in heir.stops for name in (stop.id, *stop.formerly)} | PAGE_IDS
    said = [one for one in states if not one.gone]
    gone = dict.fromkeys(name for one in said for name in one.stops if name not in there)
    ever = {name for one in said for name in one.stops}
    for name in gone:
        having = [one for one in said if name in one.stops]
        titles = {one.language: one.stops[name] for one in having}
        stop = _like(name, titles, heir.stops, ever)
        stop = stop or _between(name, having[-1], heir)
        title = next(iter(titles.values()))
        what = f"the stop `{name}` (“{title}”) went out and is gone; {_since(having)} lead to it"
        listed = ", ".join((*(stop.formerly if stop else ()), name))
        hint = f"where this stop stands for it now, write `formerly: [{listed}]` in it, else in the one that does"
        yield Problem(stop.place if stop else heir.place, what, hint, Weight.QUESTION)


def _between(name: str, state: LessonState, heir: Standing) -> StandingStop | None:
    """The stop that follows the one before it, or the first."""
    order = list(state.stops)
    before = set(order[: order.index(name)])
    after = [at for at, stop in enumerate(heir.stops) if stop.id in before]
    at = min(max(after, default=-1) + 1, len(heir.stops) - 1)
    return heir.stops[at] if heir.stops else None


def _languages_gone(
    states: tuple[LessonState, ...], heir: Standing, today: Today
) -> Iterator[Problem]:
    """Each language of the site in which the lesson went out last time, and is not there now."""
    for language in today.languages:
        last = last_of(states, language)
        if last and not last.gone and language not in heir.titles:
            said = [one for one in states if one.language == language and not one.gone]
            what = f"this lesson went out in `{language}` and has no such translation now; {_since(said)} lead to it"
            hint = f"put `lesson.{language}.yaml` back, or publish: the old addresses then say so and lead to `{today.languages[0]}`"
            yield Problem(heir.place, what, hint, Weight.QUESTION)


def _site_languages_gone(published: Published, today: Today) -> Iterator[Problem]:
    """Each language that the site went out in last time, and no longer lists."""
    every = [one.language for states in published.lessons.values() for one in states]
    for language in dict.fromkeys(one for one in every if one not in today.languages):
        last = [last_of(states, language) for states in published.lessons.values()]
        lessons = sum(one is not None and not one.gone for one in last)
        if lessons:
            what = f"`{language}` is no longer listed here, and went out with lessons ({lessons})"
            hint = f"list it again, or publish: their old addresses then say so and lead to `{today.languages[0]}`"
            yield Problem(today.languages_at, what, hint, Weight.QUESTION)


def _pages_gone(published: Published, today: Today) -> Iterator[Problem]:
    """Each page of the site's own that ever went out; one of several languages is told once."""
    sent = dict.fromkeys(page for one in published.publications for page in one.pages)
    told: set[str] = set()
    for page in sent:
        folder, _, name = page.rpartition("/")
        inside = not folder or folder in today.languages
        lead_on = {page, name} & {*today.formerly, *told}
        known = page in today.pages or lead_on or _OLDER.fullmatch(name)
        if page.endswith(PAGE) and inside and not known:
            told.add(name)
            near = get_close_matches(name, sorted(today.pages), n=1) or ["index.html"]
            what = f"the page `{page}` went out and is gone; links to it end where nothing is known of it"
            hint = f"write `{name}: {near[0]}` below `formerly:` here, or another page that stands for it"
            yield Problem(_SITE, what, hint, Weight.QUESTION)


def _like(
    name: str, titles: Mapping[str, str], offered: Sequence[Named], before: Collection[str]
) -> Named | None:
    """Which of them may be what bore a name: one of the same title, else a new one of the closest name.

    Args:
        name: what is gone.
        titles: what it was called, by language.
        offered: what is there.
        before: names that went out, which are not new.
    """
    for one in offered:
        if any(_plain(one.titles.get(of, "")) == _plain(title) for of, title in titles.items()):
            return one
    new = {_name(one): one for one in offered if _name(one) not in before}
    near = get_close_matches(name, list(new), n=1, cutoff=_CLOSE)
    return new[near[0]] if near else None


def _name(one: Standing | StandingStop) -> str:
    return one.folder if isinstance(one, Standing) else one.id


def _plain(title: str) -> str:
    return " ".join(title.casefold().split())


def _since(states: Sequence[LessonState]) -> str:
    """Who may come by an old address."""
    return f"links sent and sheets printed since {states[0].at[:10]}"
