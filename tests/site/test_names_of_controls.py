"""No two controls that stand side by side are called nearly the same."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from xml.etree.ElementTree import Element

import pytest

from tests.html_page import pages, read_page, text


def alike(names: list[str]) -> list[str]:
    """Names that begin with the same word: who is read the page by ear tells them apart late."""
    begins = [name.split()[0].casefold() for name in names]
    return sorted(
        {name for name, begin in zip(names, begins, strict=True) if begins.count(begin) > 1}
    )


def together(page: Element) -> Iterator[list[str]]:
    """What is called a control within each form, and in a question's stop, once each."""
    for each in page.iter():
        if each.tag == "form" or "stop-ask" in each.get("class", "").split():
            buttons = [one for one in each.iter("button") if one.get("data-check") is not None]
            names = {text(one) for one in (*buttons, *each.iter("summary")) if text(one)}
            yield sorted(names)


def test_a_check_and_what_opens_the_answer_are_told_apart(built_site: Path) -> None:
    found = [
        (str(page.relative_to(built_site)), names)
        for page in pages(built_site)
        for names in together(read_page(page))
    ]
    assert any(len(names) > 1 for _, names in found)
    assert [(page, names) for page, names in found if alike(names)] == []


@pytest.mark.parametrize(
    ("names", "same"),
    [
        (
            ["Check my numbers", "Check your answer"],
            ["Check my numbers", "Check your answer"],
        ),
        (["Check my numbers", "Show the working", "Hint"], []),
        (["Revisar mis números", "Ver cómo se hace"], []),
    ],
)
def test_alike(names: list[str], same: list[str]) -> None:
    assert alike(names) == same
