"""What is left out of a long list of changes is counted, and a comment of a forge is never too long."""

from __future__ import annotations

import json

import pytest

from generator.model.published import LessonState
from generator.model.text_marks import For
from generator.present.state import KeptState, ToldText
from generator.present.words.say import Say
from generator.publish.changes import Compared
from generator.publish.changes_told import headline, sections
from generator.publish.changes_written import as_json, as_markdown, as_text
from generator.publish.compare import compare
from generator.publish.site_state import HeldLesson, SiteState
from tests.project import library


def state(title: str, texts: int, wording: str) -> HeldLesson:
    """A lesson with so many texts."""
    told = {
        f"lunch/{at}": ToldText(f"{wording} {at}", For.LEARNER_READS, "lunch")
        for at in range(texts)
    }
    said = LessonState("", "en", title, stops={"lunch": "Two *lunches*"}, texts=wording)
    return HeldLesson({"en": KeptState(said, told)}, {"en": {"index.html": title + wording}})


def compared(lessons: int, texts: int = 1) -> Compared:
    """So many lessons, every text of which is worded otherwise."""
    old, new = (
        SiteState(
            {f"lesson-{at:02}": state(f"Lesson {at}", texts, word) for at in range(lessons)}, {}
        )
        for word in ("Before", "After")
    )
    return Compared("HEAD", compare(old, new), ("A note",), library().words["en"])


def test_of_many_lessons_and_lines_the_rest_is_counted() -> None:
    text = as_text(compared(25, texts=12), everything=False)
    assert "Against HEAD: 25 lessons differ." in text
    assert "And 5 more: --all shows them" in text
    assert "  and 5 more: --all shows them" in text
    assert text.endswith("A note.")
    whole = as_text(compared(25, texts=12), everything=True)
    assert "more" not in whole
    assert whole.count("(learner reads)") == 25 * 12


def test_a_text_is_told_with_its_place_and_whom_it_is_for() -> None:
    (section,) = sections(compared(1), Say(library().words["en"]), everything=False)
    assert section.heading == "lesson-00 (en): Lesson 0"
    assert section.lines == ("“Two *lunches*”, 1 (learner reads): “After 0”, before “Before 0”",)


def test_markdown_reads_an_educators_words_as_words_and_is_cut_before_a_forge_refuses_it() -> None:
    assert "“Two \\*lunches\\*”" in as_markdown(compared(1), everything=False)
    long = as_markdown(compared(60, texts=60), everything=True)
    assert len(long) < 65_536
    assert long.endswith("python3 generator changes --all*")


def test_json_leaves_nothing_out() -> None:
    told = json.loads(as_json(compared(25, texts=12)))
    assert [len(one["texts"]) for one in told["lessons"]] == [12] * 25
    assert told["lessons"][0]["files"] == {"changed": ["index.html"], "gone": [], "new": []}


@pytest.mark.parametrize(
    ("lessons", "says"),
    [
        (0, "Nothing differs from HEAD."),
        (1, "Against HEAD: 1 lesson differs."),
        (2, "Against HEAD: 2 lessons differ."),
    ],
)
def test_the_headline_counts(lessons: int, says: str) -> None:
    assert headline(compared(lessons)) == says
