"""A hundred past states of a lesson: every stamp it ever printed is known, and told what its sheet is worth today."""

from __future__ import annotations

import json
import re
import shutil
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path
from random import Random

import pytest
from playwright.sync_api import Page, expect

from generator.compute.figure import Figure
from generator.making import in_languages
from generator.model.figure import FigureKind
from generator.model.published import LessonState, Publication
from generator.present.stamps.alike import alike
from generator.present.state import kept_state
from generator.publish.record import append_publication
from generator.read.library import read_library
from generator.steps.surroundings import surroundings
from generator.steps.work import work_lesson
from tests.engine.small_site import FOODS, built, lesson_with, small_site

STATES = 100
RENAMED, GONE = "older", "lost"


@dataclass(frozen=True)
class Before:
    """What a lesson was once: its stamps, and its ledger."""

    day: str
    stamps: Mapping[str, str]
    numbers: Mapping[str, tuple[str, FigureKind]]
    """By id, each as a reader sees it; what a food holds by food and amount, wherever it stands."""


@dataclass(frozen=True)
class PastSite:
    site: Path
    states: list[Before]
    """The last is what the lesson is today."""
    gone: Before
    renamed: Before


class Author:
    """Writes one lesson after the other into a site."""

    def __init__(self, root: Path) -> None:
        self.root = root
        self.random = Random("a hundred states")  # noqa: S311  # no secret
        self.library = read_library(root)
        self.around = surroundings(root, self.library)

    def lesson(self) -> dict[str, object]:
        """Any lesson: some food, amount, count and wording."""
        pick = self.random.choice
        made = lesson_with(pick(FOODS[1:]), title=pick(("A lunch", "Two lunches")))
        text = json.dumps(made).replace("150 g", f"{pick((100, 150, 220))} g")
        text = text.replace('"one_move_per": 10', f'"one_move_per": {pick((10, 20))}')
        changed: dict[str, object] = json.loads(text)
        changed["summary"] = pick(("One row.", "A row.", "The row."))
        return changed

    def write(self, name: str, lesson: Mapping[str, object]) -> None:
        file = self.root / f"lessons/{name}/lesson.yaml"
        file.parent.mkdir(exist_ok=True)
        file.write_text(json.dumps(lesson), "utf-8")

    def says(self, name: str, lesson: Mapping[str, object], day: str) -> tuple[Before, LessonState]:
        self.write(name, lesson)
        worked = work_lesson(self.root, f"lessons/{name}/lesson.yaml", self.library)
        (made,) = in_languages(worked.results, self.around)
        numbers = {_name(one): (f"{one.value:f}", one.kind) for one in made.result.figures}
        return Before(day, made.told.stamps, numbers), kept_state(made.told, ()).state


def _name(one: Figure) -> str:
    return f"{one.foods[0].item}" if one.kind is FigureKind.HOLDS else one.id


def out(root: Path, day: str, **lessons: LessonState) -> None:
    publication = Publication(f"{day}T08:00:00Z", "0.3", "", ("en",), tuple(lessons))
    append_publication(root, publication, {name: {"en": one} for name, one in lessons.items()})


def day_of(n: int) -> str:
    return f"2026-{1 + n // 28:02}-{1 + n % 28:02}"


@pytest.fixture(scope="module")
def past(tmp_path_factory: pytest.TempPathFactory) -> PastSite:
    root = small_site(tmp_path_factory.mktemp("past") / "site")
    author = Author(root)
    gone, lost = author.says(GONE, author.lesson(), day_of(0))
    renamed, older = author.says(RENAMED, author.lesson(), day_of(0))
    out(root, day_of(0), **{GONE: lost, RENAMED: older})
    states = []
    for n in range(1, STATES + 1):
        state, said = author.says("one", author.lesson(), day_of(n))
        out(root, day_of(n), one=said)
        states.append(state)
    author.write("two", {**lesson_with(FOODS[1], title="Lesson two"), "formerly": [RENAMED]})
    (root / "lessons/two/lesson.es.yaml").unlink()
    for name in (GONE, RENAMED):
        shutil.rmtree(root / "lessons" / name)
    made = built(root)
    assert isinstance(made, dict), made
    return PastSite(root / "site", states, gone, renamed)


def looked_up(site: Path, stamp: str, lesson: str) -> list[object]:
    """What is told of a stamp as one of this lesson; another may print the very same."""
    told = json.loads((site / f"stamps/{alike(stamp)[0]}.json").read_text("utf-8"))[stamp]
    (one,) = (list(sheet) for sheet in told if sheet[0] == lesson)
    return one


def test_each_of_a_hundred_states_is_known_by_its_stamps(past: PastSite) -> None:
    *before, today = past.states
    told = json.loads((past.site / "one/sheets.json").read_text("utf-8"))
    seen: set[str] = set()
    for sheet, stamp in ((sheet, stamp) for one in before for sheet, stamp in one.stamps.items()):
        now = today.stamps[sheet] == stamp
        assert looked_up(past.site, stamp, "one") == ["one", "en", sheet, int(now)]
        assert (stamp in told) is not now
        seen.add(stamp)
    assert told.keys() == seen - set(today.stamps.values())
    assert len(told) > STATES


