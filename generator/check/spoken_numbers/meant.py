"""Which of a lesson's numbers one that is said may be: of its unit, its kind, its row, its side."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from generator.check.claims.mentions import Finder, Seat
from generator.check.held_texts import Said
from generator.check.rows import rows_called
from generator.compute.figure import Figure
from generator.compute.result import Comparison
from generator.language import Language
from generator.language.number import Number
from generator.model.figure import FigureKind
from generator.model.names import TOTAL

Keep = Callable[[Figure], bool]


@dataclass(frozen=True, slots=True)
class Beside:
    """What stands beside a number in its sentence."""

    head: str
    """From the beginning of the sentence."""
    before: str
    """From the number before it."""
    after: str
    """Up to the number behind it."""
    tail: str
    """To the end of the sentence."""


def beside(said: Said, numbers: Sequence[Number], at: int) -> Beside:
    """What stands beside one of the numbers of a sentence."""
    text, number = said.text, numbers[at]
    low = numbers[at - 1].end if at else 0
    high = numbers[at + 1].start if at + 1 < len(numbers) else len(text)
    return Beside(
        text[: number.start],
        text[low : number.start],
        text[number.end : high],
        text[number.end :],
    )


class Meant:
    """Narrows the numbers of a lesson to those that are meant."""

    def __init__(
        self, computed: tuple[Figure, ...], comparison: Comparison | None, language: Language
    ) -> None:
        self._computed, self._comparison, self._language = computed, comparison, language
        self._finder = Finder(comparison, language) if comparison else None

    def narrowed(
        self, said: Said, near: Beside, seats: frozenset[Seat], *, ahead: bool
    ) -> tuple[Figure, ...]:
        """The numbers that one in a sentence can be; what would leave none of them is not heeded.

        Args:
            said: the sentence.
            near: what stands beside the number.
            seats: the foods that it is said of.
            ahead: whether what numbers belong to comes behind them: *25 in row one*.
        """
        if self._language.around.more_after.match(near.tail):
            return self._computed  # a gap that the check of claims looks at
        kind = self._kind(near)
        figures = self._computed
        keeps: list[Keep] = []
        if kind:
            keeps.append(lambda figure: figure.kind is kind)
        if self._comparison:
            rows = self._rows(said, near, seats, kind, ahead=ahead)
            side = None if seats or kind else self._side(said, near)
            if rows:
                keeps.append(lambda figure: figure.row in rows or not figure.row)
            if side is not None:
                wanted = FigureKind.HOLDS if rows - {TOTAL} else FigureKind.TOTAL
                keeps.append(lambda figure: figure.side == side and figure.kind is wanted)
            own = self._comparison.stop.id
            if keeps:
                keeps.append(lambda figure: figure.stop == own)
        for keep in keeps:
            figures = tuple(filter(keep, figures)) or figures
        return figures

    def _kind(self, near: Beside) -> FigureKind | None:
        known = self._language.said_of
        if known.gap_before.search(near.head) and not known.operator_after.match(near.tail):
            return FigureKind.GAP
        if known.counts.match(near.tail):
            return FigureKind.COUNT
        return FigureKind.LEFT_OVER if known.left_over.match(near.tail) else None

    def _rows(
        self,
        said: Said,
        near: Beside,
        seats: frozenset[Seat],
        kind: FigureKind | None,
        *,
        ahead: bool,
    ) -> frozenset[str]:
        """Names of the rows that the number can belong to; nothing where it may be any."""
        grammar = self._language.claims
        own = rows_called(near.after if ahead else near.before, grammar)
        called = own or rows_called(said.text, grammar)
        total = bool(grammar.total.search(said.text))
        if not called and not total and kind is FigureKind.GAP:
            called = said.rows or self._one_row(seats)
        names = self._names(called)
        return names | {TOTAL} if total and (names or kind) else names

    def _names(self, called: frozenset[int]) -> frozenset[str]:
        rows = self._comparison.rows if self._comparison else ()
        return frozenset(rows[row].id for row in called if -len(rows) <= row < len(rows))

    @staticmethod
    def _one_row(seats: frozenset[Seat]) -> frozenset[int]:
        rows = frozenset(row for row, _ in seats)
        return rows if len(rows) == 1 else frozenset()

    def _side(self, said: Said, near: Beside) -> int | None:
        """The one side that is said to hold the number, all its foods together."""
        if not self._finder or not (
            self._language.around.holds_before.search(near.head)
            or self._language.claims.total.search(said.text)
        ):
            return None
        named = self._finder.mentions(near.before)
        sides = {one.side for one in named}
        return sides.pop() if len(sides) == 1 else None


def rows_come_after(said: Said, numbers: Sequence[Number], language: Language) -> bool:
    """Whether the rows of a sentence are called behind its numbers: *25 in row one, 27 in row two*."""
    return bool(numbers) and not rows_called(said.text[: numbers[0].start], language.claims)
