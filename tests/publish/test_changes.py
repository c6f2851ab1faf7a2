"""What `changes` tells against a revision or the record, and what it says where there is nothing to compare with."""

from __future__ import annotations

import json
import shutil
from collections.abc import Iterator
from dataclasses import replace
from hashlib import sha256
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.cli.commands import commands
from generator.model.published import Publication
from generator.plugin import write_by_hand
from generator.publish.record import append_publication
from generator.publish.site_state import site_state
from tests.engine.small_site import small_site
from tests.publish.repository import begun, commit, git
from tests.site_project import write_lesson

OUT = Publication("2026-01-01T08:00:00Z", "0.0", "", ("en", "es"), ())


@pytest.fixture(scope="module")
def kept(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A site with a commit, everything of it made and kept."""
    root = begun(small_site(tmp_path_factory.mktemp("kept") / "site"))
    site_state(root, write_by_hand)
    commit(root, "Begin")
    return root


@pytest.fixture
def root(kept: Path, tmp_path: Path) -> Iterator[Path]:
    """The same for one test."""
    yield shutil.copytree(kept, tmp_path / "site", symlinks=True)
    shutil.rmtree(tmp_path / "site", ignore_errors=True)


def changes(root: Path, *words: str) -> Result:
    return CliRunner().invoke(commands, ["changes", "--root", str(root), *words])


def told(root: Path, *words: str) -> dict[str, list[dict[str, object]]]:
    done = changes(root, "--format", "json", *words)
    assert done.exit_code == 0, done.output
    found: dict[str, list[dict[str, object]]] = json.loads(done.stdout)
    return found


def edit(root: Path, path: str, old: str, new: str) -> None:
    file = root / path
    text = file.read_text("utf-8")
    assert old in text
    file.write_text(text.replace(old, new), "utf-8")


def test_nothing_differs_from_the_last_commit(root: Path) -> None:
    done = changes(root)
    assert done.exit_code == 0, done.output
    assert done.stdout.startswith("Nothing differs from the last commit, ")


def test_what_differs_by_meaning_and_who_must_be_told(root: Path) -> None:
    """The numbers of the amount are those of FoodData Central's banana, 89 kcal in 100 g, rounded by 21 CFR 101.9."""
    edit(root, "lessons/two/lesson.yaml", "150 g", "170 g")
    shutil.rmtree(root / "lessons/three")
    before = {file: file.read_bytes() for file in root.glob("lessons/**/*.yaml")}
    done = changes(root)
    assert "In its place before: Banana, 150 g, 130\N{NO-BREAK SPACE}kcal." in done.stdout  # fmt: skip
    assert "Teachers with links to two (en): 4 answers are other than before." in done.stdout
    assert "Teachers with links to three (en): the lesson is gone." in done.stdout
    assert "Families with paper of two (es): " in done.stdout
    assert done.stdout.index("To be told") < done.stdout.index("two (en): Lesson two")
    markdown = changes(root, "--format", "markdown").stdout
    assert "### two (en): Lesson two" in markdown
    assert {file: file.read_bytes() for file in root.glob("lessons/**/*.yaml")} == before
    assert git(root, "diff", "--cached", "--name-only") == ""
    assert git(root, "stash", "list") == ""
    assert not (root / "site").exists()


def test_a_renamed_lesson_is_one_lesson(root: Path) -> None:
    lesson = json.loads((root / "lessons/two/lesson.yaml").read_text("utf-8"))
    shutil.rmtree(root / "lessons/two")
    write_lesson(root, "second", {**lesson, "formerly": ["two"]})
    found = [
        (one["lesson"], one["renamed_from"])
        for one in told(root)["lessons"]
        if one["language"] == "en"
    ]
    assert ("second", "two") in found
    assert "two" not in [lesson for lesson, _ in found]


def test_the_look_and_pages_by_hand(root: Path) -> None:
    edit(root, "theme/css/tokens.css", ":root", ":root{--new:1px}:root")
    (root / "lessons/about.md").write_text("# About us\n\nOther words.\n", "utf-8")
    found = told(root)
    assert "assets/screen.css" in found["look"]["changed"]  # type: ignore[call-overload]
    assert "about.html" in found["pages"]["changed"]  # type: ignore[call-overload]


def test_a_film_that_says_another_number_than_its_page(root: Path) -> None:
    filmed = "kind: holds, measure: energy, foods: [{food: banana-raw, amount: 150 g}], value: 130"
    (root / "lessons/film/recorded.yaml").write_text(
        f'filmed: "2026-03-14"\nfigures:\n  - {{{filmed}, stop: lunch, from: "0:01", to: "0:04"}}\n',
        "utf-8",
    )
    commit(root, "Keep what the film says")
    edit(root, "lessons/film/lesson.yaml", "150 g", "170 g")
    done = changes(root)
    assert "The film of film (en): At 0:01 the film says 130; Banana is 150 now" in done.stdout
    commit(root, "Correct it")
    edit(root, "lessons/film/lesson.yaml", "Filmed", "Filmed once")
    assert "The film of" not in changes(root).stdout, "said once, where it began to differ"


def test_against_what_was_published(root: Path) -> None:
    """Numbers as they were sent out, whatever the program makes of the same files today."""
    states = {
        name: {language: one.state for language, one in held.states.items()}
        for name, held in site_state(root, write_by_hand).lessons.items()
    }
    sent = states["two"]["en"]
    name = "lunch.apple-raw_banana-raw.kiosk"
    other = replace(sent.numbers[name], value=sent.numbers[name].value + 1)
    states["two"]["en"] = replace(sent, numbers={**sent.numbers, name: other})
    append_publication(root, OUT, states)
    alone = changes(root)
    assert "Against the last publication, 2026-01-01 08:00 UTC: " in alone.stdout
    assert "131\N{NO-BREAK SPACE}kcal before" in alone.stdout
    assert "python3 generator changes HEAD" in alone.stdout, "what the record does not keep"
    commit(root, "Publish")
    edit(root, "lessons/one/lesson.yaml", "One row.", "One line.")
    found = told(root)
    assert [one["path"] for one in _of(found, "one")["texts"]] == ["summary"]  # type: ignore[attr-defined]
    assert found["files_known"]
    assert "program 0.0" in found["notes"][0]


def _of(found: dict[str, list[dict[str, object]]], lesson: str) -> dict[str, object]:
    return next(one for one in found["lessons"] if one["lesson"] == lesson)


def test_a_revision_that_git_does_not_know(root: Path) -> None:
    done = changes(root, "no-such")
    assert done.exit_code == 1
    assert (
        "git knows no revision `no-such`: name a commit, a branch, a tag, or HEAD~1" in done.stderr
    )


def test_a_revision_is_no_option_of_git(root: Path) -> None:
    done = changes(root, "--", "--output=x")
    assert "git knows no revision" in done.stderr
    assert not (root / "x").exists()


def test_a_site_that_git_does_not_keep(root: Path) -> None:
    shutil.rmtree(root / ".git")
    assert "this site is not kept by git" in changes(root).stderr


def test_a_revision_before_there_was_a_site(root: Path) -> None:
    empty = git(root, "commit-tree", "-m", "Before", git(root, "hash-object", "-t", "tree", "-w", "/dev/null"))  # fmt: skip
    done = changes(root, empty)
    assert done.exit_code == 1
    assert "there was no site in" in done.stderr


def test_a_revision_with_a_mistake_is_one_sentence(root: Path) -> None:
    edit(root, "lessons/one/lesson.yaml", "150 g", "150 gallons")
    commit(root, "A mistake")
    edit(root, "lessons/one/lesson.yaml", "150 gallons", "150 g")
    done = changes(root)
    assert done.exit_code == 1
    (line,) = done.stderr.splitlines()
    assert "today's program can make no site of HEAD" in line
    assert "lessons/one/lesson.yaml:" in line


def test_a_theme_made_for_another_program_is_one_sentence(root: Path) -> None:
    """A site with a theme of its own had, at that revision, what the program of then asked for."""
    file = root / "theme/js/former-file.js"
    held = file.read_bytes()
    file.unlink()
    commit(root, "A theme of before")
    file.write_bytes(held)
    done = changes(root)
    assert done.exit_code == 1
    (line,) = done.stderr.splitlines()
    assert "its theme/ was made for another program" in line


def test_in_the_programs_own_repository_the_theme_is_the_programs(
    root: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """There it goes with the code, and an old one may lack what the code of today asks for."""
    monkeypatch.setattr("generator.publish.revision.is_home", lambda _: True)
    file = root / "theme/js/former-file.js"
    held = file.read_bytes()
    file.unlink()
    commit(root, "A theme of before")
    file.write_bytes(held)
    assert changes(root).stdout.startswith("Nothing differs from the last commit, ")


def test_a_mistake_of_today_is_told_with_its_line(root: Path) -> None:
    edit(root, "lessons/one/lesson.yaml", "150 g", "150 gallons")
    done = changes(root)
    assert done.exit_code == 1
    assert "lessons/one/lesson.yaml:" in done.stderr


def test_a_site_in_a_folder_of_its_repository(kept: Path, tmp_path: Path) -> None:
    above = begun(tmp_path)
    root = above / "sites/ours"
    shutil.copytree(kept, root, ignore=shutil.ignore_patterns(".git"))
    commit(above, "Begin")
    edit(root, "lessons/two/lesson.yaml", "Lesson two", "Second lesson")
    assert {one["lesson"] for one in told(root)["lessons"]} >= {"two"}


def test_a_film_that_git_lfs_has(root: Path) -> None:
    """What git keeps is a pointer; the film is taken from here where it is the same, and never fetched."""
    film = root / "lessons/film/film.mp4"
    held = film.read_bytes()
    sum_ = sha256(held).hexdigest()
    film.write_bytes(
        f"version https://git-lfs.github.com/spec/v1\noid sha256:{sum_}\nsize {len(held)}\n".encode()
    )
    commit(root, "As git LFS keeps it")
    film.write_bytes(held)
    assert changes(root).stdout.startswith("Nothing differs from the last commit")
    film.write_bytes(held + b"\0\0\0\x08free")
    shutil.rmtree(root / ".cache/states")
    done = changes(root)
    assert done.exit_code == 1
    assert "lessons/film/film.mp4 of HEAD is kept by git LFS and not on this machine" in done.stderr


def test_a_repository_within_the_site_is_not_followed(root: Path) -> None:
    head = git(root, "rev-parse", "HEAD")
    git(root, "update-index", "--add", "--cacheinfo", f"160000,{head},lessons/theirs")
    git(root, "commit", "--quiet", "-m", "A repository within")
    done = changes(root)
    assert done.exit_code == 1
    assert "lessons/theirs of HEAD is a repository of its own" in done.stderr


def test_only_the_states_used_last_are_kept(root: Path) -> None:
    for number in range(6):
        edit(root, "lessons/about.md", "About", "About About")
        commit(root, f"Edit {number}")
    for number in range(6):
        assert changes(root, f"HEAD~{number}").exit_code == 0
    assert len(list((root / ".cache/states").iterdir())) == 4
