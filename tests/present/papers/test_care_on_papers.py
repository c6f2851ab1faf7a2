"""What the Care promise asks of words, held against the papers of the demo, as another program reads them."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import pytest

from tests.care_rules import Rule, care_rules
from tests.lesson_facts import lesson_facts
from tests.made_papers import lines, words
from tests.project import ROOT

RULES = care_rules()
PAPERS = ("worksheet", "answers", "cards", "family", "notes")
LEARNER = frozenset({"worksheet", "answers", "cards", "family"})
"""What a child may read; the key lies beside the worksheet."""
ALL_OF = {"learner": LEARNER, "lessons": frozenset(PAPERS), "every": frozenset(PAPERS)}
read = cache(words)


def papers_of_rule(rule: Rule) -> frozenset[str]:
    """The papers that a rule is about; what it asks of a page it asks of the same as a file."""
    return frozenset().union(*(ALL_OF.get(page, frozenset({page})) for page in rule.pages))


def files(made: Path, rule: Rule, paper: str) -> list[Path]:
    """A paper of every lesson that has all facts of a rule, in its language and in usual letters."""
    top = made if rule.language == "en" else made / rule.language
    lessons = [facts.name for facts in lesson_facts(ROOT) if rule.where <= facts.facts]
    found = [top / name / "papers" / f"{paper}-a4.pdf" for name in lessons]
    return [file for file in found if file.is_file()]


@pytest.mark.parametrize("rule", RULES, ids=[f"{rule.title}-{rule.language}" for rule in RULES])
def test_papers_say_what_care_asks(made_papers: Path, rule: Rule) -> None:
    broken = {
        str(file.relative_to(made_papers)): said
        for paper in papers_of_rule(rule) & {*PAPERS}
        for file in files(made_papers, rule, paper)
        if (said := told_wrong(rule, file, paper))
    }
    assert broken == {}


def told_wrong(rule: Rule, file: Path, paper: str) -> tuple[str, ...]:
    """What is wrong with a file by a rule; a rule of one card is asked of all sheets of cards."""
    shown = cards_alone(file) if rule.in_class == "card" else read(file)
    if rule.in_class and paper != "cards":
        return ()
    # Beside an empty line to write on, the words of two problems would be read as one sentence.
    said = lines(file) if paper in {"worksheet", "answers"} else [shown]
    return (*rule.missing(shown), *(one for line in said for one in rule.wrong_words([line])))


def cards_alone(file: Path) -> str:
    """The words of the cards, without those to the adult, which stand on the last sheet."""
    both, heading = read(file), "Para la persona adulta" if "/es/" in str(file) else "For the adult"
    cards, found, _ = both.rpartition(heading)
    assert found, file
    return cards


def test_every_paper_is_asked_something() -> None:
    assert {*PAPERS} <= frozenset().union(*map(papers_of_rule, RULES))
