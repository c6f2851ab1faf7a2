"""Pages at the addresses that lessons and pages had before: each says so in one sentence, and leads on."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from markupsafe import Markup

from generator.present.pages.page import Look, Surround
from generator.present.policy import FRAMED
from generator.present.views.formerly import FormerlyView, FormerPlaceView, FramedFormerlyView
from generator.present.views.page import LinkView
from generator.present.words.say import Say

_LOOK = Look(("screen", "below", "reading"), "formerly")
_FRAMED_LOOK = Look(("screen", "below", "embed"), "formerly")


class Why(StrEnum):
    """What became of what stood at an address."""

    RENAMED = "renamed"
    """The lesson has another address."""
    MOVED = "moved"
    """The page has another address."""
    NO_PAGE = "no_page"
    """The lesson is there, and has no such page any more."""
    NO_LANGUAGE = "no_language"
    """The lesson is there, and in this language no more."""
    PAGE_LANGUAGE = "page_language"
    """The page is no lesson's, and is there in another language alone."""
    GONE = "gone"
    """The lesson is there no more."""


@dataclass(frozen=True, slots=True)
class FormerPlace:
    """A place on the page that an old address leads to."""

    id: str
    name: str
    """What it is called, as a text."""
    formerly: tuple[str, ...]
    """Ids it had before."""


@dataclass(frozen=True, slots=True)
class Former:
    """An address of before, and where it leads."""

    path: str
    """From the site's root."""
    why: Why
    title: str
    """Of what is there now, or was there; safe HTML."""
    target: str
    """The page it leads to, from the site's root; at a place on it or not."""
    language: str = ""
    """Tag of the language of that page, where it is another one."""
    label: str = ""
    """What the page is called that it leads to, where that is not the lesson itself."""
    places: tuple[FormerPlace, ...] = ()
    """What an old link may name on that page."""


def formerly_view(one: Former, surround: Surround) -> FormerlyView:
    """The page at such an address, which search engines need not list.

    Args:
        one: the address.
        surround: of the language that it speaks.
    """
    say, framed = surround.say, one.path.startswith(FRAMED)
    title = Markup(one.title)  # noqa: S704  # an entry holds safe HTML
    page = surround.page(
        one.path.removeprefix(FRAMED).removeprefix(surround.folder),
        title.striptags(),
        _says(one, say),
        look=_FRAMED_LOOK if framed else _LOOK,
        searched=False,
    )
    address = one.target.partition("#")[0]
    site = surround.site.address
    return (FramedFormerlyView if framed else FormerlyView)(
        page=page,
        title=title,
        says=_says(one, say),
        link=LinkView(one.target, _label(one, say)),
        goes_on=one.why in {Why.RENAMED, Why.MOVED},
        places=tuple(
            FormerPlaceView(name, LinkView(f"{address}#{place.id}", place.name), name == place.id)
            for place in one.places
            for name in (place.id, *place.formerly)
        ),
        canonical=f"{site}{address}" if site and one.why is not Why.GONE else "",
    )


def _says(one: Former, say: Say) -> str:
    match one.why:
        case Why.RENAMED:
            return say("formerly_renamed")
        case Why.MOVED:
            return say("formerly_moved")
        case Why.NO_PAGE:
            return say("formerly_no_page")
        case Why.NO_LANGUAGE:
            return say("formerly_no_language", language=say.language_name(one.language))
        case Why.PAGE_LANGUAGE:
            return say("formerly_page_language", language=say.language_name(one.language))
        case Why.GONE:
            return say("formerly_gone")


def _label(one: Former, say: Say) -> str:
    if one.why is Why.GONE:
        return say("all_lessons")
    if one.label:
        return one.label
    of_page = one.why in {Why.MOVED, Why.PAGE_LANGUAGE}
    return say("formerly_page") if of_page else say("formerly_lesson")
