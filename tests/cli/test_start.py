"""`plumline start` asks five questions, makes a whole site or nothing, and refuses what cannot be."""

from __future__ import annotations

import re
import subprocess
from pathlib import Path
from zipfile import ZipFile

import pytest
from click.testing import CliRunner, Result

from generator.author import start as starting
from generator.cli.commands import commands as main
from generator.read.library import read_library

GOOD = {
    "name": "Hill Kitchen",
    "address": "https://hill.example.org/lessons/",
    "languages": "en",
    "publish": "server",
    "lesson": "Soup for two",
}


@pytest.fixture(autouse=True)
def quick(monkeypatch: pytest.MonkeyPatch) -> None:
    """The program's own file is made by `tests/frame/test_release.py`; here an empty one stands for it."""

    def empty(folder: Path) -> Path:
        file = folder / "plumline-0-py3-none-any.whl"
        ZipFile(file, "w").close()
        return file

    monkeypatch.setattr(starting, "program_file", empty)


def start(folder: Path, typed: str | None = None, **said: str) -> Result:
    words = [f"--{name}={value}" for name, value in said.items()]
    return CliRunner().invoke(main, ["start", str(folder), *words], input=typed)


def test_five_questions_are_asked(tmp_path: Path) -> None:
    done = start(tmp_path / "site", "Hill Kitchen\n\nen es\ngitlab\nSoup for two\n")
    assert done.exit_code == 0, done.output
    site = tmp_path / "site"
    held = read_library(site).site
    assert (held.programme, held.address, held.languages) == ("Hill Kitchen", "", ("en", "es"))
    assert (site / ".gitlab-ci.yml").is_file()
    assert not (site / ".github").exists()
    assert (site / "lessons/es/care.md").is_file()
    assert "Soup for two" in (site / "lessons/soup-for-two/lesson.yaml").read_text("utf-8")


def test_an_example_in_another_language_than_the_sites_is_told(tmp_path: Path) -> None:
    assert "in English" in start(tmp_path / "es", "", **GOOD | {"languages": "es en"}).output
    assert "in English" not in start(tmp_path / "en", "", **GOOD).output


def test_each_is_an_option_too(tmp_path: Path) -> None:
    done = start(tmp_path / "site", **GOOD)
    assert done.exit_code == 0, done.output
    assert read_library(tmp_path / "site").site.address == GOOD["address"]
    names = {file.name for file in (tmp_path / "site").iterdir()}
    assert names == {
        *(".git", ".gitattributes", ".gitignore", "README.md", "generator", "lessons"),
        *("mkdocs.yml", "site_data"),
    }


@pytest.mark.parametrize("left_out", GOOD)
def test_without_a_terminal_the_option_that_is_missing_is_named(
    tmp_path: Path, left_out: str
) -> None:
    done = start(tmp_path / "site", "", **{name: GOOD[name] for name in GOOD if name != left_out})
    assert done.exit_code == 2
    assert f"nobody is here to answer; say --{left_out} as well" in done.output
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(
    ("changed", "sentence"),
    [
        ({"address": "hill.example.org"}, "The address cannot be `hill.example.org/`"),
        ({"languages": "en, so"}, "The program has no words in `so` yet: begin with en or es"),
        ({"languages": "English"}, "The list of languages cannot be `English`"),
        ({"languages": ""}, "The list of languages cannot be ``"),
        ({"name": " "}, "Your program has no name"),
        ({"name": "a" * 121}, "The name of your program cannot be"),
        ({"publish": "moon"}, "is not one of"),
        ({"lesson": "!!"}, "holds nothing to name a folder by"),
        ({"lesson": "Assets"}, "the site keeps this name for itself"),
    ],
)
def test_an_answer_that_cannot_be_makes_nothing(
    tmp_path: Path, changed: dict[str, str], sentence: str
) -> None:
    done = start(tmp_path / "site", "", **GOOD | changed)
    assert done.exit_code in {1, 2}
    assert sentence in done.output
    assert list(tmp_path.iterdir()) == []


def test_a_folder_that_is_not_empty_is_left_as_it_is(tmp_path: Path) -> None:
    (tmp_path / "notes.txt").write_text("mine", "utf-8")
    done = start(tmp_path, "", **GOOD)
    assert done.exit_code == 1
    assert "this folder is not empty, and nothing in it is touched" in done.output
    assert [file.name for file in tmp_path.iterdir()] == ["notes.txt"]


def test_an_empty_folder_is_taken(tmp_path: Path) -> None:
    (tmp_path / "site").mkdir()
    assert start(tmp_path / "site", "", **GOOD).exit_code == 0


def test_the_empty_folder_one_stands_in_is_taken(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    done = start(Path(), "", **GOOD)
    assert done.exit_code == 0, done.output
    assert "  cd " not in done.output
    assert Path("mkdocs.yml").is_file(), "it is still the folder one stands in"
    assert (tmp_path / ".git").is_dir()


def test_a_file_and_the_programs_own_folder_are_refused(tmp_path: Path) -> None:
    (tmp_path / "site").write_text("a file", "utf-8")
    assert "this is no folder" in start(tmp_path / "site", "", **GOOD).output
    inside = Path(starting.__file__).parents[2] / "my-site"
    assert "inside of the program's own" in start(inside, "", **GOOD).output
    assert not inside.exists()


@pytest.mark.parametrize("name", ['Kitchen "Hill": #1', "Cocina ‘Doña’ \\ & co", "Yes", "12:30"])
def test_a_name_is_kept_as_it_was_typed(tmp_path: Path, name: str) -> None:
    assert start(tmp_path / "site", "", **GOOD | {"name": name}).exit_code == 0
    assert read_library(tmp_path / "site").site.programme == name


def test_git_that_does_not_know_her_is_told_how(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    for name in ("GIT_CONFIG_GLOBAL", "GIT_CONFIG_SYSTEM"):
        monkeypatch.setenv(name, "/dev/null")
    done = start(tmp_path / "site", "", **GOOD)
    assert done.exit_code == 0
    assert 'git config --global user.name "Your name"' in done.output
    log = subprocess.run(["git", "log"], cwd=tmp_path / "site", capture_output=True, check=False)
    assert log.returncode, "nothing is committed in nobody's name"


def test_a_machine_without_git_is_told_so(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("PATH", str(tmp_path))
    done = start(tmp_path / "site", "", **GOOD)
    assert done.exit_code == 0
    assert "git is not on this machine" in done.output


def test_the_guide_leads_nowhere_that_is_not_there(tmp_path: Path) -> None:
    start(tmp_path / "site", "", **GOOD)
    guide = tmp_path / "site/lessons/guide"
    named = {
        (page.name, name)
        for page in guide.glob("*.md")
        for name in re.findall(r"\]\(([^)#:]+\.(?:md|png))", page.read_text("utf-8"))
    }
    assert ("index.md", "first-hour.md") in named
    outside = {"care.md"}  # an example of a link, in the guide's own words
    assert [
        (page, name) for page, name in named if not (guide / name).is_file() and name not in outside
    ] == []
