"""What the script says at a stop and the captions do not: a number, a row, a food, the call to pause."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from difflib import SequenceMatcher

from generator.check.claims.mentions import Finder, Seat, held_at
from generator.check.held_texts import HeldText, Medium, held_texts
from generator.check.rows import rows_called
from generator.check.rule import rule_of_words
from generator.compute.result import Comparison, LessonResult
from generator.problems import Problem, Weight

_WORD = re.compile(r"[\d.,]*\d|[^\W\d_]+")


@rule_of_words
def unlike_script(result: LessonResult) -> Iterator[Problem]:
    """Questions about captions that leave out or change what the learner needs at a stop.

    The words of both are laid side by side; only what tells a number, a row, a food with its number
    or that the player halts is asked about, for nobody says every word as it was written.
    """
    texts = held_texts(result)
    scripts = {one.stop: one for one in texts if one.medium is Medium.SCRIPT}
    for text in texts:
        script = scripts.get(text.stop)
        if script and text.medium is Medium.CAPTIONS and text.text.strip():
            yield from _misheard(text, script)
            yield from _not_called(result, text, script)
            yield from _not_paused(text, script)


def _misheard(captions: HeldText, script: HeldText) -> Iterator[Problem]:
    """A number word that became another word, and a number that the script does not have."""
    said = _numbers(script)
    for ours, theirs in _changed(captions, script):
        wanted = script.language.numbers_in(theirs.text)
        heard = captions.language.numbers_in(ours.text)
        if captions.marked(ours.start, ours.start + len(ours.text)):
            continue
        if len(wanted) == 1 and not heard and " " not in ours.text:
            what = f"“{ours.text}” stands where the script says “{theirs.text}”"
            yield _question(captions, ours.start, what, f"write `{theirs.text}`, if that is heard")
        elif len(heard) == 1 and not wanted and heard[0].value not in said | _shown(captions):
            what = f"“{heard[0].text}” is not said in the script of this stop"
            hint = "listen again, and write what is said"
            yield _question(captions, ours.start + heard[0].start, what, hint)


def _shown(captions: HeldText) -> frozenset[Decimal]:
    """Small numbers are mostly words: nobody is asked about *one of them*."""
    return frozenset(
        number.value
        for number in captions.language.numbers_in(captions.text)
        if number.in_words and number.value <= 12
    )


@dataclass(frozen=True, slots=True)
class _Words:
    """Words that stand beside each other in a text."""

    text: str
    start: int


def _changed(captions: HeldText, script: HeldText) -> Iterator[tuple[_Words, _Words]]:
    """Where captions have other words than the script; words added or left out beside none."""
    ours, theirs = (list(_WORD.finditer(one.text)) for one in (captions, script))
    matcher = SequenceMatcher(
        None, [one[0].lower() for one in ours], [one[0].lower() for one in theirs], autojunk=False
    )
    for tag, a, b, c, d in matcher.get_opcodes():
        if tag in {"replace", "delete"}:
            yield _words(captions.text, ours[a:b]), _words(script.text, theirs[c:d])


def _words(text: str, found: list[re.Match[str]]) -> _Words:
    return (
        _Words(text[found[0].start() : found[-1].end()], found[0].start())
        if found
        else _Words("", 0)
    )


def _not_called(result: LessonResult, captions: HeldText, script: HeldText) -> Iterator[Problem]:
    """Rows that the script calls, and foods that it gives their numbers, of which nothing is left."""
    grammar = script.language.claims
    heard = rows_called(captions.text, grammar)
    for row in sorted(rows_called(script.text, grammar) - heard):
        called = f"row {row + 1}" if row >= 0 else "the last row"
        what = f"the script calls {called} at this stop, and the captions do not"
        yield _question(captions, 0, what, "write it where it is said")
    stop = "" if script.stop is None else result.lesson.stop_id(script.stop)
    comparison = result.comparisons.get(stop)
    if comparison:
        yield from _foods_left_out(comparison, captions, script)


def _foods_left_out(
    comparison: Comparison, captions: HeldText, script: HeldText
) -> Iterator[Problem]:
    told, heard = _told(comparison, script), _told(comparison, captions)
    said, written = _numbers(captions), _numbers(script)
    for seat in sorted(told - heard):
        held = held_at(comparison, seat)
        if held.shown.value in written and held.shown.value not in said:
            name = held.name(script.language.tag).words
            what = (
                f"the script names “{name}” with its number at this stop, and the captions do not"
            )
            yield _question(captions, 0, what, "write it where it is said")


def _told(comparison: Comparison, text: HeldText) -> frozenset[Seat]:
    """The foods that a text names without a doubt."""
    named = Finder(comparison, text.language).mentions(text.text)
    return frozenset(seat for one in named if len(one.seats) == 1 for seat in one.seats)


def _numbers(text: HeldText) -> frozenset[Decimal]:
    return frozenset(number.value for number in text.language.numbers_in(text.text))


def _not_paused(captions: HeldText, script: HeldText) -> Iterator[Problem]:
    """The script tells the learner that the player halts, and the captions do not."""
    pause = script.language.said_of.pause
    if pause.search(script.text) and not pause.search(captions.text):
        what = "the script says to pause at this stop, and the captions do not"
        yield _question(captions, len(captions.text) - 1, what, "write it where it is said")


def _question(captions: HeldText, offset: int, what: str, hint: str) -> Problem:
    place, time = captions.spot(offset)
    return Problem(place, time + what, hint, Weight.QUESTION)
