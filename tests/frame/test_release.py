"""A release is one file; installed alone, it begins a site of somebody's own and builds it."""

from __future__ import annotations

import json
import re
import subprocess
import sys
from pathlib import Path
from zipfile import ZipFile

import pytest

import generator
from tests.released import ANSWERS, build_wheel, install, plumline
from tests.site_project import ROOT, hashes

CARRIED = "generator/carried_files/"


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return build_wheel(tmp_path_factory.mktemp("release") / "wheel")


@pytest.fixture(scope="module")
def installed(wheel: Path) -> Path:
    return install(wheel, wheel.parents[1] / "installed")


@pytest.fixture(scope="module")
def site(installed: Path) -> Path:
    """A site begun by the installed program."""
    folder = installed.parent / "Site of Zoë"
    done = plumline(installed, "start", str(folder), *ANSWERS, cwd=installed.parent)
    assert done.returncode == 0, done.stderr
    return folder


def test_its_name_holds_its_version(wheel: Path) -> None:
    assert wheel.name == f"plumline-{generator.__version__}-py3-none-any.whl"


def test_it_carries_what_a_site_needs_and_no_lesson(wheel: Path) -> None:
    names = set(ZipFile(wheel).namelist())
    theme = {
        CARRIED + file.relative_to(ROOT).as_posix()
        for file in (ROOT / "theme").rglob("*")
        if file.is_file() and "__pycache__" not in file.parts
    }
    assert theme <= names
    assert not [
        name for name in names if name.endswith((".mjs", "package-lock.json"))
    ]  # what makes the theme's parts
    assert {f"{CARRIED}site_data/{name}.yaml" for name in ("foods", "moves", "words/en")} <= names
    assert {CARRIED + "CHANGELOG.md", CARRIED + "requirements.lock"} <= names
    assert [name for name in names if name.endswith((".mp4", "/lesson.yaml", "/site.yaml"))] == [
        "generator/starter/site.yaml"
    ]


def test_the_same_repository_gives_the_same_bytes(wheel: Path, tmp_path: Path) -> None:
    assert build_wheel(tmp_path / "again").read_bytes() == wheel.read_bytes()


def test_a_new_site_is_checked_and_built_by_it(installed: Path, site: Path) -> None:
    checked = plumline(installed, "check", cwd=site)
    assert (checked.returncode, checked.stderr) == (0, "")
    assert checked.stdout == "1 lesson checked: nothing has to be put right.\n"
    built = plumline(installed, "build", cwd=site)
    assert (built.returncode, built.stderr) == (0, "")
    page = (site / "site/soup-for-two/index.html").read_text("utf-8")
    assert "Soup for two" in page
    assert "Hill Kitchen" in page
    again = plumline(installed, "build", cwd=site)
    assert again.stdout == "Nothing has changed since site/ was built.\n"


def test_nothing_of_the_demo_is_in_it(site: Path) -> None:
    for file in site.rglob("*"):
        if file.is_file() and ".git" not in file.relative_to(site).parts and file.suffix != ".whl":
            assert b"larkmead" not in file.read_bytes().lower(), file


def test_a_second_site_from_the_installed_one_has_the_same_program(wheel: Path, site: Path) -> None:
    """It is put together again from what was installed: every file as it was."""
    (packed,) = (site / "generator").glob("*.whl")
    with ZipFile(packed) as ours, ZipFile(wheel) as theirs:
        told = {name for name in theirs.namelist() if not name.endswith("/RECORD")}
        assert {name for name in ours.namelist() if not name.endswith("/RECORD")} == told
        assert all(ours.read(name) == theirs.read(name) for name in told)


def test_the_program_is_pinned_with_every_library(site: Path) -> None:
    lock = (site / "generator/requirements.lock").read_text("utf-8")
    libraries = (ROOT / "requirements.lock").read_text("utf-8")
    pins = [line for line in libraries.splitlines() if "==" in line and line[0].isalnum()]
    assert all(pin in lock for pin in pins)
    (packed,) = (site / "generator").glob("*.whl")
    assert (
        f"./generator/{packed.name} \\\n    --hash=sha256:{hashes(packed.parent)[packed.name]}\n"
        in lock
    )


def test_it_is_a_git_repository_with_everything_committed(site: Path) -> None:
    said = subprocess.run(
        ["git", "status", "--porcelain"], cwd=site, capture_output=True, text=True, check=True
    )
    assert said.stdout == ""
    assert "site/" in (site / ".gitignore").read_text("utf-8")


def test_the_workflow_waits_for_a_lock_that_is_there(site: Path) -> None:
    text = (site / ".github/workflows/publish.yml").read_text("utf-8")
    named = re.findall(r"\S*requirements\.lock", text)
    assert named
    assert all((site / name).is_file() for name in named)


def test_the_schema_knows_foods_and_moves(site: Path) -> None:
    schema = json.loads((site / "site_data/lesson.schema.json").read_text("utf-8"))
    assert "apple-raw" in schema["$defs"]["food"]["enum"]
    assert "march" in schema["$defs"]["move"]["enum"]
    first, _, _ = (site / "lessons/soup-for-two/lesson.yaml").read_text("utf-8").partition("\n")
    named = first.removeprefix("# yaml-language-server: $schema=")
    assert (site / "lessons/soup-for-two" / named).resolve().is_file()


def test_a_library_that_is_gone_is_a_sentence(installed: Path, site: Path) -> None:
    """Nothing but the program stands where Python looks for libraries."""
    code = "import sys; sys.path[:] = [p for p in sys.path if 'packages' not in p]; from generator.cli import main; main()"
    done = subprocess.run(
        [sys.executable, "-c", code, "check"],
        cwd=site,
        env={"PYTHONPATH": str(installed)},
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 1
    assert "Traceback" not in done.stderr
    assert "delete the folder .venv" in done.stderr


def test_its_version_has_a_dated_entry_in_the_list_of_changes() -> None:
    heads = re.findall(r"^## (.*)$", (ROOT / "CHANGELOG.md").read_text("utf-8"), re.MULTILINE)
    released = [head for head in heads if head != "Unreleased"]
    assert re.fullmatch(rf"{re.escape(generator.__version__)}, \d{{4}}-\d\d-\d\d", released[0])
