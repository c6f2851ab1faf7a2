"""The feed of updates: the publications of the page in Atom (RFC 4287), an entry each."""

from __future__ import annotations

from urllib.parse import urlsplit

from markupsafe import Markup, escape

from generator.present.cartridge.xml import Xml, document, element
from generator.present.pages.page import Surround
from generator.present.updates.line import one_line
from generator.present.updates.paths import FEED, UPDATES
from generator.present.views.updates import LessonUpdateView, UpdatesView, UpdateView

_SPACE = "http://www.w3.org/2005/Atom"
_NEVER = "1970-01-01T00:00:00Z"
"""When a feed without entries changed: the RFC asks for a moment (section 4.1.1), and there was none."""
_TITLES = 3
"""Lessons named in the title of an entry."""


def updates_feed(view: UpdatesView, begun: str, surround: Surround) -> bytes:
    """The file, the same for the same record; only a site with an address has one.

    An entry's id is made of the publication alone, so it stays when the site moves (RFC 4151).

    Args:
        view: the page with the newest publications.
        begun: the moment of the first publication ever.
        surround: of the language.
    """
    say, site = surround.say, surround.site
    entries = [one for _, publications in view.days for one in publications]
    here = surround.address(FEED)
    name = site.name_in(say.language)
    return document(
        element(
            "feed",
            element("id", _tag(site.address, begun, f"updates/{say.language}") if begun else here),
            element("title", view.feed_title),
            element("updated", max((one.changed_at for one in entries), default=_NEVER)),
            element("author", element("name", one_line(name))),
            element("link", rel="self", type="application/atom+xml", href=here),
            element("link", rel="alternate", type="text/html", href=surround.address(UPDATES)),
            *(_entry(one, surround) for one in entries),
            xmlns=_SPACE,
            xml_lang=say.locale,
        )
    )


def _entry(one: UpdateView, surround: Surround) -> Xml:
    say, site = surround.say, surround.site
    page = surround.address(UPDATES)
    stands = one.address or site.address
    return element(
        "entry",
        element("id", _tag(stands, one.at, f"updates/{say.language}/{one.at}")),
        element("title", _title(one, surround)),
        element("published", one.at),
        element("updated", one.changed_at),
        element("link", rel="alternate", type="text/html", href=f"{page}#{one.id}"),
        element("content", str(_content(one, surround)), type="html"),
    )


def _tag(address: str, at: str, what: str) -> str:
    """A tag URI (RFC 4151): who had which name on which day, and what was named then."""
    parts = urlsplit(address)
    path = parts.path.strip("/")
    return f"tag:{(parts.hostname or '').lower()},{at[:10]}:{path + '/' if path else ''}{what}"


def _title(one: UpdateView, surround: Surround) -> str:
    """The lessons that changed, else the day."""
    headings = [lesson.heading for lesson in one.lessons]
    if not headings:
        return one.day
    shown = headings[:_TITLES]
    if more := len(headings) - len(shown):
        shown.append(surround.say("update_more", n=more))
    return surround.say.listed(tuple(shown))


def _content(one: UpdateView, surround: Surround) -> Markup:
    """The same words as on the page, as a fragment of HTML (RFC 4287, section 3.1.1.2)."""
    parts = [Markup("<blockquote><p>{}</p></blockquote>").format(note) for note in one.notes]
    parts += [Markup("<p>{}</p>").format(line.text) for line in one.lines]
    parts += [_lesson(lesson, surround.site.address) for lesson in one.lessons]
    return Markup("").join(parts)


def _lesson(told: LessonUpdateView, address: str) -> Markup:
    link = Markup('<a href="{}">{}</a>')
    heading = link.format(address + told.href, told.heading) if told.href else escape(told.heading)
    names = Markup(" · ").join(
        link.format(address + one.href, one.label) if one.href else escape(one.label)
        for one in told.lessons
    )
    lines = Markup("").join(Markup("<li>{}</li>").format(line.text) for line in told.lines)
    return (
        Markup("<h3>{}</h3>").format(heading)
        + (Markup("<p>{}</p>").format(names) if names else Markup())
        + Markup("<ul>{}</ul>").format(lines)
    )
