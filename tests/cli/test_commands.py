"""What an educator types, what she is told, and what happens to her files."""

from __future__ import annotations

import json
import shutil
import subprocess
import sys
from pathlib import Path

import click
import pytest
from click.testing import CliRunner, Result

from generator.cli.commands import COMMANDS, commands
from generator.cli.food_commands import FOODS, foods
from tests.project import GOOD, put
from tests.site_project import copy_project, hashes

TWELVE = Path(__file__).parents[1] / "examples" / "twelve-mistakes" / "lesson.yaml"


@pytest.fixture
def root(tmp_path: Path) -> Path:
    """A site with one good lesson."""
    project = copy_project(tmp_path / "project", lessons=False)
    put(project, GOOD, "meal")
    return project


def plumline(root: Path, *words: str) -> Result:
    return CliRunner().invoke(commands, [*words, "--root", str(root)], catch_exceptions=False)


def test_check_of_a_good_site(root: Path) -> None:
    done = plumline(root, "check")
    assert (done.exit_code, done.stdout) == (0, "1 lesson checked: nothing has to be put right.\n")
    assert done.stderr == ""


def test_check_shows_each_problem_with_its_line_and_a_mark(root: Path) -> None:
    put(root, GOOD.replace("food: apple-raw", "food: aple-raw"), "meal")
    done = plumline(root, "check")
    assert done.exit_code == 1
    lines = done.stderr.splitlines()
    assert lines[0].startswith("lessons/meal/lesson.yaml:22:19: there is no food `aple-raw`")
    assert lines[1].startswith("   22 | ")
    assert lines[1][lines[2].index("^") :].startswith("aple-raw")
    assert lines[3].strip() == "did you mean `apple-raw`?"
    assert lines[-1] == "1 thing to put right. Nothing was written."


@pytest.mark.parametrize(
    ("text", "width"),
    [
        ("title: 🥕🥕 *x: y: z\n", 12 + 2),
        ("\ufefftitle: é: y\n", 8),
        ("a:\n\tb: 1\n", 0),
        ("title: " + "x" * 5000 + ": y\n", 79),
    ],
    ids=["wide signs", "byte order mark", "tab", "a line of thousands"],
)
def test_the_mark_stands_below_its_place(root: Path, text: str, width: int) -> None:
    """A picture sign is two columns wide in a terminal: Unicode UAX 11, from memory."""
    put(root, text, "meal")
    lines = plumline(root, "check").stderr.splitlines()
    assert lines[2] == " " * (len("   11 | ") + width) + "^"
    assert len(lines[1]) <= 170


def test_twelve_mistakes_in_one_run_of_the_program(root: Path) -> None:
    put(root, TWELVE.read_bytes(), "twelve-mistakes")
    done = subprocess.run(
        [sys.executable, "-c", "from generator.cli import main; main()", "check", "--root", root],
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )
    assert done.returncode == 1
    assert "Traceback" not in done.stderr
    heads = [line for line in done.stderr.splitlines() if line.startswith("lessons/")]
    assert [int(head.split(":")[1]) for head in heads] == [
        3, 4, 5, 9, 15, 18, 19, 20, 21, 23, 24, 25,
    ]  # fmt: skip
    source = TWELVE.read_text(encoding="utf-8").splitlines()
    for head in heads:
        number = int(head.split(":")[1])
        assert f"{number:>5} | {source[number - 1]}" in done.stderr
    assert "did you mean `summary`?" in done.stderr
    assert done.stderr.rstrip().endswith("12 things to put right. Nothing was written.")


def test_questions_do_not_stop_a_check(root: Path) -> None:
    put(root, GOOD.replace("What do you like?", "Is it a guilty lunch?"), "meal")
    done = plumline(root, "check")
    assert done.exit_code == 0
    assert "“guilty”" in done.stderr
    assert done.stdout.endswith("put right, 1 thing to look at.\n")
    assert "Nothing was written" not in done.stderr


