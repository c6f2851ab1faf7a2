"""An educator's year: her site with its film, what is printed and sent from it, and the site as the forge builds it."""

from __future__ import annotations

import json
import re
import shutil
from dataclasses import dataclass, field
from pathlib import Path
from posixpath import normpath
from xml.etree.ElementTree import Element

import pytest
from click.testing import CliRunner
from lxml import etree

from generator.cli.commands import commands
from tests.html_page import read_page
from tests.publish.own_site import OwnSite, git, own_site
from tests.site_project import ROOT

FILMED = "river-walk"
SHEETS = ("worksheet", "answers", "cards", "practice", "notes")
ATOM = "{http://www.w3.org/2005/Atom}"


@dataclass(frozen=True)
class Known:
    """What the site knows of a stamp that somebody asks for."""

    lesson: str
    language: str
    sheet: str
    now: bool
    gone: bool


@dataclass
class Year:
    """Her site, and each state of it that the public has seen."""

    site: OwnSite
    folder: Path
    seen: list[Path] = field(default_factory=list)
    printed: dict[str, list[str]] = field(default_factory=dict)
    """By path of a sheet: the stamps it bore whenever somebody printed it, which is after each publication."""

    @property
    def public(self) -> Path:
        """The site as the forge has it online now."""
        return self.seen[-1]

    def run(self, *typed: str) -> str:
        """What one of her commands says."""
        return words(CliRunner().invoke(commands, [*typed, "--root", str(self.site.root)]).output)

    def edit(self, path: str, *changes: tuple[str, str]) -> None:
        """Change words of a file, each wherever it stands."""
        file = self.site.root / path
        text = file.read_text("utf-8")
        for old, new in changes:
            assert old in text, (path, old)
            text = text.replace(old, new)
        file.write_text(text, "utf-8")

    def publish(self, *words: str) -> str:
        """Publish, and let the forge do what its workflow says; gives what she read meanwhile."""
        done = self.site.publish(*words)
        assert done.exit_code == 0, done.output
        self.forge()
        return done.output

    def forge(self) -> None:
        """A fresh clone, checked and built from nothing."""
        clone = self.folder / f"forge-{len(self.seen)}"
        git(self.folder, "clone", "-q", str(self.site.remote), str(clone))
        for words in (["check"], ["build", "--anew"]):
            done = CliRunner().invoke(commands, [*words, "--root", str(clone)])
            assert done.exit_code == 0, done.output
        self.seen.append(clone / "site")

    def holds(self) -> None:
        """What must be so after each publication: every sheet in a drawer and every link that was sent find the truth."""
        there = self.sheets()
        for path, stamps in self.printed.items():
            for stamp in stamps:
                today = path if path in there else self.led_to(path)
                now = today in there and self.stamp(today) == stamp
                known = [one for one in self.asked(stamp) if one.sheet == Path(path).stem]
                assert known, (path, stamp)
                assert any(one.now for one in known) == now, (path, stamp)
        for path in there:
            if (stamp := self.stamp(path)) not in self.printed.setdefault(path, []):
                self.printed[path].append(stamp)
        sent = {
            file.relative_to(site).as_posix() for site in self.seen for file in site.rglob("*.html")
        }
        assert [path for path in sent if not (self.public / path).exists()] == []
        articles = [one.get("id") or "" for one in self.page("updates.html").iter("article")]
        assert len(articles) == len(self.feed()) == len(self.seen)

    def sheets(self) -> list[str]:
        """Paths of the sheets that the public can print now, old addresses left out."""
        return sorted(
            file.relative_to(self.public).as_posix()
            for file in self.public.rglob("*.html")
            if file.stem in SHEETS and "data-way" not in file.read_text("utf-8")
        )

    def asked(self, stamp: str) -> list[Known]:
        """What the site knows of a stamp."""
        found = []
        for file in (self.public / "stamps").glob("*.json"):
            for lesson, language, sheet, now, *gone in json.loads(file.read_text("utf-8")).get(
                stamp, ()
            ):
                found.append(Known(lesson, language, sheet, bool(now), bool(gone)))
        return found

    def past_sheet(self, lesson: str, stamp: str) -> str:
        """What the page of a lesson's sheets says of one that does not hold any more."""
        (section,) = [
            one
            for one in self.page(f"{lesson}/sheets.html").iter("section")
            if one.get("id") == stamp
        ]
        return words(" ".join(section.itertext()))

    def corrections(self) -> set[str]:
        """Numbers of the film of which the page says that they are others now."""
        return set(re.findall(r"The video says (\S+) \(", self.says(f"{FILMED}/index.html")))

    def page(self, path: str) -> Element:
        """A page that the public sees."""
        return read_page(self.public / path)

    def says(self, path: str) -> str:
        """What a page says, without its head and foot."""
        main = self.page(path).find(".//main")
        assert main is not None
        return words(" ".join(main.itertext()))

    def latest(self, folder: str = "") -> str:
        """What the newest entry of the page of updates says."""
        article = self.page(f"{folder}updates.html").find(".//article")
        assert article is not None
        return words(" ".join(article.itertext()))

    def feed(self, folder: str = "") -> list[etree._Element]:
        """The entries of the feed, the newest first."""
        feed = etree.fromstring((self.public / f"{folder}updates.xml").read_bytes())
        return feed.findall(f"{ATOM}entry")

    def stamp(self, path: str) -> str:
        """The stamp that a sheet bears when it is printed now."""
        marked = re.search(r'data-stamp="([^"]*)"', (self.public / path).read_text("utf-8"))
        assert marked, path
        return re.findall(r"[0-9A-Z]{6}", marked[1])[-1]

    def led_to(self, path: str) -> str:
        """Where an address of before leads without a script, from the root of the site."""
        ways = [one for one in self.page(path).iter("a") if one.get("data-way") is not None]
        assert len(ways) == 1, path
        return normpath(f"{path}/../{ways[0].get('href')}")


def words(text: str) -> str:
    """A text with one plain space between two words, whatever stood there."""
    return " ".join(text.split())


def begin(folder: Path, patch: pytest.MonkeyPatch) -> Year:
    """A site in two languages with a lesson that is filmed and one that is not, not yet published."""
    patch.setenv("SOURCE_DATE_EPOCH", "1700000000")
    site = own_site(folder, patch)
    year = Year(site, folder)
    shutil.copytree(ROOT / "lessons" / FILMED, site.root / "lessons" / FILMED)
    (site.root / f"lessons/{FILMED}/recorded.yaml").unlink()
    spanish = {
        "title": "Una lección pequeña", "summary": "Una fila.",
        "stops": {"lunch": {"sides": ["Casa", "Kiosco"]}},
    }  # fmt: skip
    site.write("lessons/soup/lesson.es.yaml", str(spanish))
    year.edit("site_data/site.yaml", ("languages: [en]", "languages: [en, es]"))
    return year
