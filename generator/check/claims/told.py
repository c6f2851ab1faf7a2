"""What a lesson's texts claim, and which numbers they say, whether they are right or not: for whoever reads them over."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping

from generator.check.claims.read import claims_of
from generator.check.held_texts import HeldText, Medium, Said, held_texts, typed
from generator.check.spoken_numbers.passes import figures
from generator.compute.result import LessonResult
from generator.language import language_of
from generator.model.places import Path
from generator.model.texts import lesson_texts


def phrases(result: LessonResult) -> Mapping[Path, tuple[tuple[str, int], ...]]:
    """By a text's path in the lesson file, its claims and numbers as they are written, in their order.

    Each comes with how often the same words stand in the text before it.
    """
    language = language_of(result.lesson.language)
    texts = {
        one.path: typed(result.lesson, one, language)
        for one in lesson_texts(result.lesson.file)
        if one.text.strip()
    }
    return {path: tuple(_of_text(text)) for path, text in texts.items() if text.tells}


def in_captions_alone(result: LessonResult) -> tuple[str, ...]:
    """Sentences with a claim or a number that the captions have and the script has not."""
    scripts = {
        _bare(said)
        for text in held_texts(result)
        if text.medium is Medium.SCRIPT
        for said in text.said
    }
    return tuple(
        said.text
        for text in held_texts(result)
        if text.medium is Medium.CAPTIONS
        for said in text.said
        if _bare(said) not in scripts and any(_of_sentence(said, text))
    )


def _bare(said: Said) -> str:
    return " ".join(
        "".join(sign for sign in said.text.casefold() if sign.isalnum() or sign == " ").split()
    )


def _of_text(text: HeldText) -> Iterator[tuple[str, int]]:
    for said in text.said:
        for start, end in _of_sentence(said, text):
            phrase = said.text[start:end]
            alike = re.finditer(rf"(?<!\w){re.escape(phrase)}(?!\w)", text.text)
            yield phrase, sum(one.start() < said.start + start for one in alike)


def _of_sentence(said: Said, text: HeldText) -> Iterator[tuple[int, int]]:
    """Where both kinds begin and end, in the order of the sentence; a number inside a claim is not told again."""
    claims = [(one.start, one.end) for one in claims_of(said.text, text.language.claims)]
    found = figures(said.text, text.language.numbers_in(said.text), text.language)
    numbers = [(one.start, one.end) for one in found]
    end = 0
    for start, stop in sorted([*claims, *numbers]):
        if start >= end:
            yield start, stop
            end = stop
