"""The page of updates: the newest publications, and further pages with those before them."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence

from generator.model.published import Published
from generator.present.pages.home import PROSE
from generator.present.pages.page import Surround
from generator.present.updates.moment import day_in_words
from generator.present.updates.paths import FEED, UPDATES, older_path
from generator.present.updates.publications import updates
from generator.present.updates.told import by_day, told
from generator.present.views.page import LinkView
from generator.present.views.updates import UpdatesView, UpdateView

_MOST, _MOST_LESSONS = 50, 300
"""Publications on one page, and lessons told on it, some 300 bytes each; one publication is never parted."""


def updates_pages(
    published: Published,
    leads_on: Mapping[str, str],
    there: Collection[str],
    surround: Surround,
) -> tuple[tuple[str, UpdatesView], ...]:
    """Each page with its path in the language's folder; the one with the newest first.

    Older pages are numbered from the oldest on, so that one that is full stays as it is.

    Args:
        published: the record.
        leads_on: by id of a lesson that was renamed, the id it has today.
        there: ids of the lessons that the language has today.
        surround: of the language.
    """
    every = [
        told(one, there, surround) for one in updates(published, surround.say.language, leads_on)
    ]
    newest = next(_parted(every), [])
    older = [part[::-1] for part in _parted(every[len(newest) :][::-1])]
    links = tuple(
        LinkView(surround.folder + older_path(number), _span(part, surround))
        for number, part in reversed(tuple(enumerate(older, start=1)))
    )
    back = (LinkView(surround.folder + UPDATES, surround.say("updates_newest")),)
    return (
        (UPDATES, _view(UPDATES, newest, links, surround)),
        *(
            (older_path(number), _view(older_path(number), part, back, surround))
            for number, part in enumerate(older, start=1)
        ),
    )


def _parted(views: Sequence[UpdateView]) -> Iterator[list[UpdateView]]:
    """So many to a page."""
    part: list[UpdateView] = []
    lessons = 0
    for one in views:
        more = sum(max(1, len(group.lessons)) for group in one.lessons)
        if part and (len(part) == _MOST or lessons + more > _MOST_LESSONS):
            yield part
            part, lessons = [], 0
        part.append(one)
        lessons += more
    if part:
        yield part


def _span(part: Sequence[UpdateView], surround: Surround) -> str:
    say = surround.say
    first, last = day_in_words(part[-1].at, say), day_in_words(part[0].at, say)
    return say("updates_from_to", first=first, last=last) if first != last else first


def _older_title(path: str, part: Sequence[UpdateView], surround: Surround) -> str:
    """With its number: two pages may be of one day."""
    number = path.removesuffix(".html").rpartition("-")[2]
    return surround.say("updates_page_older", number=number, span=_span(part, surround))


def _view(
    path: str, part: Sequence[UpdateView], others: tuple[LinkView, ...], surround: Surround
) -> UpdatesView:
    say, site = surround.say, surround.site
    newest, first = path == UPDATES, site.languages[0]
    title = say("updates_page") if newest else _older_title(path, part, surround)
    return UpdatesView(
        page=surround.page(path, title, say("updates_says"), look=PROSE, searched=False),
        title=title,
        newest=newest,
        feed=surround.folder + FEED if newest and site.address else "",
        feed_title=say("updates_feed_title", program=site.name_in(say.language)),
        days=by_day(part),
        others=others,
        note_language=first if first != say.language else "",
    )
