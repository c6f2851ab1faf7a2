"""The command `report`: from the files of teachers to page, paper and table, and what is said meanwhile."""

from __future__ import annotations

import contextlib
import csv
import io
import re
import shutil
import subprocess
from html.parser import HTMLParser
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.author.report_names import site_names
from generator.cli.commands import commands
from generator.present.report.names import LessonNames
from generator.present.words.say import Say
from generator.read.library import read_library
from tests.html_page import read_page
from tests.made_papers import info, words
from tests.project import GOOD, put
from tests.site_project import copy_project

HEAD = "label,lesson,numbers,code,stops,answers,before,after,minutes"
NAMES = ("Zoë", "Ana María", "Tom O'Hara")
HIDDEN_LESSON = "quiet-afternoon"


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    project = copy_project(tmp_path_factory.mktemp("report") / "project", lessons=False)
    put(project, GOOD, "meal")
    return project


def line(number: int, stops: str, before: str, after: str, lesson: str = "meal") -> str:
    name = NAMES[number % len(NAMES)]
    told = f"guess={before},guess={after}"
    return f"{name},{lesson},A1B2,7K3M-{number:04}-4,{stops},,{told},{10 * (number % 2)}"


def rows() -> list[str]:
    """60 codes of a lesson: 12 stay right, 11 get worse, 25 better, 12 stay wrong; 3 of another one."""
    ways = [("right", "right")] * 12 + [("right", "wrong")] * 11
    ways += [("wrong", "right")] * 25 + [("wrong", "wrong")] * 12
    told = [
        line(at, "guess breakfast"[: 15 if at < 40 else 5], *way) for at, way in enumerate(ways)
    ]
    return told + [line(at, "guess", "none", "none", HIDDEN_LESSON) for at in (90, 91, 92)]


def report(site: Path, folder: Path, files: dict[str, list[str]], *options: str) -> Result:
    paths = []
    for name, lines in files.items():
        paths.append(folder / name)
        paths[-1].write_text("".join(f"{one}\n" for one in (HEAD, *lines)), "utf-8")
    words = ["report", *map(str, paths), "--into", str(folder / "out"), "--root", str(site)]
    done = CliRunner().invoke(commands, [*words, *options], catch_exceptions=False)
    assert "Traceback" not in done.output
    assert not any(name in done.output for name in NAMES)
    return done


def table(folder: Path) -> list[dict[str, str]]:
    text = (folder / "out/report.csv").read_text("utf-8-sig")
    return list(csv.DictReader(io.StringIO(text)))


class Words(HTMLParser):
    """What a page says, without its scripts and styles."""

    def __init__(self) -> None:
        super().__init__()
        self.said: list[str] = []
        self.inside = ""

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:  # noqa: ARG002  # as it is called
        self.inside = tag

    def handle_data(self, data: str) -> None:
        if self.inside not in ("script", "style"):
            self.said.extend(data.split())


def page_words(folder: Path) -> str:
    words = Words()
    words.feed((folder / "out/report.html").read_text("utf-8"))
    return " ".join(words.said)


def test_page_paper_and_table_say_the_same(site: Path, tmp_path: Path) -> None:
    done = report(site, tmp_path, {"a.csv": rows()})
    assert done.exit_code == 0
    said = page_words(tmp_path)
    # Wilson of 23, 37 and 40 of 60 as scipy 1.17 has them (C); 23 of 60 in the references too
    for one in (
        "23 of 60 38% (27% to 51%)",
        "37 of 60 62% (49% to 73%)",
        "40 of 60 67% (54% to 77%)",
        "60 codes have an answer before and after.",
        "Wrong, then right 25",
        # b = 11, c = 25 as scipy 1.17 has it (C): exact 0.02882, mid-p 0.02007
        "exact p 0.029, mid-p 0.02.",
        "More went from wrong to right",
    ):
        assert one in said
    assert "significant" not in said
    read_page(tmp_path / "out/report.html")
    assert re.search(r"all but under 10 of 60|hidden, of 60", said)
    of = {(one["of"], one["figure"]): one for one in table(tmp_path)}
    assert of["guess", "right before"]["low"] == "27.1"
    assert of["breakfast", "done"]["count"] == "40"
    assert of["guess", "done"]["hidden"] == "all_but_few"
    assert of["guess", "McNemar mid-p"]["value"].startswith("0.0200")


