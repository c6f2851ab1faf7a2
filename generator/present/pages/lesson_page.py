"""A worked-out lesson as the family's page."""

from __future__ import annotations

from generator.compute.lacking_names import lacking_names
from generator.compute.result import LessonResult
from generator.model.texts import file_texts
from generator.present.pages.open_data import open_data
from generator.present.pages.page import Surround
from generator.present.pages.take_home import SIZE, take_home_name
from generator.present.pages.video import video_view
from generator.present.recording.corrections import corrections
from generator.present.stops.head import Telling
from generator.present.stops.view import stop_view
from generator.present.views.lesson import LessonView
from generator.present.views.page import LinkView
from generator.present.views.stop import StopView
from generator.present.words.care import allergen_line, care_lines
from generator.present.words.foreign import is_marked
from generator.present.words.grades import grades_in_words
from generator.present.words.prose import inline
from generator.present.words.say import Say
from generator.present.words.stamp import print_stamp


def lesson_view(
    result: LessonResult, stops: tuple[StopView, ...], surround: Surround
) -> LessonView:
    """Everything the lesson page shows."""
    lesson, say = result.lesson, surround.say
    file = lesson.file
    page = surround.page(f"{lesson.id}/index.html", file.title, file.summary)
    return LessonView(
        page=page,
        id=lesson.id,
        title=file.title,
        summary=inline(file.summary),
        notice=say("translation_notice") if _is_partly_foreign(result) else "",
        meta=meta_line(result, say),
        you_need=file.you_need,
        goals=file.goals,
        video=video_view(result, stops, surround),
        stops=stops,
        corrections=corrections(result, say),
        open_data=open_data(result, stops, surround),
        downloads=downloads(result, say),
        notes=LinkView("notes.html", say("notes_title")),
        styles_at=styles_at(stops, page.root),
        pack=_pack(surround),
        take_home=_take_home(lesson.id, surround),
        care=care_lines(result, say),
        allergens=allergen_line(result, say),
        stamp=print_stamp(result),
    )


def stop_views(result: LessonResult, surround: Surround) -> tuple[StopView, ...]:
    """The stops in order, as any page of the lesson shows them."""
    telling = Telling(result, surround.say, surround.root(f"{result.lesson.id}/index.html"))
    return tuple(
        stop_view(index, stop, telling) for index, stop in enumerate(result.lesson.file.stops)
    )


def _is_partly_foreign(result: LessonResult) -> bool:
    """Whether a text or a name is missing in the page's language, or older than what it translates."""
    texts = file_texts(result.lesson.file)
    return any(is_marked(text) for _, text in texts) or bool(lacking_names(result))


def _pack(surround: Surround) -> LinkView | None:
    if not surround.has_recording_pack:
        return None
    return LinkView("recording/index.html", surround.say("recording_title"))


def _take_home(lesson: str, surround: Surround) -> LinkView | None:
    """The copy is made of the finished pages, and so is what stands in the place of its size."""
    if surround.preview:
        return None
    return LinkView(take_home_name(lesson), surround.say("take_home", size=SIZE))


def styles_at(stops: tuple[StopView, ...], root: str) -> dict[str, tuple[str, ...]]:
    """Styles that a page begins without, each before the first stop that needs it.

    A style sheet linked there holds up what follows it and nothing above, so the first view
    does not wait for what stands further down.
    """
    places: dict[str, tuple[str, ...]] = {}
    linked: set[str] = set()
    for stop in stops:
        new = [name for name in _STYLES.get(stop.head.kind, ()) if name not in linked]
        linked.update(new)
        if new:
            places[stop.head.id] = tuple(f"{root}assets/{name}.css" for name in new)
    return places


_STYLES = {"compare": ("work",), "move": ("work",), "day": ("work", "day")}
"""By kind of stop: the style sheets of theme/css/ it needs beyond the page's own."""


def meta_line(result: LessonResult, say: Say) -> str:
    """``Grades 3–5 · 18 minutes``."""
    file = result.lesson.file
    return f"{grades_in_words(file.grades, say)} · {say('minutes', n=file.minutes)}"


def downloads(result: LessonResult, say: Say) -> tuple[LinkView, ...]:
    """The pages for paper."""
    cards = (LinkView("cards.html", say("cards_title")),) if result.movements else ()
    sheets = (
        LinkView("worksheet.html", say("worksheet_title")),
        LinkView("answers.html", say("answers_title")),
        LinkView("practice.html", say("practice_title")),
    )
    return cards + sheets
