"""What the files for learning platforms ask, and what they take for right, against the numbers of each question itself."""

from __future__ import annotations

import re
from decimal import Decimal
from pathlib import Path

import html5lib
import pytest
from lxml import etree

from tests.cartridges import QTI, Cartridges, items, of_site


@pytest.fixture(scope="module")
def cartridges(built_site: Path) -> Cartridges:
    """Those of the demo."""
    return of_site(built_site)


def words(told: etree._Element) -> list[str]:
    """The paragraphs of all texts in an element, read the way a browser reads them."""
    texts = [html5lib.parseFragment(one.text or "") for one in told.iter(f"{QTI}mattext")]
    return ["".join(line.itertext()) for text in texts for line in text]


def right(item: etree._Element) -> list[str]:
    """What gets all points."""
    return [
        one.findtext(f"{QTI}conditionvar/{QTI}varequal") or ""
        for one in item.iter(f"{QTI}respcondition")
        if one.findtext(f"{QTI}setvar") == "100"
    ]


def numbers(line: str) -> list[Decimal]:
    return [Decimal(one.replace(",", "")) for one in re.findall(r"\d[\d,]*(?:\.\d+)?", line)]


def test_what_is_right_is_what_the_numbers_of_the_question_come_to(cartridges: Cartridges) -> None:
    """Worked out again from what each question itself says; rows, totals, counts and days."""
    seen = {"gap": 0, "count": 0, "sums": 0, "day": 0}
    for path, cartridge in cartridges.items():
        if path.startswith("es/") or "all-lessons" in path:
            continue
        for item in items(cartridge, "assessment"):
            lines, answers = words(item.find(f"{QTI}presentation")), right(item)
            if lines[0].startswith("Two numbers"):
                larger, smaller = numbers(lines[0])
                groups = {"ones": 1, "twos": 2, "fours": 4, "fives": 5, "tens": 10, "twenties": 20, "fifties": 50, "hundreds": 100}  # fmt: skip
                per = next((n for word, n in groups.items() if f"many {word}?" in lines[1]), 0)
                per = per or int(numbers(lines[1])[0])
                wanted, kind = (larger - smaller) // per, "count"
                assert "Nobody moves because of what they ate." in lines[2]
            elif lines[-2].startswith("How much more"):
                first, second = (numbers(line.rpartition("(")[2])[0] for line in lines[:2])
                wanted, kind = abs(first - second), "gap"
            elif lines[-2].startswith("Add up"):
                first, second = (sum(numbers(line.rpartition(":")[2])) for line in lines[:2])
                wanted, kind = abs(first - second), "sums"
            elif lines[-2].startswith("How far apart are the two"):
                first, second = (numbers(line)[0] for line in lines[1:3])
                wanted, kind = abs(first - second), "day"
            else:
                continue
            assert numbers(answers[0]) == [wanted], (path, lines)
            seen[kind] += 1
    assert all(seen.values()), seen


def test_no_wrong_answer_is_right_and_none_is_told_twice(cartridges: Cartridges) -> None:
    told = 0
    for path, cartridge in cartridges.items():
        for item in items(cartridge, "assessment"):
            every = [one.text for one in item.iter(f"{QTI}varequal")]
            assert len(set(every)) == len(every), (path, item.get("title"))
            told += len(every) - len(right(item))
    assert told > 50


def test_bank_and_questions_given_together_ask_the_same(cartridges: Cartridges) -> None:
    for path, cartridge in cartridges.items():
        bank, quiz = items(cartridge, "objectbank"), items(cartridge, "assessment")
        assert [words(one) for one in bank] == [words(one) for one in quiz], path
        assert not {one.get("ident") for one in bank} & {one.get("ident") for one in quiz}
