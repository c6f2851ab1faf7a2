"""After any edit `changes` says what differs between the two built sites, and nothing else.

Each step of a history is held against a plain comparison: of every file of the site before and after,
and of every number of the two ledgers.
"""

from __future__ import annotations

import json
import shutil
from collections.abc import Mapping
from dataclasses import replace
from decimal import Decimal
from pathlib import Path

import pytest

from generator.model.published import Publication
from generator.plugin import write_by_hand
from generator.present.updates.differences import ChangeKind
from generator.publish.changes import changes_since
from generator.publish.compare import LessonChanges, SiteChanges, compare
from generator.publish.record import append_publication
from generator.publish.site_state import site_state
from generator.steps.library import checked_library
from generator.steps.work import lesson_files, work_lesson
from tests.engine.edits import PLACES, Hand
from tests.engine.small_site import built, small_site
from tests.publish.repository import begun, commit
from tests.site_project import make_papers

OF_ALL = ("sitemap.xml", "sitemap.xml.gz", "all-lessons-1.1.imscc", "all-lessons-1.3.imscc")
"""Files made of all lessons and nothing else; what differs in them is said of the lessons."""
FIRST = Publication("2026-01-01T00:00:00Z", "0.3", "", ("en", "es"), ())
Ledgers = Mapping[tuple[str, str], Mapping[str, Decimal]]


def renamed_by_name(hand: Hand) -> None:
    """A folder is called otherwise, and says so."""
    folder = hand.lesson()
    other = hand.root / f"lessons/moved-{hand.number}"
    folder.rename(other)
    file = other / "lesson.yaml"
    lesson = json.loads(file.read_text("utf-8"))
    names = [*lesson.get("formerly", []), folder.name]
    file.write_text(json.dumps({**lesson, "formerly": names}, indent=1), "utf-8")


def stop_renamed(hand: Hand) -> None:
    """A comparison has another id, and says so or not."""
    file = hand.lesson() / "lesson.yaml"
    lesson = json.loads(file.read_text("utf-8"))
    compared = lesson["stops"][0]["compare"]
    old, new = compared["id"], f"meal-{hand.number}"
    compared["id"] = lesson["stops"][1]["move"]["for"] = new
    if hand.chance.random() < 0.5:
        compared["formerly"] = [*compared.get("formerly", []), old]
    file.write_text(json.dumps(lesson, indent=1), "utf-8")


def published(hand: Hand) -> None:
    """The site goes out, and its record grows."""
    try:
        now = site_state(hand.root, write_by_hand)
    except Exception:  # noqa: BLE001  # a site with a mistake is not published
        return
    states = {
        name: {language: one.state for language, one in held.states.items()}
        for name, held in now.lessons.items()
    }
    at = f"2026-01-01T{hand.number // 60:02}:{hand.number % 60:02}:00Z"
    append_publication(hand.root, replace(FIRST, at=at), states)


OWN = (renamed_by_name, stop_renamed, published)


class OwnHand(Hand):
    """Makes edits besides that only a record and addresses know, and takes back what was a mistake."""

    def take_back(self) -> None:
        """Everything as it was before the last edit."""
        self.past.pop()
        for place in PLACES[:2]:
            shutil.rmtree(self.root / place)
        for path, content in self.past[-1].items():
            self.write(path, content)

    def edit(self) -> str:
        if self.chance.random() > 0.2:
            return super().edit()
        self.number += 1
        edit = self.chance.choice(OWN)
        edit(self)
        self.past.append(self.snapshot())
        return edit.__name__


def ledgers(root: Path, lessons: Mapping[str, object]) -> Ledgers:
    """Every number of every lesson that goes out, worked out anew."""
    library = checked_library(root)
    worked = {
        Path(path).parent.name: work_lesson(root, path, library) for path in lesson_files(root)
    }
    return {
        (name, language): {one.id: one.value for one in result.figures}
        for name, one in worked.items()
        if name in lessons
        for language, result in one.results.items()
    }


def said_paths(changes: SiteChanges) -> dict[str, set[str]]:
    """Every file that is said to differ, by its path on the site."""
    found = {
        kind: {*getattr(changes.pages, kind), *getattr(changes.look, kind)}
        for kind in ("changed", "gone", "new")
    }
    for one in changes.lessons:
        folder = "" if one.language == "en" else f"{one.language}/"
        for kind, paths in found.items():
            for name in getattr(one.files, kind):
                framed = "embed/" if name == "stop.html" else ""
                paths.add(f"{framed}{folder}{one.lesson}/{name}")
    return found


