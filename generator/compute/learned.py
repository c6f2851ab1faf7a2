"""What was learned by a question asked before and after, with no more said than small counts allow."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction

from generator.compute.mcnemar import FEWEST, Chance, mcnemar
from generator.compute.small_counts import Part, part
from generator.model.tally import Twice

LEVEL = Fraction(1, 20)
"""Below this mid-p a difference is called larger than chance; the usual level, common practice."""


class Verdict(StrEnum):
    """What the test says."""

    TOO_FEW = "too_few"
    """Fewer than six changed their answer, or no count of them may be shown that says more."""
    MORE_RIGHT = "more_right"
    MORE_WRONG = "more_wrong"
    CHANCE = "chance"
    """Chance alone makes such a difference often enough."""
    HIDDEN = "hidden"
    """It depends on counts that are hidden."""


@dataclass(frozen=True, slots=True)
class Between:
    """The test of all counts that what is shown leaves open; both are one where none is hidden."""

    least: Chance
    """The smallest that is possible."""
    most: Chance
    """The largest that is possible."""

    @property
    def one(self) -> bool:
        """Whether there is nothing between them."""
        return self.least == self.most


@dataclass(frozen=True, slots=True)
class Cells:
    """How the answers of before and after go together; the ways to change and the ways to stay."""

    stayed_right: int
    """Right both times."""
    worse: int
    """From right to wrong."""
    better: int
    """From wrong to right."""
    stayed_wrong: int
    """Wrong both times."""


@dataclass(frozen=True, slots=True)
class Learned:
    """A question that was asked before and after."""

    question: str
    """Id of the stop that asks first."""
    pairs: int | None
    """Codes with both answers; nothing where they are few, and all else is hidden then."""
    before: Part | None
    """Who was right before; nothing where the pairs are few."""
    after: Part | None
    """Who was right after; nothing where the pairs are few."""
    cells: Cells | None
    """Nothing where one of them is small: with both parts shown, one would tell the others."""
    verdict: Verdict
    """What may be said of the difference."""
    chance: Between | None
    """Nothing where nothing is tested."""


def learned(twice: Twice, at_least: int) -> Learned:
    """What may be said of a question."""
    if twice.pairs < at_least:
        return Learned(twice.question, None, None, None, None, Verdict.HIDDEN, None)
    before = part(twice.right_before, twice.pairs, at_least)
    after = part(twice.right_after, twice.pairs, at_least)
    cells = Cells(twice.stayed_right, twice.worse, twice.better, twice.stayed_wrong)
    if min(cells.stayed_right, cells.worse, cells.better, cells.stayed_wrong) < at_least:
        verdict, chance = _from_parts(before, after)
        return Learned(twice.question, twice.pairs, before, after, None, verdict, chance)
    verdict, chance = _judged((cells.worse, cells.better), (cells.worse, cells.better))
    return Learned(twice.question, twice.pairs, before, after, cells, verdict, chance)


def _from_parts(before: Part, after: Part) -> tuple[Verdict, Between | None]:
    """What the parts that are shown tell by themselves, whatever the hidden counts are."""
    if not (isinstance(before.count, int) and isinstance(after.count, int)):
        return Verdict.HIDDEN, None
    gain = after.count - before.count
    fewest = max(0, -gain)
    most = min(before.count, after.of - after.count)
    return _judged((fewest, fewest + gain), (most, most + gain))


def _judged(fewest: tuple[int, int], most: tuple[int, int]) -> tuple[Verdict, Between | None]:
    """The verdict of all counts from the fewest to the most that changed: worse, and better.

    The difference is the same in all of them, so the more changed, the larger the p: the two ends
    hold all between them.
    """
    if sum(most) < FEWEST:
        return Verdict.TOO_FEW, None
    chance = Between(mcnemar(*fewest), mcnemar(*most))
    if sum(fewest) < FEWEST:
        sure = chance.least.mid_p >= LEVEL and chance.most.mid_p >= LEVEL
        return (Verdict.CHANCE if sure else Verdict.HIDDEN), None
    if chance.least.mid_p >= LEVEL:
        return Verdict.CHANCE, chance
    if chance.most.mid_p >= LEVEL:
        return Verdict.HIDDEN, chance
    return (Verdict.MORE_RIGHT if most[1] > most[0] else Verdict.MORE_WRONG), chance
