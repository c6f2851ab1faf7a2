"""What may have happened when a gap or a count came out wrong.

Each mistake is a small procedure that does what the child does and gives the child's answer;
a wrong answer is read by finding the first procedure that gives it. The subtraction bugs are
those of Brown & Burton 1978 (Cognitive Science 2:155–192), most of which Young & O'Shea 1981
(Cognitive Science 5:153–177) found again in ten-year-olds; their names are from memory. The
slips with places, and those in dividing, are our own list: common practice, no source.

Two mistakes can give one answer: 50 − 24 = 34 is smaller-from-larger and also 0 − N = N. The
order of ``Mistake`` decides: the subtraction bugs from the most widespread on, adding, then the
slips that are known by nothing but the size of the error; below twenty a miscount comes before
them all. ``theme/js/mistakes.js`` does the same
in the browser, held to it by ``tests/examples/mistakes.json``.
"""

from __future__ import annotations

from collections.abc import Callable
from decimal import Decimal
from enum import StrEnum

_COUNTED_BELOW = 20
"""Below it children count rather than write digit under digit, so one out is a hop miscounted."""
_ONE = 10
"""In tenths."""
_Column = Callable[[int, int, int], int]
"""What two digits leave, given what the place before borrowed; below 0 where it borrows in turn."""


class Mistake(StrEnum):
    """A way to a wrong answer; the value is the end of its text's key, ``not_yet_smaller_from_larger``."""

    SMALLER_FROM_LARGER = "smaller_from_larger"
    """In each place the smaller digit is taken from the larger: 63 − 29 = 46."""
    NO_DECREMENT = "no_decrement"
    """A ten is traded for ten ones and still counted as a ten: 230 − 184 = 156."""
    ZERO_GIVES_DIGIT = "zero_gives_digit"
    """0 − N is written as N: 230 − 184 = 54."""
    ZERO_GIVES_ZERO = "zero_gives_zero"
    """0 − N is written as 0: 230 − 184 = 50."""
    ACROSS_ZERO = "across_zero"
    """Borrowing skips a 0 and leaves it a 0: 300 − 184 = 26."""
    ADDED = "added"
    """Both are put together: 230 − 184 = 414."""
    TOOK_ZERO = "took_zero"
    """Taking 0 away is taken to leave 0: 45 − 0 = 0."""
    SAME_NUMBER = "same_number"
    """Both sides hold one number, and that is given as the gap: 21 − 21 = 21."""
    OWN_NUMBER = "own_number"
    """What one side holds is given as the gap: 410 − 90 = 410."""
    FORGOT_TO_DIVIDE = "forgot_to_divide"
    """The gap is given as the count: 460 ÷ 10 = 460."""
    MULTIPLIED = "multiplied"
    """460 ÷ 10 = 4,600."""
    TOOK_ONE_AWAY = "took_one_away"
    """One move's worth is subtracted instead: 460 ÷ 10 = 450."""
    MOVED_ZERO = "moved_zero"
    """A 0 is kept in the wrong place: 460 ÷ 10 = 406."""
    COUNTED_LEFT_OVER = "counted_left_over"
    """What is left over becomes a count, or a part of one: 465 ÷ 10 = 47."""
    COUNTED_TENS = "counted_tens"
    """The tens are counted where a count is several of them: 270 ÷ 20 = 27."""
    DIVIDED_BY_TENS = "divided_by_tens"
    """Divided by the tens of a count without its 0: 270 ÷ 20 = 135."""
    GAVE_LEFT_OVER = "gave_left_over"
    """What is left over is given as the count: 27 ÷ 4 = 3."""
    COUNTED_HUNDREDS = "counted_hundreds"
    """The hundreds are given as the count: 320 ÷ 10 = 3."""
    STOPPED_AT_HUNDREDS = "stopped_at_hundreds"
    """The hundreds alone are counted out, and not what comes after them: 320 ÷ 10 = 30."""
    ONE_OFF = "one_off"
    """Counted once too often or too few: 16 − 9 = 8, 460 ÷ 10 = 47."""
    DROPPED_ZERO = "dropped_zero"
    """A tenth of the answer: 410 − 90 = 32."""
    KEPT_ZERO = "kept_zero"
    """Ten times the answer: 410 − 90 = 3,200."""
    TEN_OFF = "ten_off"
    """410 − 90 = 310."""
    HUNDRED_OFF = "hundred_off"
    """410 − 90 = 220."""


