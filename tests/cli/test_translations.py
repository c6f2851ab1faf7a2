"""What an educator types to begin a translation and to say that it is done, and what she is told."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.cli.commands import commands
from tests.site_project import copy_project, small_lesson, write_lesson

BEGUN = "lessons/small/lesson.es.yaml"


@pytest.fixture
def root(tmp_path: Path) -> Path:
    """A site of one lesson in English, which may be in Spanish too."""
    project = copy_project(tmp_path / "project", lessons=False)
    write_lesson(project, "small", small_lesson())
    return project


def plumline(root: Path, *words: str, code: int = 0) -> Result:
    result = CliRunner().invoke(commands, [*words, "--root", str(root)])
    assert result.exit_code == code, result.output
    return result


def test_a_translation_is_begun_and_the_next_command_named(root: Path) -> None:
    said = plumline(root, "translate", "small", "es").stdout
    assert said == (
        f"{BEGUN} is ready. Fill it in, then write: python3 generator translated small es\n"
    )
    assert (root / BEGUN).is_file()


@pytest.mark.parametrize(
    ("foods", "told"),
    [(("pizza-cheese",), "1 name"), (("apple-raw", "pizza-cheese"), "2 names")],
)
def test_names_that_the_library_lacks_are_counted(
    root: Path, foods: tuple[str, ...], told: str
) -> None:
    file = root / "site_data/foods.yaml"
    text = file.read_text("utf-8")
    for food in foods:
        head, entry, rest = text.partition(f"\n  {food}:\n")
        assert entry
        own, line, after = rest.partition(", es: ")
        assert line
        text = f"{head}{entry}{own}}}\n{after.partition(chr(10))[2]}"
    file.write_text(text, "utf-8")
    said = plumline(root, "translate", "small", "es").stdout
    assert f"es lacks {told} of foods and moves; {BEGUN} says where to write them." in said


@pytest.mark.parametrize("command", ["translate", "translated"])
def test_a_language_the_site_has_not_is_told_with_those_it_has(root: Path, command: str) -> None:
    told = plumline(root, command, "small", "fr", code=1).stderr
    place = re.search(
        r"^site_data/site.yaml:(\d+):\d+: the site has no translations into `fr`", told
    )
    assert place
    line = (root / "site_data/site.yaml").read_text("utf-8").splitlines()[int(place[1]) - 1]
    assert line.startswith("languages:")
    assert "add it to `languages:`; there are en, es" in told


def test_what_was_not_begun_cannot_be_marked(root: Path) -> None:
    told = plumline(root, "translated", "small", "es", code=1).stderr
    assert f"{BEGUN}:1:1: there is no such translation" in told
    assert "begin it with: python3 generator translate small es" in told


@pytest.mark.parametrize(
    ("written", "lacking"),
    [
        ("title: Una lección", "It still lacks 3 texts: python3 generator check\n"),
        (
            "title: Una lección\nsummary: Una fila.\nstops: {lunch: {sides: [Casa]}}",
            "It still lacks 1 text: python3 generator check\n",
        ),
        ("title: Una lección\nsummary: Una fila.\nstops: {lunch: {sides: [Casa, Puesto]}}", ""),
    ],
)
def test_a_translation_is_marked_and_what_it_lacks_is_told(
    root: Path, written: str, lacking: str
) -> None:
    (root / BEGUN).write_text(written + "\n", "utf-8")
    said = plumline(root, "translated", "small", "es").stdout
    told = f"{BEGUN} is marked. You are told when a text of the lesson changes after this.\n"
    assert said == told + lacking
    assert written in (root / BEGUN).read_text("utf-8")
