"""What the lessons of the front page can be chosen by: only what tells some of them from others."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from generator.model.measure import Measure
from generator.present.views.home import FilterView, LessonCardView
from generator.present.words.families import MEASURE
from generator.present.words.say import Say

_SPANS = (10, 15, 20, 30, 45, 60)
"""Minutes offered as the longest."""
_WITHOUT_ENERGY = f"-{Measure.ENERGY}"
"""What `theme/js/lesson-choice.js` takes for every lesson that is not about it."""


def filters(lessons: Sequence[LessonCardView], say: Say) -> tuple[FilterView, ...]:
    """Grade, minutes, topic and language, each where there is a choice."""
    offered = (
        ("grade", "filter_grade", "filter_grade_all", _grades(lessons, say)),
        ("minutes", "filter_minutes", "filter_minutes_all", _minutes(lessons, say)),
        ("topic", "filter_topic", "filter_topic_all", _topics(lessons, say)),
        ("language", "filter_language", "filter_language_all", _languages(lessons, say)),
    )
    return tuple(
        FilterView(name, say(label), (("", say(every)), *choices))
        for name, label, every, choices in offered
        if choices
    )


def without_energy(lessons: Sequence[LessonCardView], say: Say) -> tuple[str, str]:
    """Value and wording that leave energy out; both empty where none or all of the lessons are about it.

    A family may need fewer numbers about food, however few lessons there are.
    """
    if str(Measure.ENERGY) not in _unlike(lesson.topics for lesson in lessons):
        return "", ""
    return _WITHOUT_ENERGY, say("leave_out_topic", topic=say(MEASURE.key(Measure.ENERGY)))


def _grades(lessons: Sequence[LessonCardView], say: Say) -> tuple[tuple[str, str], ...]:
    known = _unlike(lesson.grades for lesson in lessons)
    return tuple((one, say("filter_kindergarten") if one == "0" else one) for one in known)


def _minutes(lessons: Sequence[LessonCardView], say: Say) -> tuple[tuple[str, str], ...]:
    lengths = [lesson.minutes for lesson in lessons]
    useful = [span for span in _SPANS if min(lengths, default=0) <= span < max(lengths, default=0)]
    return tuple((str(span), say("filter_up_to", n=span)) for span in useful)


def _topics(lessons: Sequence[LessonCardView], say: Say) -> tuple[tuple[str, str], ...]:
    known = _unlike(lesson.topics for lesson in lessons)
    chosen = tuple((one, say(MEASURE.key(one))) for one in known)
    energy = str(Measure.ENERGY)
    if energy not in known:
        return chosen
    left_out = say("filter_topic_without", topic=say(MEASURE.key(energy)))
    return (*chosen, (_WITHOUT_ENERGY, left_out))


def _languages(lessons: Sequence[LessonCardView], say: Say) -> tuple[tuple[str, str], ...]:
    known = _unlike(lesson.languages for lesson in lessons)
    return tuple((one, say.language_name(one)) for one in known if one != say.language)


def _unlike(words: Iterable[str]) -> list[str]:
    """Every word of some lesson, in order; nothing where all lessons have the same ones."""
    sets = {frozenset(each.split()) for each in words}
    return sorted(frozenset().union(*sets)) if len(sets) > 1 else []
