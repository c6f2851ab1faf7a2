"""The guide's first hour, followed word for word: from a new folder to a page that a web server gives.

Two things are put in the place of others. What `python3 generator` sets up is installed once, by
`tests/released.py`, for no test asks a registry; and the forge is a bare repository, of which a
clone does what the site's own workflow says.
"""

from __future__ import annotations

import os
import re
import shlex
import subprocess
from collections.abc import Iterator
from pathlib import Path
from urllib.request import urlopen

import pytest
import yaml

from tests.local_server import serving
from tests.released import GIT, build_wheel, install, plumline
from tests.site_project import ROOT

PAGE = (ROOT / "lessons/guide/first-hour.md").read_text("utf-8")
BLOCK = re.compile(r"^```(sh|yaml)\n(.*?)^```$", re.MULTILINE | re.DOTALL)
ANSWER = re.compile(r"^\| (?!Question|---)[^|]+ \| ([^|]+) \|$", re.MULTILINE)
PROGRAM = ["python3", "generator"]


class Educator:
    """Somebody at a terminal, who types what the page says."""

    def __init__(self, installed: Path, folder: Path, forge: Path) -> None:
        self.installed = installed
        self.here = folder
        self.forge = forge
        self.said: list[str] = []

    def type(self, line: str) -> str:
        words = shlex.split(line.replace("ADDRESS", str(self.forge)))
        if words[0] == "cd":
            self.here = (self.here / words[1]).resolve()
            return ""
        if words[:2] == PROGRAM:
            answers = ["y"] if words[2] == "publish" else ANSWER.findall(PAGE)
            typed = "".join(f"{answer}\n" for answer in answers)
            done = plumline(self.installed, *words[2:], cwd=self.here, typed=typed)
        else:
            done = subprocess.run(
                words,
                cwd=self.here,
                env={**os.environ, **GIT},
                capture_output=True,
                text=True,
                check=False,
            )
        assert done.returncode == 0, f"{line}: {done.stdout}{done.stderr}"
        self.said.append(done.stdout)
        return done.stdout

    def change(self, file: Path, old: str, new: str) -> None:
        text = file.read_text("utf-8")
        assert text.count(old) == 1, f"the lesson holds what the page says: {old}"
        file.write_text(text.replace(old, new), "utf-8")

    def follow(self, page: str) -> None:
        """Every command and every change, in their order."""
        blocks = [(found[1], found[2]) for found in BLOCK.finditer(page)]
        (named,) = set(re.findall(r"Open `(lessons/\S+/lesson\.yaml)`", page))
        waiting = ""
        for kind, text in blocks:
            if kind == "sh":
                for line in text.splitlines():
                    self.type(line)
            elif waiting:
                self.change(self.here / named, waiting, text)
                waiting = ""
            else:
                waiting = text
        assert not waiting


@pytest.fixture(scope="module")
def educator(tmp_path_factory: pytest.TempPathFactory) -> Educator:
    """She has followed the page to its end."""
    folder = tmp_path_factory.mktemp("first-hour")
    installed = install(build_wheel(folder / "wheel"), folder / "installed")
    forge = folder / "forge.git"
    subprocess.run(["git", "init", "--quiet", "--bare", str(forge)], check=True)
    program = folder / "program"
    program.mkdir()
    made = Educator(installed, program, forge)
    made.follow(PAGE)
    return made


@pytest.fixture(scope="module")
def published(educator: Educator, tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """Address of the site as the forge makes it: from a clone, by the site's own workflow."""
    clone = tmp_path_factory.mktemp("forge") / "clone"
    subprocess.run(
        ["git", "clone", "--quiet", "--branch=main", str(educator.forge), str(clone)], check=True
    )
    workflow = yaml.safe_load((clone / ".github/workflows/publish.yml").read_text("utf-8"))
    steps = workflow["jobs"]["build"]["steps"]
    steps = [step.get("run", "") for step in steps if "if" not in step]
    ran = [
        shlex.split(step, comments=True) for step in steps if step.startswith("python3 generator ")
    ]
    assert [words[2] for words in ran] == ["check", "build"]
    for words in ran:
        done = plumline(educator.installed, *words[2:], cwd=clone)
        assert done.returncode == 0, done.stderr
    with serving(clone / "site") as address:
        yield address


def got(address: str) -> str:
    with urlopen(address) as answer:
        text: str = answer.read().decode("utf-8")
        return text


def test_the_page_holds_commands_changes_and_five_answers() -> None:
    assert len(ANSWER.findall(PAGE)) == 5
    kinds = [found[1] for found in BLOCK.finditer(PAGE)]
    assert kinds.count("yaml") == 4
    assert kinds.count("sh") >= 4


def test_its_lesson_is_published(published: str) -> None:
    page = got(f"{published}supper-on-the-hill/index.html")
    assert "Supper on the hill" in page
    assert "Two suppers for a cold evening." in page
    assert "Hill Kitchen" in page
    assert "Apple pie" in page
    assert got(f"{published}supper-on-the-hill/worksheet.html")


def test_the_front_page_and_the_sitemap_name_it(published: str) -> None:
    front = got(f"{published}index.html")
    assert 'href="supper-on-the-hill/index.html"' in front
    assert "https://hill-kitchen.example.org/supper-on-the-hill/" in got(f"{published}sitemap.xml")


def test_nothing_else_is_published(educator: Educator) -> None:
    """One lesson, seven pages, its stops for a class site, one language; no guide, no program, no demo."""
    site = educator.here / "site"
    tops = {path.relative_to(site).parts[0] for path in site.rglob("*.html")}
    assert tops == {
        *("404.html", "care.html", "codes.html", "index.html", "lessons.html"),
        *("sources.html", "stamps.html", "teachers.html", "updates.html"),
        *("embed", "supper-on-the-hill"),
    }
    for file in site.rglob("*.html"):
        assert "larkmead" not in file.read_text("utf-8").lower(), file


def test_everything_was_committed(educator: Educator) -> None:
    said = educator.type("git status --porcelain")
    assert said == ""


def test_its_numbers_are_traced_to_their_records(educator: Educator) -> None:
    """USDA FoodData Central, SR Legacy, 171688: apples, raw, with skin (the library's own entry)."""
    traced = next(said for said in educator.said if "Apple pie" in said or "apple-pie" in said)
    assert "SR Legacy" in traced


def test_the_readme_of_the_site_has_no_other_command_than_there_are(educator: Educator) -> None:
    text = (educator.here / "README.md").read_text("utf-8")
    for word in re.findall(r"python3 generator ([a-z-]+)", text):
        assert plumline(educator.installed, word, "--help", cwd=educator.here).returncode == 0, word
