"""Words checked against numbers: what a lesson claims, held against what it computes."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from functools import cache, partial

from generator.check.claims.claim import Claim
from generator.check.claims.judge import holds
from generator.check.claims.offer import offer
from generator.check.claims.pair import Pair, Subject
from generator.check.claims.pairs import subject
from generator.check.claims.read import Sentence, claims_of, clause_before
from generator.check.held_texts import HeldText, amounts_named, held_texts, lone_captions
from generator.check.rule import rule, rule_of_words
from generator.check.spoken_of import spoken_of
from generator.compute.result import Compared, Comparison, LessonResult
from generator.language import Language
from generator.language.form import Form
from generator.language.grammar import Grammar, signs_in
from generator.model.filling import Brace
from generator.model.measure import Measure
from generator.problems import Problem, Weight

_DIRECTIONS = {Form.MORE, Form.LESS, Form.MOST, Form.LEAST}


@rule_of_words
def words_against_numbers(result: LessonResult) -> Iterator[Problem]:
    """Questions about claims of the lesson's texts in its language, its captions among them."""
    yield from claims_in(result, held_texts(result))


@rule
def captions_against_numbers(result: LessonResult) -> Iterator[Problem]:
    """The same for captions in a language that the lesson has no translation for."""
    yield from claims_in(result, lone_captions(result))


def claims_in(result: LessonResult, texts: tuple[HeldText, ...]) -> Iterator[Problem]:
    """Questions about claims of some texts that speak of a lesson."""
    for text in texts:
        grammar = text.language.claims
        if not text.tells or not signs_in(text.text, grammar):
            continue
        amounts = cache(partial(amounts_named, texts, text.stop, grammar))
        before = ""
        for said in text.said:
            sentence = Sentence(said.text, said.rows, before)
            before = said.text
            for claim in claims_of(said.text, grammar):
                at = said.start + claim.start
                if text.marked(at, said.start + claim.end, Brace.MEANT):
                    continue
                if claim.form is not Form.TIMES or claim.number not in amounts():
                    yield from _question(result, text, said.start, claim, sentence)


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
    result: LessonResult, text: HeldText, claim: Claim, sentence: Sentence
) -> Iterator[tuple[Subject, _Where]]:
    """What a claim may be about: what its own stop compares, else a comparison.

    A text of the whole lesson, such as its summary, may speak of any stop.
    """
    measure = _measure(claim, sentence, text.language.claims)
    stops = range(len(result.lesson.ids)) if text.stop is None else (text.stop,)
    seen: list[Comparison | Compared] = []
    for stop in stops:
        about = spoken_of(result, stop, measure)
        if about is None or about in seen:
            continue
        seen.append(about)
        if isinstance(about, Compared):
            pairs = tuple(Pair(one, other, directed=False) for one, other in about.pairs)
            where = _Where(result.lesson.stop_id(stop), about.measure.unit, text.language)
            yield Subject(pairs, named=False), where
        else:
            where = _Where(about.stop.id, about.stop.measure.unit, text.language)
            yield subject(claim, sentence, about, text.language), where


def _measure(claim: Claim, sentence: Sentence, grammar: Grammar) -> Measure | None:
    """The measure named in or right after a claim."""
    near = sentence.text[claim.start : claim.end + 25]
    for measure, pattern in grammar.measures.items():
        if pattern.search(near):
            return measure
    return None


def _question(
    result: LessonResult, text: HeldText, start: int, claim: Claim, sentence: Sentence
) -> Iterator[Problem]:
    """A question, if the claim holds of nothing it may be about."""
    untrue = []
    for about, where in _about(result, text, claim, sentence):
        failing = _failing(claim, about)
        if not failing:
            return
        untrue.append((failing, about, where))
    if not untrue:
        return
    failing, about, where = untrue[0]
    clause = clause_before(sentence.text, claim.start, where.language.claims)
    anywhere = "" if about.named else f" for any row or total of `{where.name}`"
    way_out = offer(claim, _nearest(claim, failing), where.unit, where.language.phrases)
    place, time = text.spot(start + claim.start)
    what = f"{time}“{clause.lstrip()}{claim.text}” does not hold{anywhere}"
    yield Problem(place, what, way_out, Weight.QUESTION)


def _failing(claim: Claim, about: Subject) -> list[Pair]:
    """Pairs that a claim is wrong of; none where another pair makes it right."""
    if claim.form in _DIRECTIONS and not about.named:
        return []  # some food always holds more; only a name makes it a claim
    failing = [pair for pair in about.pairs if not holds(claim, pair)]
    return [] if len(failing) < len(about.pairs) and not about.every else failing


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