@pytest.mark.skipif(not shutil.which("pdftotext"), reason="pdftotext, which reads PDF, is not here")
def test_paper_by_a_reader_that_did_not_make_it(site: Path, tmp_path: Path) -> None:
    report(site, tmp_path, {"a.csv": rows()})
    paper = tmp_path / "out/report.pdf"
    first = paper.read_bytes()
    said = words(paper)
    assert "23 of 60 38% (27% to 51%)" in said
    assert "exact p 0.029, mid-p 0.02." in said
    told = info(paper)
    assert told["Tagged"] == "yes"
    assert told["Title"].startswith("What the finish codes tell")
    assert told["Page size"].startswith("612 x 792")  # Letter, 8.5 by 11 inches of 72 points
    fonts = subprocess.run(["pdffonts", paper], capture_output=True, text=True, check=True).stdout
    assert {line.split()[0].partition("+")[2] for line in fonts.splitlines()[2:]} == {
        "NotoSans-Regular",
        "NotoSans-Bold",
    }
    report(site, tmp_path, {"a.csv": rows()})
    assert paper.read_bytes() == first
    report(site, tmp_path, {"a.csv": rows()}, "--paper", "a4")
    assert info(paper)["Page size"].endswith("(A4)")


def test_no_label_and_no_small_count_in_any_file(site: Path, tmp_path: Path) -> None:
    """The lesson of three codes is none of the site's: its name may be a word in the wrong cell."""
    report(site, tmp_path, {"Ms Rivera.csv": [*rows(), "Zoë,Zoë,Zoë,Zoë,Zoë,,,,5"]})
    for name in ("report.html", "report.csv", "not-counted.csv"):
        text = (tmp_path / "out" / name).read_text("utf-8-sig")
        assert not any(one in text for one in (*NAMES, HIDDEN_LESSON))
        assert ("Ms Rivera" in text) == (name == "not-counted.csv")
    assert "A lesson that this site does not have hidden" in page_words(tmp_path)
    assert "63" not in page_words(tmp_path)


def test_what_is_left_out_is_named(site: Path, tmp_path: Path) -> None:
    files = {"a.csv": [*rows(), "Zoë,only,three"], "b.csv": ["Zoë"] * 30, "c.csv": []}
    done = report(site, tmp_path, files)
    assert done.exit_code == 0
    lines = done.stderr.splitlines()
    assert [one.rpartition("/")[2][:17] for one in lines] == [
        "a.csv:65: this li",
        "b.csv:2-31: this ",
        "c.csv:1: no row s",
    ]
    assert "32 lines could not be read and are not counted." in page_words(tmp_path)
    listed = (tmp_path / "out/not-counted.csv").read_text("utf-8-sig").splitlines()
    assert len(listed) == 4
    report(site, tmp_path, {"a.csv": rows()})
    assert not (tmp_path / "out/not-counted.csv").exists()


def test_nothing_that_can_be_read(site: Path, tmp_path: Path) -> None:
    done = report(site, tmp_path, {"c.csv": []})
    assert done.exit_code == 1
    assert done.stderr.endswith("No finish code was read, so no report was written.\n")
    assert not (tmp_path / "out").exists()


def test_codes_and_files_that_come_twice(site: Path, tmp_path: Path) -> None:
    twice = [*rows(), *rows()[:12]]
    done = report(site, tmp_path, {"a.csv": twice, "b.csv": rows(), "c.csv": twice})
    assert "c.csv: this looks like" in done.stderr
    assert done.stdout.startswith("48 codes are equal to another one of the same file; each is")
    said = page_words(tmp_path)
    assert "48 codes are equal to another one of the same file." in said
    assert "times a file looks like one that was sent already. Each is counted." in said


def test_a_file_named_twice_is_read_once(site: Path, tmp_path: Path) -> None:
    report(site, tmp_path, {"a.csv": rows()})
    done = report(site, tmp_path, {"a.csv": rows()}, str(tmp_path / "a.csv"))
    assert "a.csv: this file is named twice; it was read once." in done.stderr
    assert "60 codes have an answer before and after." in page_words(tmp_path)


def test_another_language_and_another_smallest_count(site: Path, tmp_path: Path) -> None:
    report(site, tmp_path, {"a.csv": rows()}, "--language", "es", "--at-least", "30")
    said = page_words(tmp_path)
    assert "No se muestran los conteos menores de 30" in said
    assert "23 de 60" not in said
    done = report(site, tmp_path, {"a.csv": rows()}, "--language", "fr")
    assert done.exit_code == 1
    assert "the site has no `fr`; it has en, es." in done.stderr
    assert report(site, tmp_path, {"a.csv": rows()}, "--at-least", "4").exit_code == 2


