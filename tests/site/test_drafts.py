"""A draft is seen in the preview and nowhere else, and what is wrong with it stops nobody."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.cli.commands import commands
from generator.problems import LessonError, Weight
from generator.steps.by_hand import ByHand
from generator.steps.filling import other_files
from generator.steps.lessons import KeptLesson
from generator.steps.run import begin
from generator.steps.site import Site
from tests.engine.small_site import built, built_cold, small_site
from tests.project import GOOD, put
from tests.site_project import copy_project, run_mkdocs, small_lesson, write_lesson

DRAFT = "A lesson for later"


def plumline(root: Path, *words: str) -> Result:
    return CliRunner().invoke(commands, [*words, "--root", str(root)], catch_exceptions=False)


@pytest.fixture
def project(tmp_path: Path) -> Path:
    """A site with a lesson and a draft."""
    root = copy_project(tmp_path / "site", lessons=False)
    write_lesson(root, "small", small_lesson())
    write_lesson(root, "pot-luck", small_lesson(title=DRAFT, draft=True))
    (root / "lessons/index.md").write_text("# Welcome\n\n{lessons}\n", "utf-8")
    return root


def by_own_command(project: Path) -> str:
    done = plumline(project, "build")
    assert done.exit_code == 0, done.output
    return done.stderr


def by_mkdocs(project: Path) -> str:
    done = run_mkdocs(project, "--strict")
    assert done.exit_code == 0, done.stderr
    return ""


@pytest.mark.parametrize("build", [by_own_command, by_mkdocs])
def test_no_byte_of_a_draft_is_published(project: Path, build: Callable[[Path], str]) -> None:
    build(project)
    files = [path for path in (project / "site").rglob("*") if path.is_file()]
    assert any(path.name == "sitemap.xml" for path in files)
    assert not [path for path in files if "pot-luck" in path.as_posix()]
    assert not [path for path in files if b"pot-luck" in path.read_bytes()]


def test_a_build_says_what_it_leaves_out(project: Path) -> None:
    file = project / "lessons/pot-luck/lesson.yaml"
    line = file.read_text("utf-8").split('"draft"')[0].count("\n") + 1
    told = by_own_command(project)
    assert f"{file.relative_to(project)}:{line}:2: this lesson is a draft and is not" in told
    assert told.count("lessons/pot-luck") == 1


def test_a_draft_that_is_ready_is_published_and_one_taken_back_is_not(project: Path) -> None:
    file = project / "lessons/pot-luck/lesson.yaml"
    text = file.read_text("utf-8")
    for now, there in (("false", True), ("true", False), ("false", True)):
        file.write_text(text.replace('"draft": true', f'"draft": {now}'), "utf-8")
        by_own_command(project)
        assert (project / "site/pot-luck/index.html").exists() == there
        assert (DRAFT in (project / "site/index.html").read_text("utf-8")) == there


def test_builds_after_a_draft_was_made_of_a_lesson_are_those_from_nothing(tmp_path: Path) -> None:
    root = small_site(tmp_path / "site")
    built(root)
    file = root / "lessons/two/lesson.yaml"
    lesson = json.loads(file.read_text("utf-8"))
    file.write_text(json.dumps({**lesson, "draft": True}), "utf-8")
    made = built(root)
    assert made == built_cold(root, tmp_path / "cold")
    assert not [path for path in made if path.startswith("two/")]


@pytest.mark.parametrize(
    ("right", "wrong"),
    [("food: apple-raw", "food: aple-raw"), ("summary:", "sumary:"), ("title: Two", "title: A: b")],
    ids=["a food that is not there", "a key that is not there", "no YAML"],
)
def test_a_mistake_in_a_draft_stops_nobody(project: Path, right: str, wrong: str) -> None:
    put(project, f"draft: true\n{GOOD.replace(right, wrong)}", "pot-luck")
    by_own_command(project)
    by_mkdocs(project)
    done = plumline(project, "check", "--strict")
    assert done.exit_code == 0, done.output
    told = json.loads(plumline(project, "check", "--json").stdout)
    assert {(one["file"], one["weight"]) for one in told} == {
        ("lessons/pot-luck/lesson.yaml", "draft")
    }
    assert len(told) > 1


def test_a_link_to_a_draft_is_told(project: Path) -> None:
    page = project / "lessons/about.md"
    page.write_text("# About\n\n[Soon](pot-luck/index.html)\n", "utf-8")
    for word in ("check", "build"):
        done = plumline(project, word)
        assert done.exit_code == 1
        what = "the link `pot-luck/index.html` leads to the lesson `pot-luck`, a draft"
        assert f"lessons/about.md:3:8: {what}" in done.stderr


def previewed(root: Path, last: dict[str, KeptLesson]) -> tuple[Site, tuple[Weight, ...]]:
    run = begin(root, root / "shown", preview=True, last=last)
    site = run.site()
    return site, tuple(one.weight for one in run.faults)


def page_of(site: Site, name: str) -> str:
    (lesson,) = (one for one in site.lessons if one.id == name)
    pages = {entry.path: content for entry, content in lesson.pack.contents()}
    return pages[f"{name}/index.html"].decode()


def test_the_preview_shows_and_marks_it(project: Path) -> None:
    site, faults = previewed(project, {})
    assert faults == ()
    assert "Draft, only in this preview" in page_of(site, "pot-luck")
    assert "Draft" not in page_of(site, "small")
    front = site.page("index.html", "Welcome", "<p>{lessons}</p>", headed=False)
    assert (
        front.count("Draft, only in this preview") == 2
    )  # in the list of the page and on the card
    assert DRAFT in front
    assert other_files(site, ByHand((), ()))


def test_a_mistake_in_a_lesson_leaves_the_preview_of_the_others(project: Path) -> None:
    last: dict[str, KeptLesson] = {}
    previewed(project, last)
    small, spring = (project / f"lessons/{name}/lesson.yaml" for name in ("small", "pot-luck"))
    small.write_text(small.read_text("utf-8").replace("apple-raw", "apple-rwa"), "utf-8")
    spring.write_text(spring.read_text("utf-8").replace(DRAFT, "Summer"), "utf-8")
    site, faults = previewed(project, last)
    assert faults == (Weight.MUST,)
    assert "A small lesson" in page_of(site, "small")  # as it was when it was right
    assert "Summer" in page_of(site, "pot-luck")
    spring.write_text(spring.read_text("utf-8").replace("apple-raw", "apple-rwa"), "utf-8")
    assert previewed(project, last)[1] == (Weight.DRAFT, Weight.MUST)


def test_a_preview_begins_without_a_lesson_that_has_a_mistake(project: Path) -> None:
    small = project / "lessons/small/lesson.yaml"
    small.write_text(small.read_text("utf-8").replace("apple-raw", "apple-rwa"), "utf-8")
    site, faults = previewed(project, {})
    assert ([one.id for one in site.lessons], faults) == (["pot-luck"], (Weight.MUST,))
    assert site.map.unmade.broken == {"small"}


def test_a_preview_still_needs_the_data_of_the_site(project: Path) -> None:
    (project / "site_data/site.yaml").write_text("~\n", "utf-8")
    with pytest.raises(LessonError):
        previewed(project, {})
