"""What an educator typed for rows, read into wishes; each refusal says what to write."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal, InvalidOperation
from difflib import get_close_matches

from generator.check.caps import AT_ONE_STOP
from generator.compute.offers import left_out
from generator.compute.pair_wishes import PairWishes
from generator.compute.trading import Trading
from generator.model.food import Allergen
from generator.model.grades import Grades, parse_grades
from generator.model.library import Library
from generator.model.measure import Measure


class WishError(Exception):
    """A wish that cannot be read."""

    def __init__(self, option: str, says: str) -> None:
        super().__init__(says)
        self.option = option
        """The option it was typed after, without its hyphens."""
        self.says = says
        """What is wrong and what to write."""


@dataclass(frozen=True, slots=True)
class Typed:
    """Each wish as it was typed; empty where it is all the same."""

    measure: str
    gap: str
    grades: str
    trading: str
    per: str
    left: str
    groups: str
    without: str
    wanted: str
    """After ``--with``."""


def read_wishes(library: Library, typed: Typed) -> PairWishes:
    """The wishes, held against the library.

    Raises:
        WishError: one cannot be read, or names what is not there.
    """
    measure = Measure[_one("measure", typed.measure, Measure).upper()]
    grades = _grades(typed.grades)
    per, left = _counting(typed)
    groups = {food.entry.group for food in library.foods.values()}
    return PairWishes(
        measure=measure,
        gap=_gap(typed.gap),
        grades=grades,
        trading=Trading(_one("trading", typed.trading, Trading)) if typed.trading else None,
        per=per,
        most_counts=most_counts(library, grades),
        left=left,
        groups=frozenset(_each("groups", typed.groups, groups)),
        without=frozenset(map(Allergen, _each("without", typed.without.lower(), Allergen))),
        wanted=_wanted(library, typed.wanted, measure) if typed.wanted else None,
    )


def most_counts(library: Library, grades: Grades) -> int:
    """The largest cap of any move for the youngest of some grades, and no more than one stop takes."""
    caps = (move.caps.for_band(grades.band) for move in library.moves.values())
    most = AT_ONE_STOP[grades.band]
    return min(max(caps, default=most), most)


def _number(option: str, text: str) -> Decimal:
    try:
        number = Decimal(text.strip())
    except InvalidOperation:
        number = Decimal("NaN")
    if not number.is_finite() or not 0 <= number <= 100_000 or number * 10 % 1:
        raise WishError(option, f"`{text}` is no such number; write 40 or 2.5")
    return number


def _gap(text: str) -> tuple[Decimal, Decimal] | None:
    """``20-60``, or one number alone."""
    if not text:
        return None
    first, dash, last = text.partition("-")
    least = _number("gap", first)
    most = _number("gap", last) if dash else least
    if most < least:
        raise WishError("gap", f"`{text}` runs backwards; write {most}-{least}")
    return least, most


def _grades(text: str) -> Grades:
    try:
        return parse_grades(text)
    except ValueError as error:
        raise WishError("grades", f"`{text}` {error}") from None


def _counting(typed: Typed) -> tuple[Decimal | None, Decimal | None]:
    """What is left over needs a step that it is left over of, and is less than it."""
    per = _number("per", typed.per) if typed.per else None
    left = _number("left", typed.left) if typed.left else None
    if per == 0:
        raise WishError("per", "no move stands for 0; write 5 or 10")
    if left is not None and per is None:
        raise WishError("left", "add --per, such as --per 10")
    if left is not None and per is not None and left >= per:
        raise WishError("left", f"less than {per} is left over")
    return per, left


def _wanted(library: Library, text: str, measure: Measure) -> str:
    name = _one("with", text, library.foods)
    if left_out([library.foods[name]]):
        says = (
            f"`{name}` is left out: it is eaten only cooked, or nobody has looked at its allergens"
        )
        raise WishError("with", f"{says}; choose another food")
    if library.foods[name].value(measure) is None:
        raise WishError(
            "with", f"the record of `{name}` has no value for {measure}; choose another food"
        )
    return name


def _each(option: str, text: str, known: Iterable[str]) -> tuple[str, ...]:
    """Words with commas between them."""
    words = [part.strip() for part in text.split(",") if part.strip()]
    return tuple(_one(option, word, known) for word in words)


def _one(option: str, word: str, known: Iterable[str]) -> str:
    """The word as it is known."""
    names = sorted(map(str, known))
    if word in names:
        return word
    near = get_close_matches(word, names, n=1, cutoff=0.6)
    hint = f"did you mean `{near[0]}`?" if near else f"it can be {', '.join(names[:12])}"
    raise WishError(option, f"there is no `{word}`; {hint}")
