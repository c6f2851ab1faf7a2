"""Crockford's base 32: its tables, what is read as what, and the mistakes that its check symbol notices.

Source: Douglas Crockford, "Base 32 Encoding". The tables and the example are from memory [M]: 1234 is
``16J``, and ``16JD`` with its check symbol; the values beside them are computed [C].
"""

from __future__ import annotations

import random
from itertools import pairwise

import pytest

from generator.compute.base32 import CHECKS, SYMBOLS, Misread, decode, encode

TABLE = dict(zip("0123456789ABCDEFGHJKMNPQRSTVWXYZ", range(32), strict=True))  # M
CHECK_TABLE = {**TABLE, "*": 32, "~": 33, "$": 34, "=": 35, "U": 36}  # M


def test_the_tables_are_crockfords() -> None:
    assert {symbol: value for value, symbol in enumerate(SYMBOLS)} == TABLE
    assert {symbol: value for value, symbol in enumerate(CHECKS)} == CHECK_TABLE


@pytest.mark.parametrize(
    ("number", "length", "code"),
    [
        (1234, 3, "16JD"),  # M
        (0, 3, "0000"),
        (36, 3, "014U"),  # C: 1 × 32 + 4, and 36
        (32, 3, "010*"),
        (33, 3, "011~"),
        (34, 3, "012$"),
        (35, 3, "013="),
        (32**8 - 1, 8, "ZZZZ-ZZZZ-F"),  # C: 32⁸ − 1, and 32⁸ ≡ (−5)⁸ ≡ 16 modulo 37
    ],
)
def test_a_number_and_its_code(number: int, length: int, code: str) -> None:
    assert encode(number, length) == code
    assert decode(code) == (number, length)


@pytest.mark.parametrize(
    "written", ["16jd", "l6jd", "I6JD", "i6Jd", "1-6-J-D", "16J–D", "1‑6J−D", "-16JD-"]
)
def test_it_is_read_as_people_write_it(written: str) -> None:
    assert decode(written) == (1234, 3)


def test_an_o_is_a_zero() -> None:
    assert decode("O1o*") == decode("010*") == (32, 3)


@pytest.mark.parametrize("written", ["", "-", "1", "U6JD", "16U7", "1*J7", "16J!", "16 J7", "١٦J7"])
def test_what_is_no_code(written: str) -> None:
    assert decode(written) is Misread.NO_SYMBOL


@pytest.mark.parametrize(("number", "length"), [(-1, 3), (32**3, 3)])
def test_what_does_not_fit_is_refused(number: int, length: int) -> None:
    with pytest.raises(ValueError, match="does not fit"):
        encode(number, length)


def test_any_one_wrong_symbol_and_any_two_that_changed_places_are_noticed() -> None:
    draw = random.Random(13)  # noqa: S311  # no secret
    for _ in range(40):
        code = encode(draw.randrange(32**11), 11).replace("-", "")
        for at, old in enumerate(code):
            for new in CHECKS if at == len(code) - 1 else SYMBOLS:
                assert new == old or decode(code[:at] + new + code[at + 1 :]) == Misread.WRONG_CHECK
        for at, (first, second) in enumerate(pairwise(code)):
            if first != second:
                swapped = code[:at] + second + first + code[at + 2 :]
                assert isinstance(decode(swapped), Misread)


def test_of_any_changes_at_least_36_in_37_are_noticed(
    record_property: pytest.RecordProperty,
) -> None:
    """100,000 of them, each of two to eight symbols anywhere; 37 remainders leave one in 37."""
    draw, tries, passed = random.Random(37), 100_000, 0  # noqa: S311  # no secret
    code = list(encode(draw.randrange(32**11), 11).replace("-", ""))
    for _ in range(tries):
        changed = list(code)
        while changed == code:
            for at in draw.sample(range(len(code)), draw.randint(2, 8)):
                changed[at] = draw.choice(CHECKS if at == len(code) - 1 else SYMBOLS)
        passed += not isinstance(decode("".join(changed)), Misread)
    record_property("told", f"check symbol: {tries - passed:,} of {tries:,} changes noticed")
    assert passed <= tries / 37 * 1.06  # chance alone: four standard deviations are 0.77 in 37
