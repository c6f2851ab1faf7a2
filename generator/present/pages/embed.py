"""One stop of a lesson for a page of another site: no header, no film, nothing kept on the device."""

from __future__ import annotations

from html import escape

from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.lesson_page import stops_on_page
from generator.present.pages.parting import parting_view
from generator.present.pictures.block_shapes import block_shapes
from generator.present.policy import FRAMED
from generator.present.recording.corrections import corrections
from generator.present.stops.in_lesson import stop_names
from generator.present.views.embed import EmbedView, SnippetView
from generator.present.views.page import LinkView
from generator.present.words.prose import plain

EMBED = "stop.html"
"""Name of the page in its folder."""
_HEIGHT = 640
"""Of the frame, in CSS pixels: what a row of a comparison takes on a phone. A frame whose page may say
nothing to the page around it cannot be told its height; what is longer scrolls inside."""
_MAY = "allow-scripts allow-popups allow-popups-to-escape-sandbox"
"""What the frame is allowed (HTML, 4.8.5): to check answers, and to open the lesson beside it; no storage."""


def embed_view(told: PageInLesson) -> EmbedView:
    """Everything the page shows."""
    result, surround = told.result, told.surround
    lesson, say = result.lesson, surround.say
    stops = stops_on_page(told.stops, told.page, corrections(result, say), film=False)
    programme = surround.site.name_in(say.language)
    label = say("embed_from", title=plain(lesson.file.title), program=programme)
    return EmbedView(
        page=told.page,
        id=lesson.id,
        title=lesson.file.title,
        stops=stops,
        shapes=block_shapes(stops),
        parting=parting_view(result, say),
        lesson=LinkView(told.links.lesson.href, label),
    )


def snippets(told: PageInLesson) -> tuple[SnippetView, ...]:
    """An element for each stop, where the site has an address that another can name."""
    surround, lesson = told.surround, told.result.lesson
    if not surround.site.address:
        return ()
    page = f"{surround.site.address}{FRAMED}{surround.folder}{lesson.id}/{EMBED}"
    title = plain(lesson.file.title)
    return tuple(
        SnippetView(name, _element(f"{page}#{stop}", f"{name}: {title}"))
        for stop, name in stop_names(told.result, surround.say).items()
    )


def _element(address: str, title: str) -> str:
    return (
        f'<iframe src="{escape(address)}" title="{escape(title)}" width="100%" height="{_HEIGHT}" '
        f'sandbox="{_MAY}" loading="lazy" style="border:0"></iframe>'
    )