def test_mistakes_of_every_lesson_are_told(root: Path) -> None:
    for name in ("one", "two"):
        put(root, GOOD.replace("grades: 3-5", "grades: 9"), name)
    done = plumline(root, "check")
    assert "lessons/one/lesson.yaml:3:9" in done.stderr
    assert "lessons/two/lesson.yaml:3:9" in done.stderr


@pytest.mark.parametrize("name", ["foods", "moves", "site", "words/en"])
def test_broken_site_data_is_told_without_traceback(root: Path, name: str) -> None:
    (root / "site_data" / f"{name}.yaml").write_text("~\n", encoding="utf-8")
    done = plumline(root, "check")
    assert done.exit_code == 1
    assert f"site_data/{name}.yaml:1:1" in done.stderr


def test_a_folder_that_is_no_site(tmp_path: Path) -> None:
    done = plumline(tmp_path, "check")
    assert done.exit_code == 1
    assert "mkdocs.yml:1:1: this is not the folder of a site" in done.stderr


@pytest.mark.parametrize("word", ["check", "build", "preview", "new", "trace"])
def test_help_says_what_a_word_does(word: str) -> None:
    done = CliRunner().invoke(commands, [word, "--help"])
    assert done.exit_code == 0
    assert "--root" in done.output
    assert word in CliRunner().invoke(commands, ["--help"]).output


def test_trace_to_read(root: Path) -> None:
    done = plumline(root, "trace", "meal")
    assert done.exit_code == 0
    assert done.stdout.startswith(
        "breakfast.bagel-plain_oatmeal-cooked.at-home: 170 kcal\n    record: USDA FoodData"
    )


def test_trace_for_another_program(root: Path) -> None:
    figures = json.loads(plumline(root, "trace", "meal", "--json").stdout)
    assert {"id": "breakfast.total.gap", "value": "120"}.items() <= next(
        figure for figure in figures if figure["id"] == "breakfast.total.gap"
    ).items()


def test_trace_of_no_lesson_names_those_there_are(root: Path) -> None:
    done = plumline(root, "trace", "mael")
    assert done.exit_code == 2
    assert "there is no lesson `mael`; there are meal" in done.stderr


@pytest.mark.parametrize(
    ("title", "folder"),
    [
        ("Soup for two", "soup-for-two"),
        ('The "big" lunch', "the-big-lunch"),
        ("It's \\ backslash: a #hash - {brace} [x] & *star*", "it-s-backslash-a-hash-brace-x-star"),
        ("🥕 Carrots 🥕", "carrots"),
        ("Sopa de Ñandú", "sopa-de-nandu"),
        ("../../etc/passwd", "etc-passwd"),
        ("C:\\temp", "c-temp"),
        ("two\nlines\tand a tab", "two-lines-and-a-tab"),
        ("bell\x07 and \udcff half", "bell-and-half"),
        ("TITLE", "title"),
        ("no", "no"),
        ("1:30", "1-30"),
        ("a" * 59 + " b c", "a" * 59),
    ],
)
def test_a_new_lesson_passes_its_check_as_it_is(root: Path, title: str, folder: str) -> None:
    done = plumline(root, "new", title)
    assert done.exit_code == 0, done.stderr
    assert (root / "lessons" / folder / "lesson.yaml").is_file()
    assert sorted(path.name for path in (root / "lessons").iterdir()) == sorted(["meal", folder])
    checked = plumline(root, "check")
    assert (checked.exit_code, checked.stderr) == (0, "")


@pytest.mark.parametrize("title", ["", "   ", "!?…", "🥕", "суп", "..", "/"])
def test_a_title_that_names_no_folder(root: Path, title: str) -> None:
    done = plumline(root, "new", title)
    assert done.exit_code == 1
    assert "nothing to name a folder by" in done.stderr
    assert [path.name for path in (root / "lessons").iterdir()] == ["meal"]


