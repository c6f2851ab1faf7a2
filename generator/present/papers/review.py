"""The sheet for somebody who knows to read a lesson by: every number with its source, every text, every line of care."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from markupsafe import Markup, escape

from generator.compute.answers import PARTING
from generator.compute.result import LessonResult
from generator.compute.reviewable import reviewable
from generator.compute.reviewed import HeldReview, held_reviews
from generator.model.places import Path
from generator.model.text_marks import For
from generator.model.texts import LessonText, lesson_texts
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.lesson_page import meta_line
from generator.present.state_numbers import published_numbers
from generator.present.stops.in_lesson import stop_names
from generator.present.views.review import (
    ReadNumberView,
    ReadPartView,
    ReadTextView,
    ReviewSheetView,
)
from generator.present.views.reviewed import ReviewedView
from generator.present.words.care import before_moving, care_lines
from generator.present.words.foreign import cited, like
from generator.present.words.move_text import move_text
from generator.present.words.numbers_named import number_name, number_said
from generator.present.words.prose import inline
from generator.present.words.reviewed import changed, read_by
from generator.present.words.say import Say
from generator.present.words.source_line import releases, source_line

Phrase = tuple[str, int]
"""A part of a text, and how often the same words stand in it before."""
_FOR_WIDTH = re.compile(r"(?<!\n)\n(?!\n|[-*•]\s|\d+[.)]\s)")
_EMPTY = re.compile(r"\n\s*\n")
_RIGHT = ".right"
"""How the name of the right one of some answers ends."""


@dataclass(frozen=True, slots=True)
class Claimed:
    """What a lesson's texts claim and which numbers they say, as the checks find it."""

    phrases: Mapping[Path, tuple[Phrase, ...]] = field(default_factory=dict)
    """By a text's path in the lesson file."""
    captions: tuple[str, ...] = ()
    """Sentences with either that the captions alone have."""


def review_view(told: PageInLesson, claimed: Claimed) -> ReviewSheetView:
    """Everything the sheet shows.

    Args:
        told: the lesson in its language.
        claimed: what its texts claim.
    """
    result, say = told.result, told.surround.say
    last = max(held_reviews(result), key=lambda one: one.review.on, default=None)
    seen = _Seen(last, result)
    headings = {"": say("reviewed_whole"), **stop_names(result, say)}
    release = _release(result)
    return ReviewSheetView(
        title=result.lesson.file.title,
        meta=meta_line(result.lesson.file, say),
        read=say.language_name(say.language),
        last=(ReviewedView(read_by(last, result, say), changed(last, result, say)),)
        if last
        else (),
        records=say("review_records", release=cited(release, say.language)) if release else "",
        parts=tuple(
            part
            for stop, heading in headings.items()
            if (part := _part(stop, heading, told, seen, claimed))
        ),
        captions=claimed.captions,
        care=tuple(_care(result, seen, say)),
    )


class _Seen:
    """What the last reader has seen as it is; everything where nobody has read the lesson, for then nothing is new."""

    def __init__(self, last: HeldReview | None, result: LessonResult) -> None:
        self.names = {one.path: one.name for one in reviewable(result).texts if one.path}
        self.new_texts = {one.path for one in last.texts if one.path} if last else set()
        self.new_moves = {one.name for one in last.texts if not one.path} if last else set()
        self.new_numbers = set(last.numbers) if last else set()


def _part(
    stop: str, heading: str, told: PageInLesson, seen: _Seen, claimed: Claimed
) -> ReadPartView | None:
    """One stop, its texts before its numbers; nothing where it has neither."""
    result, say = told.result, told.surround.say
    texts = tuple(
        _text(one, seen, claimed)
        for one in lesson_texts(result.lesson.file, For.LEARNER_READS, For.LEARNER_HEARS)
        if _stop(one, result) == stop and one.mark.translated and not one.mark.by_words
        if one.text.strip() and one.path[-1] != "title"
    )
    numbers = tuple(_numbers(stop, result, seen, say))
    return ReadPartView(heading, texts, numbers) if texts or numbers else None


def _release(result: LessonResult) -> str:
    """The release of all food records; nothing where there are several, or none."""
    found = releases(result.figures)
    return found[0] if len(found) == 1 else ""


def _stop(one: LessonText, result: LessonResult) -> str:
    if one.stop is not None:
        return result.lesson.stop_id(one.stop)
    return PARTING if one.path[0] == PARTING else ""


def _text(one: LessonText, seen: _Seen, claimed: Claimed) -> ReadTextView:
    return ReadTextView(
        _in_bold(inline(like(one.text, _flowing(one.text))), claimed.phrases.get(one.path, ())),
        one.mark.whom is For.LEARNER_HEARS,
        seen.names.get(one.path, "").endswith(_RIGHT),
        one.path in seen.new_texts,
    )


def _flowing(text: str) -> str:
    """Paragraphs as lines: what was broken only for width is one line, and none is empty."""
    return _EMPTY.sub("\n", _FOR_WIDTH.sub(" ", text))


def _in_bold(html: Markup, phrases: Sequence[Phrase]) -> Markup:
    """A text with phrases in bold; one that Markdown has taken apart stays as it is."""
    spans: set[tuple[int, int]] = set()
    for phrase, before in phrases:
        written = re.escape(str(escape(phrase)))
        found = [one.span() for one in re.finditer(rf"(?<!\w){written}(?!\w)", html)]
        spans.update(found[before : before + 1])
    safe, done, last = str(html), "", 0
    for start, end in sorted(spans):
        if start >= last:
            done += f"{safe[last:start]}<strong>{safe[start:end]}</strong>"
            last = end
    return Markup(done + safe[last:])  # noqa: S704  # it was safe, and what is put in is an element of ours


def _numbers(stop: str, result: LessonResult, seen: _Seen, say: Say) -> Iterator[ReadNumberView]:
    published, release = published_numbers(result, say), _release(result)
    for figure in result.figures:
        if figure.stop == stop:
            number = published[figure.id]
            yield ReadNumberView(
                number_said(number, say),
                number_name(number, "", say),
                source_line(figure, say, release),
                figure.id in seen.new_numbers,
            )


def _care(result: LessonResult, seen: _Seen, say: Say) -> Iterator[ReadTextView]:
    """The box at the top, what stands before moving, and each move with its seated version and its caution."""
    lines = list(care_lines(result, say))
    if result.moved:
        lines += [say("move_team"), *before_moving(say)]
    for line in lines:
        yield ReadTextView(escape(line), heard=False, right=False, new=False)
    for name, move in {one.move_id: one.move for one in result.moved}.items():
        words = move_text(move, say)
        every = (*words.steps, words.seated, words.care)
        head = escape(words.name) + Markup(" (") + escape(words.count_is) + Markup("). ")
        html = head + Markup(" ").join(map(escape, every))
        new = f"moves.{name}" in seen.new_moves
        yield ReadTextView(html, heard=False, right=False, new=new)