def gap_mistake(larger: Decimal, smaller: Decimal, answer: Decimal) -> Mistake | None:
    """How a wrong gap may have come about; nothing for the right one, or for one we cannot read.

    Args:
        larger, smaller: shown values in one unit, to a tenth at most.
        answer: what the child wrote, in the same unit.

    Raises:
        ValueError: a value is negative, finer than a tenth, or the smaller is the larger.
    """
    top, bottom = _tenths(larger), _tenths(smaller)
    if top < bottom:
        raise ValueError(f"{larger} is smaller than {smaller}")
    if counted(larger, smaller) and bottom and abs(answer * 10 - (top - bottom)) == _ONE:
        return Mistake.ONE_OFF
    return _first(answer * 10, Decimal(top - bottom), gap_answers(top, bottom))


def count_mistake(gap: Decimal, per: Decimal, answer: Decimal) -> Mistake | None:
    """How a wrong count may have come about; nothing for the right one, or for one we cannot read.

    Args:
        gap, per: the gap and how much of it is one count, in one unit.
        answer: the count the child wrote.

    Raises:
        ValueError: the gap is negative or ``per`` is not above zero.
    """
    answers = count_answers(gap, per)
    return _first(answer, gap // per, answers)


def count_answers(gap: Decimal, per: Decimal) -> dict[Mistake, tuple[Decimal, ...]]:
    """What each mistake makes of a count; empty where it cannot happen.

    Raises:
        ValueError: the gap is negative or ``per`` is not above zero.
    """
    if gap < 0 or per <= 0:
        raise ValueError(f"{gap} cannot be counted in steps of {per}")
    count = gap // per
    return {
        Mistake.FORGOT_TO_DIVIDE: (gap,),
        Mistake.MULTIPLIED: (gap * per,),
        Mistake.TOOK_ONE_AWAY: (gap - per,),
        Mistake.MOVED_ZERO: _zero_inside(int(count)),
        Mistake.COUNTED_LEFT_OVER: (count + 1, gap / per) if gap % per else (),
        **_tens_and_hundreds(gap, per),
        Mistake.GAVE_LEFT_OVER: (gap % per,) if gap % per else (),
        Mistake.ONE_OFF: (count + 1, count - 1),
        **_place_slips(count, Decimal(1)),
    }


def counted(larger: Decimal, smaller: Decimal) -> bool:
    """Whether children count from one number to the other: small and whole. Common practice, no source."""
    return larger < _COUNTED_BELOW and not (larger % 1 or smaller % 1)


def gap_answers(top: int, bottom: int) -> dict[Mistake, tuple[Decimal, ...]]:
    """What each mistake makes of a subtraction of tenths, in tenths; empty where it cannot happen."""
    bugs = bug_answers(top, bottom)
    return {
        **{bug: tuple(map(Decimal, answers)) for bug, answers in bugs.items()},
        Mistake.ADDED: (Decimal(top + bottom),),
        Mistake.TOOK_ZERO: () if bottom else (Decimal(0),),
        Mistake.SAME_NUMBER: (Decimal(top),) if top == bottom else (),
        Mistake.OWN_NUMBER: (Decimal(top), Decimal(bottom)) if top != bottom else (),
        Mistake.ONE_OFF: (Decimal(top - bottom + _ONE), Decimal(top - bottom - _ONE)),
        **_place_slips(Decimal(top - bottom), Decimal(10)),
    }


def bug_answers(top: int, bottom: int) -> dict[Mistake, tuple[int, ...]]:
    """What each documented subtraction bug makes of two numbers; empty where it cannot happen."""
    return {
        Mistake.SMALLER_FROM_LARGER: _columns(top, bottom, lambda a, b, _: abs(a - b)),
        Mistake.NO_DECREMENT: _columns(top, bottom, lambda a, b, _: (a - b) % 10),
        Mistake.ZERO_GIVES_DIGIT: _columns(
            top, bottom, lambda a, b, owed: a - b - owed if a or owed else b
        ),
        Mistake.ZERO_GIVES_ZERO: _columns(
            top, bottom, lambda a, b, owed: a - b - owed if a or owed else 0
        ),
        Mistake.ACROSS_ZERO: _across_zero(top, bottom),
    }


def _first(
    answer: Decimal, right: Decimal, answers: dict[Mistake, tuple[Decimal, ...]]
) -> Mistake | None:
    if answer == right:
        return None
    return next((mistake for mistake in Mistake if answer in answers.get(mistake, ())), None)


def _columns(top: int, bottom: int, column: _Column) -> tuple[int, ...]:
    """Subtract place by place, from the ones on."""
    answer = owed = 0
    one = 1
    while one <= top:
        left = column(top // one % 10, bottom // one % 10, owed)
        answer += left % 10 * one
        owed = int(left < 0)
        one *= 10
    return (answer,)


def _across_zero(top: int, bottom: int) -> tuple[int, ...]:
    """Borrow from the next digit that is not 0, and leave the zeros between as they are."""
    digits = [_digit(top, place) for place in range(len(str(top)))]
    answer, skipped = 0, False
    for place, a in enumerate(digits):
        b = _digit(bottom, place)
        if a < b:
            lender = next((at for at in range(place + 1, len(digits)) if digits[at]), None)
            if lender is None:
                return ()  # nothing is left to borrow from: this child would have noticed
            digits[lender] -= 1
            skipped = skipped or lender > place + 1
        answer += (a - b) % 10 * 10**place
    return (answer,) if skipped else ()


def _zero_inside(count: int) -> tuple[Decimal, ...]:
    """A number with one 0 put between its digits: 46 gives 406."""
    digits = str(count)
    return tuple(Decimal(f"{digits[:at]}0{digits[at:]}") for at in range(1, len(digits)))


def _tens_and_hundreds(gap: Decimal, per: Decimal) -> dict[Mistake, tuple[Decimal, ...]]:
    """Counts that see only the tens, or only the hundreds."""
    tens, hundreds = per // 10, gap // 100
    in_tens = not per % 10 and per > 10  # a count of ten is the tens themselves
    counted = hundreds > 0 and per < 100  # a count of a hundred is the hundreds
    return {
        Mistake.COUNTED_TENS: (gap // 10,) if in_tens and gap // 10 else (),
        Mistake.DIVIDED_BY_TENS: (gap / tens,) if in_tens else (),
        Mistake.COUNTED_HUNDREDS: (hundreds,) if counted else (),
        Mistake.STOPPED_AT_HUNDREDS: (hundreds * 100 // per,) if counted else (),
    }


def _place_slips(right: Decimal, one: Decimal) -> dict[Mistake, tuple[Decimal, ...]]:
    """Answers with the right digits in the wrong place, or one digit out by one."""
    return {
        Mistake.DROPPED_ZERO: (right / 10,),
        Mistake.KEPT_ZERO: (right * 10,),
        Mistake.TEN_OFF: (right + 10 * one, right - 10 * one),
        Mistake.HUNDRED_OFF: (right + 100 * one, right - 100 * one),
    }


def _digit(number: int, place: int) -> int:
    return int(number // 10**place % 10)


def _tenths(value: Decimal) -> int:
    tenths = value * 10
    if value < 0 or tenths % 1:
        raise ValueError(f"{value} is no shown value: negative, or finer than a tenth")
    return int(tenths)
