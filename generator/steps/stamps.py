"""What a site knows of print stamps: of the sheets its lessons print today, and of those that were published."""

from __future__ import annotations

from collections.abc import Iterator

from generator.model.published import LessonState
from generator.present.output import Output
from generator.present.stamps.shards import KnownStamp, shards, signs_of
from generator.steps.site import Site

_UNKNOWN_DAY = "-"
"""Where a lesson is gone and that has not been published yet."""


def stamps(site: Site) -> Iterator[Output]:
    """The page of each language where a stamp is typed, and what it fetches."""
    known = tuple(known_stamps(site))
    signs = signs_of(known)
    for language, presenter in site.presenters.items():
        yield presenter.stamps(site.entries(language), site.untranslated(language), signs)
    yield from shards(known, signs)


def known_stamps(site: Site) -> Iterator[KnownStamp]:
    """Every stamp, those of today first, then the newest of before."""
    today = {
        (lesson.id, language): stamps
        for lesson in site.lessons
        for language, stamps in lesson.facts.stamps.items()
    }
    for (lesson, language), held in today.items():
        for sheet, stamp in held.items():
            yield KnownStamp(stamp, lesson, language, sheet, now=1)
    leads_on = site.leads_on
    for name, states in site.published.lessons.items():
        lesson = leads_on.get(name, name)
        for at in reversed(range(len(states))):
            state = states[at]
            gone = "" if (lesson, state.language) in today else _gone(states[at:], state.language)
            title = state.title if gone else ""
            for sheet, stamp in state.stamps.items():
                yield KnownStamp(
                    stamp, lesson, state.language, sheet, now=0, gone=gone, title=title
                )


def _gone(later: tuple[LessonState, ...], language: str) -> str:
    """The day since when it is published no more."""
    days = [one.at[:10] for one in later if one.gone and one.language == language]
    return days[-1] if days else _UNKNOWN_DAY
