"""A publication makes anew only the lessons whose own record grew; and what a lesson says is kept."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import pytest

from generator.model.published import Publication
from generator.problems import LessonError
from generator.publish.record import append_publication
from generator.steps.past import past_of
from generator.steps.run import begin
from generator.steps.states import current_states
from tests.engine.small_site import built, small_site

FIRST = Publication("2026-01-01T08:00:00Z", "0.3", "", ("en", "es"), ())


def test_a_record_concerns_its_own_lesson_alone(tmp_path: Path) -> None:
    root = small_site(tmp_path / "site")
    assert isinstance(built(root), dict)
    run = begin(root, root / "site")
    kept = current_states(run.site())
    states = {
        name: {language: one.state for language, one in said.items()} for name, said in kept.items()
    }
    assert {name: list(said) for name, said in states.items()}["two"] == ["en", "es"]
    append_publication(root, FIRST, states)
    assert isinstance(built(root), dict)
    keys = begin(root, root / "site").owns()
    other = replace(states["two"]["en"], title="Another")
    append_publication(
        root,
        replace(FIRST, at="2026-02-01T08:00:00Z"),
        {**states, "two": {**states["two"], "en": other}},
    )
    again = begin(root, root / "site")
    assert [name for name, one in again.owns().items() if one.own != keys[name].own] == ["two"]
    site = again.site()
    last = site.published.last("two", "en")
    assert last is not None
    assert last.title == "Another"
    facts = {one.id: one.facts for one in site.lessons}
    assert facts["two"].stamps["es"] == states["two"]["es"].stamps


def test_a_lesson_is_made_of_what_went_out_under_its_older_names(tmp_path: Path) -> None:
    root = small_site(tmp_path / "site")
    file = root / "lessons/two/lesson.yaml"
    file.write_text(
        json.dumps({"formerly": ["then"], **json.loads(file.read_text("utf-8"))}), "utf-8"
    )
    run = begin(root, root / "site")
    said = current_states(run.site())["two"]["en"].state
    then = {"then": {"en": replace(said, title="Then", stamps={"worksheet": "K7Q2FM"})}}
    keys = begin(root, root / "site").owns()
    append_publication(root, FIRST, then)
    later = replace(FIRST, at="2026-02-01T08:00:00Z")
    append_publication(root, later, {"two": {"en": said}})
    again = begin(root, root / "site").owns()
    assert [name for name, one in again.items() if one.own != keys[name].own] == ["two"]
    assert [one.title for one in past_of(root, "two", ("then",))] == ["Then", said.title]
    assert [one.title for one in past_of(root, "two")] == [said.title]
    append_publication(root, replace(FIRST, at="2026-03-01T08:00:00Z"), then)
    last = begin(root, root / "site").owns()
    assert last["two"].own != again["two"].own


def test_a_record_that_cannot_be_read_stops_the_build_and_no_preview(tmp_path: Path) -> None:
    root = small_site(tmp_path / "site")
    file = root / "site_data/published/lessons/one.jsonl"
    file.parent.mkdir(parents=True)
    file.write_text("{\n", "utf-8")
    with pytest.raises(LessonError, match=r"one\.jsonl:1:1: this line .* is not whole"):
        begin(root, root / "site").site()
    preview = begin(root, root / "site", preview=True)
    assert len(preview.site().lessons) == 4
    assert [problem.place.path for problem in preview.faults] == [file.relative_to(root).as_posix()]
