"""Subtraction practice from a seed: the same seed gives the same problems on any machine.

The numbers are chosen so that the documented subtraction bugs of ``mistakes.py`` lead to
different answers, for then a wrong answer tells what happened. ``theme/js/practice-numbers.js``
does the same in the browser, held to it by ``tests/examples/practice.json``.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from itertools import count, islice

from generator.compute.mistakes import Mistake, bug_answers
from generator.compute.text_hash import text_hash
from generator.model.grades import GradeBand

LARGEST = {GradeBand.K_2: 100, GradeBand.G3_5: 1000, GradeBand.G6_8: 3000}
"""Largest number by band: within 100 and within 1,000 as in CCSS 2.NBT.B.5 and 3.NBT.A.2 (first code from memory)."""
_TRIES = 16
"""Pairs looked at for one problem before the most telling of them is taken."""
_BEST = 3
"""The most ``_telling`` gives."""
_EVERY_THIRD = 3
"""Every third problem borrows at a 0, where children go wrong most; our choice, no source."""


@dataclass(frozen=True, slots=True)
class PracticeProblem:
    """One subtraction of whole numbers."""

    larger: int
    """What is subtracted from."""
    smaller: int
    """What is taken away."""

    @property
    def gap(self) -> int:
        """The answer."""
        return self.larger - self.smaller


@lru_cache(maxsize=64)
def practice_problems(seed: str, largest: int, number: int) -> tuple[PracticeProblem, ...]:
    """The first problems of a seed.

    Args:
        seed: any text; the lesson's id serves.
        largest: no number is larger, such as ``LARGEST[band]``.
        number: how many.
    """
    return tuple(islice(_problems(seed, largest), number))


def _problems(seed: str, largest: int) -> Iterator[PracticeProblem]:
    """Problems without end; none comes twice while there are others."""
    pairs = _pairs(seed, largest)
    seen: set[PracticeProblem] = set()
    for number in count(1):
        problem = _choose(list(islice(pairs, _TRIES)), seen, at_zero=number % _EVERY_THIRD == 0)
        seen.add(problem)
        yield problem


def _choose(
    pairs: list[PracticeProblem], seen: set[PracticeProblem], *, at_zero: bool
) -> PracticeProblem:
    """The first of the most telling pairs."""
    best, told = pairs[0], -1
    for pair in [pair for pair in pairs if pair not in seen] or pairs:
        telling = _telling(pair, at_zero=at_zero)
        if telling > told:
            best, told = pair, telling
        if told == _BEST:
            break  # nothing later can be better, and looking is what takes the time
    return best


def _telling(pair: PracticeProblem, *, at_zero: bool) -> int:
    """How well wrong answers to a problem can be told apart; 3 at best."""
    answers = bug_answers(pair.larger, pair.smaller)
    wrong = {bug: made[0] for bug, made in answers.items() if made and made[0] != pair.gap}
    borrows = len(wrong) > 1
    differ = borrows and len(set(wrong.values())) == len(wrong)
    fits = borrows and (Mistake.ZERO_GIVES_DIGIT in wrong) == at_zero
    return borrows + differ + fits


def _pairs(seed: str, largest: int) -> Iterator[PracticeProblem]:
    """Pairs of numbers that are neither tiny nor nearly alike."""
    draws = _draws(text_hash(seed))
    least = max(1, largest // 50)
    while True:
        one, other = (1 + next(draws) % largest for _ in range(2))
        if min(one, other, abs(one - other)) >= least:
            yield PracticeProblem(max(one, other), min(one, other))


def _draws(state: int) -> Iterator[int]:
    """Whole numbers by xorshift of 32 bits (Marsaglia 2003, J Stat Softw 8(14), shifts 13, 17, 5)."""
    state = state or 1  # from 0 it would never leave 0
    while True:
        state ^= (state << 13) & 0xFFFFFFFF
        state ^= state >> 17
        state ^= (state << 5) & 0xFFFFFFFF
        yield state >> 3  # the lowest bits are the weakest
