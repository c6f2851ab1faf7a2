"""What a family talks about at home: the lesson's own questions, and none about bodies or about what was eaten."""

from __future__ import annotations

import re
from collections.abc import Iterator

from markupsafe import Markup

from generator.present.stops.kinds import kind_of
from generator.present.views.stop import StopView
from generator.present.words.say import Say

TALKS = 2
"""As many as a sheet on the kitchen table wants."""


def talks_at_home(stops: tuple[StopView, ...], say: Say) -> tuple[Markup, ...]:
    """Two things to talk about: those of the lesson that may go home, then the program's own."""
    own = (Markup.escape(say(key)) for key in ("family_talk_guess", "question_gap"))
    return (*_of_lesson(stops, say), *own)[:TALKS]


def may_go_home(text: str, say: Say) -> bool:
    """Whether a question holds none of the words that stay in the lesson; capitals are not told apart."""
    stays = say("family_stays_here").lower().split()
    return not any(word in stays for word in re.findall(r"\w+", text.lower()))


def _of_lesson(stops: tuple[StopView, ...], say: Say) -> Iterator[Markup]:
    for stop in stops:
        for talk in kind_of(stop).discussion(stop):
            if may_go_home(talk.prompt.striptags(), say):
                yield talk.prompt