def test_titles_that_look_like_markup(site: Path, tmp_path: Path) -> None:
    put(site, GOOD.replace("Two breakfasts", "</script><img src=x onerror=alert(1)>"), "trick")
    told = [line(at, "guess", "none", "none", "trick") for at in range(12)]
    report(site, tmp_path, {"a.csv": told})
    text = (tmp_path / "out/report.html").read_text("utf-8")
    assert "<img" not in text
    shutil.rmtree(site / "lessons/trick")


def test_without_the_engine_one_sentence_says_how_to_have_it(
    site: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(__import__("sys").modules, "duckdb", None)
    done = report(site, tmp_path, {"a.csv": rows()})
    assert done.exit_code == 1
    assert "the part that counts finish codes is not installed: run `" in done.stderr
    assert "-m pip install duckdb` once, 25 MB, and try again." in done.stderr


def of_answers(site: Path, numbers: str) -> list[str]:
    """60 codes: of each answer 25 right at first, 15 later; of the last one 3 at first, 40 later."""
    *names, last = _named(site).answers
    hows = ["first"] * 25 + ["later"] * 15 + ["no"] * 20
    lasts = ["first"] * 3 + ["later"] * 40 + ["no"] * 17
    return [
        f"Zoë,meal,{numbers},7K3M-{at:04}-4,guess,"
        f"{' '.join([*(f'{name}={how}' for name in names), f'{last}={lasts[at]}'])},,,5"
        for at, how in enumerate(hows)
    ]


def _named(site: Path) -> LessonNames:
    library = read_library(site)
    return site_names(site, ["meal"], library, Say(library.words["en"]))["meal"]


def test_what_most_missed_by_answer(site: Path, tmp_path: Path) -> None:
    named = _named(site)
    *names, last = named.answers.values()
    assert names
    report(site, tmp_path, {"a.csv": of_answers(site, named.numbers)})
    said = page_words(tmp_path)
    # Wilson of 25 and of 40 of 60 as scipy 1.17 has them (C)
    assert f"{names[0]} 25 of 60 42% (30% to 54%) 40 of 60 · 67% (54% to 77%)" in said
    assert f"{last} under 10 of 60 hidden 43 of 60 · 72%" in said
    assert f"did not have these right at first, fewest first: {' '.join([last, *names])} " in said
    of = {(one["of"], one["figure"]): one for one in table(tmp_path) if one["part"] == "answers"}
    *ids, last_id = named.answers
    assert of[ids[0], "right at last"]["count"] == "40"
    assert of[last_id, "right at first"]["hidden"] == "few"
    assert not of[last_id, "right at first"]["count"]


def test_answers_to_other_numbers_are_told_by_their_ids(site: Path, tmp_path: Path) -> None:
    report(site, tmp_path, {"a.csv": of_answers(site, "A1B2")})
    assert f"{next(iter(_named(site).answers))} (not known to this site)" in page_words(tmp_path)


def test_a_name_of_a_file_is_no_formula(site: Path, tmp_path: Path) -> None:
    report(site, tmp_path, {"a.csv": rows()})
    (tmp_path / "=cmd|' (calc)'!A0.csv").write_text("=1+1,@SUM(A1)\n", "utf-8")
    with contextlib.chdir(tmp_path):
        words = ["report", "a.csv", "=cmd|' (calc)'!A0.csv", "--into", "out", "--root", str(site)]
        assert CliRunner().invoke(commands, words).exit_code == 0
    text = (tmp_path / "out/not-counted.csv").read_text("utf-8-sig")
    assert not [
        cell
        for row in csv.reader(io.StringIO(text))
        for cell in row
        if cell[:1] in tuple("=+-@\t\r")
    ]
    assert "'=cmd" in text


def test_a_lesson_that_has_another_name_now_is_named(site: Path) -> None:
    file = site / "lessons/meal/lesson.yaml"
    written = file.read_text("utf-8")
    file.write_text(f"formerly: [lunch]\n{written}", "utf-8")
    library = read_library(site)
    names = site_names(site, ["lunch", "meal", "nowhere"], library, Say(library.words["en"]))
    assert names.keys() == {"lunch", "meal"}
    assert names["lunch"] == names["meal"]
