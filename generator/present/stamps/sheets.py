"""The page of a lesson's sheets, which needs no script: the stamp of each today, and of those printed before."""

from __future__ import annotations

import json
from collections.abc import Iterator

from generator.model.published import LessonState
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.page import STAMPS
from generator.present.stamps.past import PastSheet, changed_numbers, past_sheets
from generator.present.state_numbers import published_numbers
from generator.present.stops.in_lesson import stop_names
from generator.present.updates.moment import day_in_words
from generator.present.updates.said import SHEET_TITLES
from generator.present.views.stamps import PastSheetView, SheetNowView, SheetsView
from generator.present.words.say import Say

SHEETS_FILE = "sheets.json"
"""What the page of stamps fetches of a lesson that has past sheets; its name in the lesson's folder."""


def sheets_view(told: PageInLesson) -> SheetsView:
    """Everything the page shows."""
    say, surround = told.surround.say, told.surround
    pages = _pages(told)
    now = tuple(
        SheetNowView(say(title), told.stamps[sheet], pages.get(sheet, ""))
        for sheet, title in SHEET_TITLES.items()
        if sheet in told.stamps
    )
    return SheetsView(
        page=told.page,
        title=told.result.lesson.file.title,
        back=told.links.lesson,
        stamps=surround.folder + STAMPS,
        now=now,
        past=tuple(
            PastSheetView(say(SHEET_TITLES[one.sheet]), one.stamp, _says(one, say), changes)
            for one, changes in _past(told)
        ),
    )


def sheets_json(told: PageInLesson) -> str:
    """What is fetched of the lesson's past sheets; empty where it has none."""
    past = {
        one.stamp: {"since": one.since[:10], "until": one.until[:10], "changes": changes}
        for one, changes in _past(told)
    }
    return json.dumps(past, ensure_ascii=False, separators=(",", ":")) if past else ""


def _pages(told: PageInLesson) -> dict[str, str]:
    """Path of each page that is a sheet, by its name as one."""
    links, lesson = told.links, told.links.lesson.href
    others = (link.href for link in (*links.paper, *links.teachers, *links.whole_class))
    named = {one.rpartition("/")[2].removesuffix(".html"): one for one in others}
    return {"lesson": lesson, **named}


def _past(told: PageInLesson) -> Iterator[tuple[PastSheet, tuple[str, ...]]]:
    """Each past sheet, with the numbers that are others now."""
    result, say = told.result, told.surround.say
    past = past_sheets(told.surround.past, result.lesson.language, told.stamps)
    if not past:
        return
    now = LessonState(
        at="",
        language=result.lesson.language,
        numbers=published_numbers(result, say),
        stops={name: str(called) for name, called in stop_names(result, say).items()},
    )
    for one in past:
        yield one, changed_numbers(one, now, say)


def _says(one: PastSheet, say: Say) -> str:
    since = day_in_words(one.since, say)
    if not one.until:
        return say("sheets_past", since=since)
    return say("sheets_past_until", since=since, until=day_in_words(one.until, say))