def test_a_sheet_is_told_when_it_was_right(past: PastSite) -> None:
    told = json.loads((past.site / "one/sheets.json").read_text("utf-8"))
    for stamp, one in told.items():
        bore = [n for n, state in enumerate(past.states) if stamp in state.stamps.values()]
        assert one["since"] == past.states[bore[0]].day
        assert one["until"] == past.states[bore[-1] + 1].day


def test_the_numbers_that_differ_are_told_and_no_others(past: PastSite) -> None:
    today = past.states[-1]
    told = json.loads((past.site / "one/sheets.json").read_text("utf-8"))
    with_numbers = 0
    for stamp, one in told.items():
        state = [state for state in past.states if stamp in state.stamps.values()][-1]
        on_notes = state.stamps["notes"] == stamp
        other = [
            [held[name][0] for held in (state.numbers, today.numbers) if name in held]
            for name in {**state.numbers, **today.numbers}
            if state.numbers.get(name) != today.numbers.get(name)
            and (on_notes or (state.numbers | today.numbers)[name][1] is not FigureKind.MINUTES)
        ]
        said = [sorted(re.findall(r"\d[\d.]*(?=[\s.,:]|\b)", line)) for line in one["changes"]]
        assert bool(said) is bool(other), stamp
        for values in other:
            assert any(set(values) <= set(numbers) for numbers in said), (values, one["changes"])
        known = {value for values in other for value in values}
        for line, numbers in zip(one["changes"], said, strict=True):
            assert known & set(numbers), line
        with_numbers += bool(other)
    assert 0 < with_numbers < len(told)


def test_a_renamed_lesson_knows_the_sheets_of_its_older_name(past: PastSite) -> None:
    told = json.loads((past.site / "two/sheets.json").read_text("utf-8"))
    for sheet, stamp in past.renamed.stamps.items():
        _, _, which, now = looked_up(past.site, stamp, "two")
        assert which == sheet
        assert bool(now) is (stamp not in told)


def test_a_lesson_that_is_gone_is_said_to_be(past: PastSite) -> None:
    for sheet, stamp in past.gone.stamps.items():
        told = looked_up(past.site, stamp, GONE)
        assert told[:5] == [GONE, "en", sheet, 0, day_of(1)]
        assert told[5] in {"A lunch", "Two lunches"}


def ask(page: Page, stamp: str) -> None:
    page.get_by_label("The six signs").fill(stamp)
    page.keyboard.press("Enter")


def test_the_page_answers_by_keyboard_in_any_hand(
    page: Page,
    past: PastSite,
    serve: Callable[[Path], str],
    axe: Callable[[Page], list[str]],
) -> None:
    at = serve(past.site)
    told = json.loads((past.site / "one/sheets.json").read_text("utf-8"))
    stamp, changes = max(((s, one["changes"]) for s, one in told.items()), key=lambda x: len(x[1]))
    page.set_viewport_size({"width": 320, "height": 640})
    page.goto(f"{at}stamps.html#{past.states[-1].stamps['worksheet'].lower()}")
    answer = page.locator("stamp-reader [role=status]")
    expect(answer).to_contain_text("It is right: nothing printed on it has changed.")
    expect(answer).to_contain_text("Worksheet")
    ask(page, f"{stamp[:3].lower()} {stamp[3:]}")
    expect(answer).to_contain_text("It does not hold any more.")
    expect(answer.locator("li")).to_have_text(changes)
    assert axe(page) == []
    assert page.evaluate("document.documentElement.scrollWidth") <= 320
    answer.get_by_role("link").press("Enter")
    expect(page.locator(":target")).to_contain_text(stamp)
    page.go_back()
    ask(page, past.gone.stamps["cards"])
    expect(answer).to_contain_text("this lesson is not on the site any more")
    ask(page, "NNNNNN")
    expect(answer).to_contain_text("No sheet known here bears NNNNNN.")
    ask(page, "abc")
    expect(answer).to_contain_text("A stamp has six signs")


def test_without_a_script_the_lesson_tells(past: PastSite) -> None:
    page = (past.site / "stamps.html").read_text("utf-8")
    assert "Without JavaScript: choose the lesson below" in page
    assert 'href="one/sheets.html"' in page
    sheets = (past.site / "one/sheets.html").read_text("utf-8")
    for stamp in {stamp for one in past.states for stamp in one.stamps.values()}:
        assert f'id="{stamp}"' in sheets


def test_from_a_folder_the_page_leads_to_the_lessons(page: Page, past: PastSite) -> None:
    page.goto((past.site / "stamps.html").as_uri())
    expect(page.locator("[data-no-script]")).to_contain_text("open from a folder")
    assert page.locator("stamp-reader form").is_hidden()