def test_a_lesson_is_never_begun_twice(root: Path) -> None:
    plumline(root, "new", "Soup")
    before = hashes(root / "lessons")
    done = plumline(root, "new", "soup!")
    assert done.exit_code == 1
    assert "lessons/soup:1:1: this lesson is there already" in done.stderr
    assert hashes(root / "lessons") == before


@pytest.mark.parametrize("title", ["Assets", "components"])
def test_a_name_the_site_keeps(root: Path, title: str) -> None:
    assert plumline(root, "new", title).exit_code == 1
    assert not (root / "lessons" / title.lower()).exists()


def test_without_a_starter_of_its_own_the_programs_serves(root: Path) -> None:
    (root / "site_data" / "new_lesson.yaml").unlink()
    assert plumline(root, "new", "Soup").exit_code == 0
    assert plumline(root, "check").exit_code == 0


def test_build_and_a_mistake_that_leaves_the_site_as_it_was(root: Path) -> None:
    done = plumline(root, "build")
    assert done.exit_code == 0, done.stderr
    assert (root / "site" / "meal" / "index.html").is_file()
    before = hashes(root / "site")
    put(root, GOOD.replace("grades: 3-5", "grades: 9"), "meal")
    failed = plumline(root, "build")
    assert failed.exit_code == 1
    assert failed.stderr.count("lessons/meal/lesson.yaml:3:9") == 1
    assert "    3 | grades: 9" in failed.stderr
    assert hashes(root / "site") == before
    assert sorted(path.name for path in root.iterdir() if path.name.startswith(".")) == [".cache"]


def test_build_leaves_nothing_of_a_lesson_that_is_gone(root: Path) -> None:
    put(root, GOOD, "other")
    assert plumline(root, "build").exit_code == 0
    shutil.rmtree(root / "lessons" / "other")
    assert plumline(root, "build").exit_code == 0
    assert not (root / "site" / "other").exists()


@pytest.mark.parametrize(
    "words", ["Cafe\u0301 time.", "\u0301", "one \u0301 120 \u0301\u0301kcal", "a \u20dd."]
)
def test_a_lone_accent_anywhere_is_no_traceback(root: Path, words: str) -> None:
    """Text copied from some documents has each accent apart from its letter: Unicode, form D."""
    lesson = GOOD
    for text in ("Hello from Larkmead.", "Which side holds more?", "Something warm", "carton"):
        lesson = lesson.replace(text, f"{text} {words}")
    put(root, lesson, "meal")
    assert plumline(root, "check").exit_code == 0
    assert plumline(root, "build").exit_code == 0


def test_each_file_is_read_once_to_show_its_lines(
    root: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    put(root, GOOD + "".join(f"key{number}: a\n" for number in range(90)), "meal")
    opened: list[Path] = []
    read = Path.read_text
    monkeypatch.setattr(
        Path, "read_text", lambda path, *rest: opened.append(path) or read(path, *rest)
    )
    done = plumline(root, "check")
    assert "lessons/meal/lesson.yaml:82:1: and 40 more in this file" in done.stderr
    assert "   81 | key49: a" in done.stderr
    assert "90 things to put right" in done.stderr
    assert opened.count(root / "lessons/meal/lesson.yaml") == 1


def test_the_mark_stands_below_its_place_behind_an_accent_of_its_own(root: Path) -> None:
    put(root, "title: e\u0301e\u0301: y\n", "meal")
    lines = plumline(root, "check").stderr.splitlines()
    assert lines[1] == "    1 | title: \u00e9\u00e9: y"
    assert lines[1][lines[2].index("^") :].startswith(": y")


def test_the_list_of_commands_says_of_each_what_it_says_of_itself() -> None:
    """Listing them loads none of them, so the words stand twice and must agree."""
    for group, table in ((commands, COMMANDS), (foods, FOODS)):
        context = click.Context(group)
        for name, (_, says) in table.items():
            command = group.get_command(context, name)
            assert command is not None
            assert command.get_short_help_str(limit=400) == says
