"""What the Care promise asks of words, held against the built demo in every language."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from typing import NotRequired, TypedDict

import pytest
import yaml

from tests.html_page import having, one, read_page, text

ROOT = Path(__file__).parents[2]


class Rule(TypedDict):
    """One entry of the data, as the file explains it."""

    title: str
    source: str
    pages: list[str]
    never: NotRequired[dict[str, list[str]]]
    says: NotRequired[dict[str, list[str]]]


RULES: list[Rule] = yaml.safe_load((ROOT / "tests/examples/care.yaml").read_text("utf-8"))
LEARNER = ("index", "cards", "worksheet", "answers", "practice", "transcript")
"""Pages of a lesson that a learner sees; the answer key lies beside the worksheet."""


def _asked() -> Iterator[object]:
    """Each rule in each language it has something to say about."""
    for rule in RULES:
        for language in sorted(rule.get("never", {}).keys() | rule.get("says", {}).keys()):
            yield pytest.param(rule, language, id=f"{rule['title']}-{language}")


@pytest.mark.parametrize(("rule", "language"), tuple(_asked()))
def test_pages_say_what_care_asks(built_site: Path, rule: Rule, language: str) -> None:
    found = list(_pages(built_site, language, rule["pages"]))
    assert found, "no page to look at"
    for page in found:
        shown = text(read_page(page))
        for pattern in rule.get("never", {}).get(language, ()):
            assert not re.search(pattern, shown, re.IGNORECASE), (page, pattern)
        for sentence in rule.get("says", {}).get(language, ()):
            assert sentence in shown, page


def _pages(site: Path, language: str, names: list[str]) -> Iterator[Path]:
    """The pages of a rule; a lesson that is not in the language has none there."""
    top = site if language == "en" else site / language
    lessons = [file.parent for file in sorted(top.glob("*/notes.html"))]
    for name in names:
        if name == "lessons":
            yield from (page for lesson in lessons for page in sorted(lesson.glob("*.html")))
        elif name == "learner":
            yield from (
                page
                for lesson in lessons
                for page in (lesson / f"{one}.html" for one in LEARNER)
                if page.is_file()
            )
        elif "/" in name or name.endswith(".html"):
            yield top / (name if name.endswith(".html") else f"{name}.html")
        else:
            yield from (lesson / f"{name}.html" for lesson in lessons)


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_move_stop_says_all_that_is_to_be_seen_to_first(
    built_site: Path, language: str
) -> None:
    """Adult, floor, warm-up, stop signs, medical help, water, chair: product.md, references.md 4."""
    words = yaml.safe_load((ROOT / f"site_data/words/{language}.yaml").read_text("utf-8"))
    wanted = [text for key, text in words.items() if re.fullmatch(r"before_moving_\d", key)]
    stops = [
        stop
        for page in _pages(built_site, language, ["index"])
        for stop in having(read_page(page), "stop-move")
    ]
    assert len(wanted) >= 5
    assert stops
    for stop in stops:
        assert [text(line) for line in one(stop, "before").iter("li")] == wanted
