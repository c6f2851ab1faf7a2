"""`plumline update` tries a newer program out on a copy first, exchanges it, and goes back."""

from __future__ import annotations

import os
import sys
from pathlib import Path
from zipfile import ZipFile

import pytest
from click.testing import CliRunner, Result

from generator.author import rewriting
from generator.author import start as starting
from generator.author import update as updating
from generator.author.changes import changes_since
from generator.author.rewriting import Rewriting, carry_over
from generator.cli.commands import commands as main
from generator.read.source import Source
from generator.write.foods_values import Edit
from tests.site_project import ROOT, hashes

CHANGES = """\
# Changes

## 0.4.0, 2027-02-01

- Lessons may be sung.

## 0.3.0, 2027-01-01

- Lessons may be whispered.

## 0.1.0, 2026-01-01

- All began.
"""
MADE_UP = """
import sys
from generator.author import rewriting
from generator.read.source import Source
from generator.write.foods_values import Edit

def edits(source):
    at = source.keys.get(("summary",))
    return [Edit(at.line, at.column, "summary", "in_short")] if at else []

rewriting.REWRITINGS = (rewriting.Rewriting("0.3.0", "lessons/*/lesson.yaml", edits),)
rewriting.carry_over.__defaults__ = (rewriting.REWRITINGS,)
from generator.cli import main
sys.argv[0] = "plumline"
if "check" in sys.argv or "build" in sys.argv:
    sys.exit("lessons: this newer program is not content" if FAILS else 0)
main()
"""
"""A newer program that calls `summary:` by another name, and is content with it, or not."""


def made(folder: Path, version: str, changes: str = CHANGES) -> Path:
    """A program's file with all that is read of it."""
    folder.mkdir(exist_ok=True)
    file = folder / f"plumline-{version}-py3-none-any.whl"
    with ZipFile(file, "w") as wheel:
        wheel.writestr("generator/carried_files/CHANGELOG.md", changes)
        wheel.writestr("generator/carried_files/requirements.lock", f"# a lock\nclick=={version}\n")
        wheel.writestr("generator/__main__.py", f"print({version!r})\n")
    return file


