"""Words checked against numbers: what a lesson claims, held against what it computes."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from functools import cache, partial

from generator.check.claims.claim import Claim
from generator.check.claims.judge import holds
from generator.check.claims.offer import offer
from generator.check.claims.pairs import Pair, Subject, subject
from generator.check.claims.read import Sentence, claims_of, clause_before, sentences
from generator.check.rule import rule_of_words
from generator.check.spoken_of import spoken_of
from generator.check.texts import place_inside
from generator.compute.result import Compared, LessonResult
from generator.language import Language, language_of
from generator.language.form import Form
from generator.language.grammar import Grammar
from generator.model.measure import Measure
from generator.model.text_marks import For
from generator.model.texts import LessonText, lesson_texts
from generator.problems import Place, Problem, Weight

_FAMILY = (For.LEARNER_READS, For.LEARNER_HEARS)
_DIRECTIONS = {Form.MORE, Form.LESS, Form.MOST, Form.LEAST}


@rule_of_words
def words_against_numbers(result: LessonResult) -> Iterator[Problem]:
    """Questions about claims of the lesson's own texts."""
    yield from claim_questions(result, result.lesson.language)


def claim_questions(result: LessonResult, tag: str) -> Iterator[Problem]:
    """Questions about claims that the numbers do not bear out, each with a phrase that does hold.

    Args:
        result: the lesson with its numbers; its texts are in the language of ``tag``.
        tag: of BCP 47; in a language of which nothing is known nothing is questioned.
    """
    language = language_of(tag)
    grammar = language.claims
    of_family = tuple(lesson_texts(result.lesson.file, *_FAMILY, prose=True))
    for one in of_family:
        if one.stop is None:
            continue  # what is said before the stops is of no comparison
        amounts = cache(partial(_amounts, of_family, one.stop, grammar))
        for sentence in sentences(one.text, grammar):
            for claim in claims_of(sentence.text, grammar):
                if claim.form is not Form.TIMES or claim.number not in amounts():
                    about, where = _about(result, one.stop, claim, sentence, language)
                    at = max(one.text.find(sentence.text), 0) + claim.start
                    place = result.lesson.places.at(*one.path)
                    spot = place_inside(result.lesson, place, one.text, at)
                    yield from _question(spot, claim, sentence, about, where)


@dataclass(frozen=True, slots=True)
class _Where:
    """What a claim was held against."""

    name: str
    """Id of the compare stop or the day."""
    unit: str
    """In which its numbers are given."""
    language: Language
    """Of the text."""


def _about(
    result: LessonResult, index: int, claim: Claim, sentence: Sentence, language: Language
) -> tuple[Subject, _Where]:
    """What a claim is about: what its own stop compares, else a comparison."""
    measure = _measure(claim, sentence, language.claims)
    about = spoken_of(result, index, measure)
    if about is None:
        return Subject((), named=False), _Where("", "", language)
    if isinstance(about, Compared):
        pairs = tuple(Pair(one, other, directed=False) for one, other in about.pairs)
        where = _Where(result.lesson.stop_id(index), about.measure.unit, language)
        return Subject(pairs, named=False), where
    where = _Where(about.stop.id, about.stop.measure.unit, language)
    return subject(claim, sentence, about, language), where


def _measure(claim: Claim, sentence: Sentence, grammar: Grammar) -> Measure | None:
    """The measure named in or right after a claim."""
    near = sentence.text[claim.start : claim.end + 25]
    for measure, pattern in grammar.measures.items():
        if pattern.search(near):
            return measure
    return None


def _amounts(
    texts: tuple[LessonText, ...], stop: int, grammar: Grammar
) -> frozenset[Fraction | None]:
    """The amounts that the texts of a stop name; a multiple may repeat one.

    *A pot holds four cups … four times as much* compares two amounts of one food, not the rows.
    """
    beside = (one.text for one in texts if one.stop == stop)
    found = (match["n"] for text in beside for match in grammar.amounts.finditer(text))
    return frozenset(map(grammar.number, found))


def _question(
    place: Place, claim: Claim, sentence: Sentence, about: Subject, where: _Where
) -> Iterator[Problem]:
    if claim.form in _DIRECTIONS and not about.named:
        return  # some food always holds more; only a name makes it a claim
    failing = [pair for pair in about.pairs if not holds(claim, pair)]
    if not failing or (len(failing) < len(about.pairs) and not about.every):
        return
    said = clause_before(sentence.text, claim.start, where.language.claims).lstrip() + claim.text
    anywhere = "" if about.named else f" for any row or total of `{where.name}`"
    way_out = offer(claim, _nearest(claim, failing), where.unit, where.language.phrases)
    yield Problem(place, f"“{said}” does not hold{anywhere}", way_out, Weight.QUESTION)


def _nearest(claim: Claim, pairs: list[Pair]) -> Pair:
    """The pair that comes nearest to the claim, turned the way the claim speaks."""
    turned = [_as_said(claim, pair) for pair in pairs]
    if claim.form not in {Form.TIMES, Form.SHARE}:
        return turned[0]
    return min(
        turned, key=lambda pair: abs(pair.first - Decimal(float(claim.number)) * pair.second)
    )


def _as_said(claim: Claim, pair: Pair) -> Pair:
    """The larger number first, or the smaller for a share, where the sentence does not say."""
    larger_first = pair.first >= pair.second
    return pair if pair.directed or larger_first == (claim.form is not Form.SHARE) else pair.turned
