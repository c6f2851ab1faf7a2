"""A worked-out lesson as the family's page."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from types import MappingProxyType

from generator.compute.finish_layout import finish_layout
from generator.compute.lacking_names import lacking_names
from generator.compute.result import LessonResult
from generator.model.lesson import LessonFile
from generator.model.texts import lesson_texts
from generator.present.entry import LessonEntry, film_sizes
from generator.present.pages.film_parts import film_parts
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.minutes import minutes_words
from generator.present.pages.open_data import open_data
from generator.present.pages.page import Surround
from generator.present.pages.parting import parting_view
from generator.present.pages.take_home import megabytes
from generator.present.pages.video import video_view
from generator.present.pictures.block_shapes import block_shapes
from generator.present.pictures.plums.files import NUMBERED_FILE, shared_path
from generator.present.pictures.plums.hung import hung
from generator.present.recording.corrections import corrections
from generator.present.stops.in_lesson import in_lesson
from generator.present.stops.kinds import kind_of
from generator.present.views.lesson import EndingView, LessonView, StopOnPage
from generator.present.views.page import PageView
from generator.present.views.stop import StopView
from generator.present.views.video import PartView
from generator.present.words.care import care_lines
from generator.present.words.families import BESIDE
from generator.present.words.foreign import is_marked
from generator.present.words.grades import grades_in_words
from generator.present.words.hung import numbers_in_words
from generator.present.words.prose import inline
from generator.present.words.say import Say

_NO_PARTS: Mapping[str, PartView] = MappingProxyType({})


def lesson_view(told: PageInLesson) -> LessonView:
    """Everything the lesson page shows."""
    result, stops, surround, links = told.result, told.stops, told.surround, told.links
    lesson, say = result.lesson, surround.say
    file, rows, layout = lesson.file, hung(result), finish_layout(result)
    path = f"{surround.folder}{lesson.id}/{NUMBERED_FILE}"
    video = video_view(result, stops, surround)
    on_page = stops_on_page(
        stops,
        told.page,
        corrections(result, say),
        film=bool(video and video.src),
        parts=film_parts(result, say),
    )
    return LessonView(
        page=told.page,
        id=lesson.id,
        title=file.title,
        summary=inline(file.summary),
        notice=say("translation_notice") if _is_partly_foreign(result) else "",
        meta=meta_line(file, say) + costs(film_sizes(lesson), say),
        minutes=minutes_words(result, stops, say),
        beside=tuple(say(BESIDE.key(kind)) for kind in _kinds(stops)),
        you_need=file.you_need,
        goals=file.goals,
        video=video,
        stops=on_page,
        shapes=block_shapes(on_page),
        parting=parting_view(result, say),
        player_above=not any(kind_of(stop).holds_player for stop in stops),
        open_data=open_data(result, surround),
        downloads=links.paper,
        screens=links.screens,
        teachers=links.teachers,
        ending=EndingView(path, numbers_in_words(rows, say)) if rows else None,
        shared=surround.site.address + shared_path(lesson.id)
        if rows and surround.site.address
        else "",
        pack=links.filming[0] if links.filming else None,
        later=f"assets/later-{say.locale}.js",
        thread=f"assets/thread-{say.locale}.js",
        finish=f"{layout.lesson}.{layout.numbers}",
        care=care_lines(result, say),
    )


def stop_views(result: LessonResult, surround: Surround) -> tuple[StopView, ...]:
    """The stops in order, as any page of the lesson shows them."""
    folder = f"{surround.folder}{result.lesson.id}/"
    found = (
        in_lesson(index, result, surround.say, folder)
        for index in range(len(result.lesson.file.stops))
    )
    return tuple(kind_of(stop).view(stop) for stop in found)


def stops_on_page(
    stops: Sequence[StopView],
    page: PageView,
    corrections: Mapping[str, tuple[str, ...]],
    *,
    film: bool,
    parts: Mapping[str, PartView] = _NO_PARTS,
) -> tuple[StopOnPage, ...]:
    """Each stop with what it brings to the page.

    A style or a script that the page begins without is linked before the first stop that needs it.
    There it holds up what follows and nothing above: the first view waits for nothing further down.
    A stop that shows a film of the site's own is part of that view and needs only what a page
    begins with.

    Args:
        page: that shows them.
        corrections: by id of a stop.
        film: whether the player shows a film of the site's own.
        parts: of that film, by id of a stop.
    """
    found: list[StopOnPage] = []
    linked = set(page.styles)
    for stop in stops:
        kind = kind_of(stop)
        in_view = film and kind.holds_player and not found and len(stops) > 1
        styles = [f"assets/{name}.css" for name in (*(() if in_view else ("below",)), *kind.styles)]
        script = f"assets/{kind.script}-{page.language}.js" if kind.script else ""
        found.append(
            StopOnPage(
                stop=stop,
                styles=tuple(style for style in styles if style not in linked),
                script="" if script in linked else script,
                first_of_kind=kind.name not in _kinds(one.stop for one in found),
                holds_player=kind.holds_player and not any(other.holds_player for other in found),
                part=parts.get(stop.head.id),
                corrections=corrections.get(stop.head.id, ()),
            )
        )
        linked |= {*styles, script}
    return tuple(found)


def _kinds(stops: Iterable[StopView]) -> tuple[str, ...]:
    """Kinds of stop, each once, in the order of the page."""
    return tuple(dict.fromkeys(stop.head.kind for stop in stops))


def _is_partly_foreign(result: LessonResult) -> bool:
    """Whether a text or a name is missing in the page's language, or older than what it translates."""
    texts = lesson_texts(result.lesson.file)
    return any(is_marked(one.text) for one in texts) or bool(lacking_names(result))


def meta_line(lesson: LessonFile | LessonEntry, say: Say) -> str:
    """``Grades 3–5 · 18 minutes``, and before it of a draft that it is one."""
    parts = [grades_in_words(lesson.grades, say), say("minutes", n=lesson.minutes)]
    return " · ".join([say("draft_mark"), *parts] if lesson.draft else parts)


def costs(film_sizes: tuple[int, ...], say: Say) -> str:
    """`` · video 24 MB``: what a family wants to know of a film before it is fetched; empty without one.

    Args:
        film_sizes: bytes of the film, and of the smallest file it can be watched in.
        say: the words of the page.
    """
    match [megabytes(size, say) for size in film_sizes]:
        case [size]:
            return f" · {say('film_size', size=size)}"
        case [size, least]:
            return f" · {say('film_sizes', size=size, least=least)}"
        case _:
            return ""
