"""A mistake in a lesson ends the build with a sentence, and the site that was there stays whole."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from tests.site_project import (
    build_project,
    copy_project,
    hashes,
    run_mkdocs,
    small_lesson,
    write_lesson,
)


@pytest.fixture(scope="module")
def project(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A site with a built page of a lesson that is sound."""
    folder = copy_project(tmp_path_factory.mktemp("mistakes"), lessons=False)
    write_lesson(folder, "small", small_lesson())
    build_project(folder)
    return folder


@pytest.mark.parametrize(
    ("broken", "says"),
    [
        ('"title": "A small lesson"', "lessons/small/lesson.yaml:"),
        ('"apple-raw"', "apple-rwa"),
        ('"stops": [', "lessons/small/lesson.yaml:"),
    ],
    ids=["a key that is gone", "a food that is not there", "a file that is no YAML"],
)
def test_a_mistake_leaves_the_site_untouched(project: Path, broken: str, says: str) -> None:
    file, site = project / "lessons/small/lesson.yaml", project / "site"
    sound, before = file.read_text("utf-8"), hashes(site)
    wrong = {'"apple-raw"': '"apple-rwa"', '"stops": [': '"stops": [['}.get(
        broken, '"titel": "A small lesson"'
    )
    assert broken in sound
    try:
        file.write_text(sound.replace(broken, wrong), "utf-8")
        done = run_mkdocs(project)
    finally:
        file.write_text(sound, "utf-8")
    assert done.exit_code == 1
    assert says in done.stderr
    assert "Traceback" not in done.stdout + done.stderr
    assert hashes(site) == before


def test_one_mistake_among_many_lessons_leaves_all_of_them(
    built_site: Path, tmp_path: Path
) -> None:
    project = shutil.copytree(built_site.parent, tmp_path / "project")
    before = hashes(project / "site")
    write_lesson(project, "small", small_lesson(minutes="ten"))
    done = run_mkdocs(project)
    assert done.exit_code == 1
    assert "lessons/small/lesson.yaml:" in done.stderr
    assert hashes(project / "site") == before
