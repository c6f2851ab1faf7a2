"""The ways to have a lesson where there is no network, as its page offers them."""

from __future__ import annotations

from fractions import Fraction

from generator.compute.result import LessonResult
from generator.present.pages.page import Surround
from generator.present.pictures.chart import LIBRARY
from generator.present.views.lesson import TakeHomeView
from generator.present.views.page import LinkView
from generator.present.words.say import Say, as_decimal

KEEP_LIST = "keep.json"
"""Name of the list of what to keep, beside the lesson."""
WORKER = "sw.js"
"""The service worker stands at the site's root: it may answer nothing above its own folder."""
ON_REQUEST = frozenset({LIBRARY})
"""What a kept lesson does without until somebody asks for it: larger than all the rest."""
_MEGABYTE = 1_000_000
_LEAST = Fraction(1, 10)  # a file is never 0 MB


def take_home_name(lesson: str) -> str:
    """Name of the copy's file beside the lesson's page."""
    return f"{lesson}-take-home.zip"


def take_home_view(result: LessonResult, size: int, surround: Surround) -> TakeHomeView:
    """The copy with its size in bytes, and what keeping the lesson on the device needs."""
    lesson, say = result.lesson.id, surround.say
    folder = f"{surround.folder}{lesson}/"
    label = say("take_home", size=megabytes(size, say))
    keep = folder + KEEP_LIST if surround.site.keep_lessons else ""
    return TakeHomeView(LinkView(folder + take_home_name(lesson), label), keep, WORKER)


def megabytes(size: int, say: Say) -> str:
    """Bytes as a family reads them: ``1.4 MB``."""
    found = as_decimal(max(Fraction(size, _MEGABYTE), _LEAST), 1)
    return say("size", size=say.number(found))
