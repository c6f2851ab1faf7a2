"""A site may stop offering to keep lessons; then nothing offers it, and what is kept goes away."""

from __future__ import annotations

from pathlib import Path

import yaml

from generator.present.assets.later import WORKER, later_files
from generator.present.words.say import Say
from tests.html_page import read_page
from tests.project import ROOT, library
from tests.site_project import build_project, copy_project, small_lesson, write_lesson


def worker(*, keeping: bool) -> str:
    says = (Say(words) for words in library().words.values())
    made = {one.path: one.content for one in later_files(ROOT / "theme", says, keeping=keeping)}
    return made[WORKER].decode()


def test_the_workers_file_is_always_there_for_a_browser_to_find() -> None:
    """One that is gone keeps the old worker (W3C Service Workers, Update: a failed fetch changes nothing)."""
    assert "respondWith" in worker(keeping=True)
    off = worker(keeping=False)
    assert "registration.unregister()" in off
    assert "respondWith" not in off


def test_a_site_that_says_no_offers_it_on_no_page(tmp_path: Path) -> None:
    project = copy_project(tmp_path, lessons=False)
    write_lesson(project, "small", small_lesson())
    file = project / "site_data/site.yaml"
    settings = yaml.safe_load(file.read_text("utf-8"))
    for keeps in (True, False):
        file.write_text(yaml.safe_dump(settings | {"keep_lessons": keeps}), "utf-8")
        site = build_project(project)
        lesson = read_page(site / "small/index.html")
        assert bool(list(lesson.iter("keep-lesson"))) is keeps
        assert ("respondWith" in (site / WORKER).read_text("utf-8")) is keeps