@pytest.fixture
def site(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A site of one's own, begun with the program 0.1.0."""
    monkeypatch.setattr(starting, "program_file", lambda folder: made(folder, "0.1.0"))
    words = ["--name=Hill", "--address=", "--languages=en", "--publish=server", "--lesson=Soup"]
    done = CliRunner().invoke(main, ["start", str(tmp_path / "site"), *words])
    assert done.exit_code == 0, done.output
    return tmp_path / "site"


@pytest.fixture(params=[False])
def newer(request: pytest.FixtureRequest, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A newer program's file; what would be installed for it is a script that stands for it."""
    monkeypatch.setenv("PYTHONPATH", os.pathsep.join([str(ROOT), *sys.path]))
    code = MADE_UP.replace("FAILS", str(request.param))
    monkeypatch.setattr(updating, "install", lambda _: (sys.executable, "-c", code))
    return made(tmp_path / "handed", "0.4.0")


def update(site: Path, *words: str) -> Result:
    return CliRunner().invoke(main, ["update", *words, "--root", str(site)])


def state(site: Path) -> dict[str, str]:
    return {
        path: held
        for path, held in hashes(site).items()
        if not path.startswith((".git/", ".cache/"))
    }


def test_the_program_and_its_lock_are_exchanged(site: Path, newer: Path) -> None:
    done = update(site, str(newer))
    assert done.exit_code == 0, done.output
    names = {file.name for file in (site / "generator").iterdir()}
    assert names == {
        "plumline-0.4.0-py3-none-any.whl",
        "requirements.lock",
        "__main__.py",
        "before",
    }
    lock = (site / "generator/requirements.lock").read_text("utf-8")
    assert "click==0.4.0" in lock
    assert "./generator/plumline-0.4.0-py3-none-any.whl \\\n    --hash=sha256:" in lock
    assert (site / "generator/__main__.py").read_text("utf-8") == "print('0.4.0')\n"
    assert not (site / ".cache/update").exists()


def test_what_changes_is_told_from_the_version_there_was(site: Path, newer: Path) -> None:
    said = update(site, str(newer)).output
    assert "From 0.1.0 to 0.4.0." in said
    assert "Lessons may be sung." in said
    assert "Lessons may be whispered." in said
    assert "All began." not in said


def test_a_changed_shape_is_carried_over_with_its_comments(site: Path, newer: Path) -> None:
    file = site / "lessons/soup/lesson.yaml"
    before = file.read_text("utf-8") + "# my note\n"
    file.write_text(before, "utf-8")
    done = update(site, str(newer))
    assert "lessons/soup/lesson.yaml is in its new shape." in done.output
    assert file.read_text("utf-8") == before.replace("\nsummary:", "\nin_short:")


def test_back_and_forth(site: Path, newer: Path) -> None:
    before = state(site)
    update(site, str(newer))
    after = state(site)
    assert update(site, "--back").exit_code == 0
    assert {path: held for path, held in state(site).items() if "/before/" not in path} == before
    assert update(site, "--back").exit_code == 0
    kept = {path: held for path, held in state(site).items() if "/before/" not in path}
    assert kept == {path: held for path, held in after.items() if "/before/" not in path}


def test_a_lesson_changed_since_is_left_so_on_the_way_back(site: Path, newer: Path) -> None:
    update(site, str(newer))
    file = site / "lessons/soup/lesson.yaml"
    changed = file.read_text("utf-8").replace("minutes: 15", "minutes: 20")
    file.write_text(changed, "utf-8")
    assert "was changed since and is left so" in update(site, "--back").output
    assert file.read_text("utf-8") == changed


@pytest.mark.parametrize("newer", [True], indirect=True)
def test_a_newer_program_that_is_not_content_changes_nothing(site: Path, newer: Path) -> None:
    before = state(site)
    done = update(site, str(newer))
    assert done.exit_code == 1
    assert "the newer program stops at `check`, and nothing was changed" in done.output
    assert "this newer program is not content" in done.output
    assert state(site) == before
    assert not (site / ".cache/update").exists()


def test_a_page_of_the_guide_that_was_changed_stays(site: Path, newer: Path) -> None:
    mine, other = site / "lessons/guide/foods.md", site / "lessons/guide/filming.md"
    mine.write_text("# My notes\n", "utf-8")
    before = other.read_text("utf-8")
    assert update(site, str(newer)).exit_code == 0
    assert mine.read_text("utf-8") == "# My notes\n"
    assert other.read_text("utf-8") == before


@pytest.mark.parametrize(
    ("name", "sentence"),
    [
        ("plumline-0.1.0-py3-none-any.whl", "this program is 0.1.0, the one you have"),
        ("plumline-0.0.9-py3-none-any.whl", "this program is 0.0.9, older than yours, 0.1.0"),
        ("other-0.4.0-py3-none-any.whl", "this is no program of Plumline's"),
        ("plumline-new-py3-none-any.whl", "this is no program of Plumline's"),
    ],
)
def test_what_is_no_newer_program_is_refused(
    site: Path, tmp_path: Path, newer: Path, name: str, sentence: str
) -> None:
    before = state(site)
    file = newer.rename(tmp_path / name)
    done = update(site, str(file))
    assert done.exit_code == 1
    assert sentence in done.output
    assert state(site) == before


@pytest.mark.parametrize("held", [b"", b"no zip", b"PK\x05\x06" + bytes(18)])
def test_a_broken_file_is_refused(site: Path, tmp_path: Path, held: bytes) -> None:
    file = tmp_path / "plumline-0.4.0-py3-none-any.whl"
    file.write_bytes(held)
    done = update(site, str(file))
    assert (done.exit_code, "this is no program of Plumline's" in done.output) == (1, True)


def test_a_folder_of_something_else_is_refused(site: Path, tmp_path: Path) -> None:
    assert "this is no program of Plumline's" in update(site, str(tmp_path)).output


def test_without_a_word_it_says_what_it_takes(site: Path) -> None:
    done = update(site)
    assert done.exit_code == 2
    assert "say which program to move to" in done.output


def test_there_is_nothing_to_go_back_to(site: Path) -> None:
    done = update(site, "--back")
    assert (done.exit_code, "no earlier program is here" in done.output) == (1, True)


def test_the_programs_own_repository_is_no_such_site(newer: Path) -> None:
    done = update(ROOT, str(newer))
    assert done.exit_code == 1
    assert "git pull" in done.output


def test_only_what_came_since_is_carried_over(tmp_path: Path) -> None:
    """Two made-up changes of a shape; a site of 0.2 has the first one already."""

    def renamed(old: str, new: str) -> Rewriting:
        def edits(source: Source) -> list[Edit]:
            at = source.keys.get((old,))
            return [Edit(at.line, at.column, old, new)] if at else []

        return Rewriting("0.2.0" if old == "a" else "0.10.0", "lessons/*/lesson.yaml", edits)

    file = tmp_path / "lessons/one/lesson.yaml"
    file.parent.mkdir(parents=True)
    file.write_bytes(b"a: 1 # one\r\nb: 2\r\n")
    both = (renamed("a", "c"), renamed("b", "d"))
    assert carry_over(tmp_path, "0.2.0", both) == ("lessons/one/lesson.yaml",)
    assert file.read_bytes() == b"a: 1 # one\r\nd: 2\r\n"
    assert carry_over(tmp_path, "0.1.0", both) == ("lessons/one/lesson.yaml",)
    assert file.read_bytes() == b"c: 1 # one\r\nd: 2\r\n"
    assert carry_over(tmp_path, "0.1.0", both) == ()


def test_rewritings_stand_in_order_and_none_is_of_the_future() -> None:
    since = [rewriting.version(one.since) for one in rewriting.REWRITINGS]
    assert since == sorted(since)
    assert all(since)


def test_versions_have_an_order_of_numbers() -> None:
    assert changes_since(CHANGES, "0.4.0") == ""
    text = "## 0.10.0\n\n- Ten.\n\n## 0.9.0\n\n- Nine.\n"
    assert changes_since(text, "0.9.0") == "## 0.10.0\n\n- Ten."