def as_named_now(site: dict[str, str], changes: SiteChanges) -> dict[str, str]:
    """The files of the site before, those of a renamed lesson at its address of today."""
    moved = {
        f"{framed}{folder}{one.renamed}/": f"{framed}{folder}{one.lesson}/"
        for one in changes.lessons
        if one.renamed and one.before
        for folder in ("" if one.language == "en" else f"{one.language}/",)
        for framed in ("", "embed/")
    }

    def now(path: str) -> str:
        was = next((above for above in moved if path.startswith(above)), "")
        return moved.get(was, "") + path.removeprefix(was)

    return {now(path): sum_ for path, sum_ in site.items()}


def hold_files(before: dict[str, str], after: dict[str, str], changes: SiteChanges) -> None:
    """What is said of files is what a comparison of both folders says."""
    old, new = (
        {path: one for path, one in site.items() if not path.endswith(OF_ALL)}
        for site in (as_named_now(before, changes), after)
    )
    said = said_paths(changes)
    led_on = said["gone"] & said["new"]  # the lesson is gone, and a page at its address says so
    assert said["changed"] | led_on == {
        path for path in new if old.get(path, new[path]) != new[path]
    }
    assert said["gone"] - led_on == old.keys() - new.keys()
    assert said["new"] - led_on == new.keys() - old.keys()


def hold_numbers(before: Ledgers, after: Ledgers, changes: SiteChanges) -> None:
    """What is said of numbers is what the two ledgers say; of stops that were renamed, under their ids of today."""
    said = {(one.lesson, one.language): one for one in changes.lessons}
    for key, new in after.items():
        one = said.get(key)
        was = (one.renamed or key[0], key[1]) if one else key
        if was not in before:
            assert one is not None
            assert [each.kind for each in one.differences] == [ChangeKind.LESSON_NEW]
            continue
        old = _under_names_of_today(before[was], one)
        other = {name for name in new.keys() & old.keys() if new[name] != old[name]}
        numbers = {
            each.name: each for each in (one.differences if one else ()) if each.old or each.new
        }
        assert {name for name, each in numbers.items() if each.kind is ChangeKind.NUMBER} == other
        gone = {name for name, each in numbers.items() if each.kind is ChangeKind.NUMBER_GONE}
        added = {name for name, each in numbers.items() if each.kind is ChangeKind.NUMBER_NEW}
        assert (gone, added) == (old.keys() - new.keys(), new.keys() - old.keys())
        for name, each in numbers.items():
            assert each.new is None or each.new.value == new[name]
            assert each.old is None or each.old.value == old[name]


def _under_names_of_today(
    numbers: Mapping[str, Decimal], one: LessonChanges | None
) -> Mapping[str, Decimal]:
    after = one.after.state.formerly if one and one.after else {}
    moved = {each.was: each.now for each in (one.differences if one else ()) if each.was in after}
    return {
        ".".join(
            [moved.get(name.partition(".")[0], name.partition(".")[0]), name.partition(".")[2]]
        ): value
        for name, value in numbers.items()
    }


@pytest.mark.parametrize("seed", range(4))
def test_fifty_edits_of_a_site(tmp_path: Path, seed: int) -> None:
    """Two hundred in all; every tenth is compared through git as well, as the command does."""
    root = begun(small_site(tmp_path / "site"))
    if seed:
        make_papers(root)
    hand, made, committed, differed = OwnHand(root, seed), [], False, 0
    before = built(root)
    assert isinstance(before, dict)
    state = site_state(root, write_by_hand)
    numbers = ledgers(root, state.lessons)
    for number in range(50):
        made.append(hand.edit())
        after = built(root)
        if not isinstance(after, dict):  # the site stays what it was, and so do its files again
            hand.take_back()
            continue
        now = site_state(root, write_by_hand)
        changes, today = compare(state, now), ledgers(root, now.lessons)
        try:
            hold_files(before, after, changes)
            hold_numbers(numbers, today, changes)
            if committed:
                assert changes_since(root, "HEAD", write_by_hand).changes == changes
        except AssertionError as error:
            error.add_note(f"after {made[-3:]}")
            raise
        if committed := number % 10 == 8:
            commit(root, "So far")
        before, state, numbers, differed = after, now, today, differed + (not changes.nothing)
    assert differed > 15
