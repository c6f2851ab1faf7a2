"""Words that look like markup, in every field of every kind, change no page, no drawing and no data of a site."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Mapping
from html.parser import HTMLParser
from pathlib import Path
from xml.etree.ElementTree import Element, fromstring
from zipfile import ZipFile

import pytest

from generator.model.base import Frozen
from generator.model.food import FoodEntry, Portion
from generator.model.lesson import LessonFile
from generator.model.move import MoveText
from generator.model.move_energy import EnergySource
from generator.model.site import SiteFile, Standard
from generator.model.stops import STOP_KINDS
from generator.model.text_marks import marked_fields
from generator.read.library import FoodSource
from tests.hostile import HOSTILE, PLAIN, fields, mark, write_site
from tests.html_page import pages, read_html, read_page
from tests.project import library
from tests.site_project import build_project

PAPERS = ("worksheet", "a4")
"""One of each lesson: what papers print of the words is looked at in ``tests/present/papers``."""
DATA = ("application/json", "application/ld+json")
LIVE = ("script", "style", "iframe", "object", "embed", "form", "base", "link", "meta")
"""What nobody's words may bring into a page."""
NOT_SHOWN = {
    "food.group": "where a food is listed in the library's own file",
    "food.release": "only where it differs from the library's",
    "source.licence": "a word for whoever keeps the site",
    "portion.record": "in the trace of a number alone",
    "recorded.food": "no correction speaks of another food than the lesson has; the educator is told",
    "energy.name": "only where a move's energy is told",
}
"""Fields whose words need not be on any page of the demo, and why."""


@pytest.fixture(scope="module")
def project(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return write_site(tmp_path_factory.mktemp("hostile"), HOSTILE, *PAPERS)


@pytest.fixture(scope="module")
def hostile(project: Path) -> Path:
    return build_project(project)


@pytest.fixture(scope="module")
def plain(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The same site with plain words of the same length."""
    return build_project(write_site(tmp_path_factory.mktemp("plain"), PLAIN, *PAPERS))


Bones = Counter[tuple[str, tuple[str, ...]]]
"""Every element with the names of its attributes, counted."""
IMPLIED = {"html", "head", "body", "tbody", "colgroup"}
"""Elements that the HTML standard puts where nobody wrote them (WHATWG HTML, 13.1.2.4)."""


def bones(root: Element) -> Bones:
    """What a parser of the standard makes of a page."""
    return Counter((str(each.tag), tuple(sorted(each.attrib))) for each in root.iter())


class Tags(HTMLParser):
    """What is written in a page, tag by tag: twenty times as fast as a parser of the standard."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.found: Bones = Counter()
        self.feed(html)
        self.close()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.found[tag, tuple(sorted({name for name, _ in attrs}))] += 1


def written(html: str) -> Bones:
    """Every tag of a page with the names of its attributes, counted."""
    return Tags(html).found


def only_implied(html: str) -> Bones:
    """What a parser of the standard finds in a page and nobody wrote, but for what it always adds."""
    parsed = Counter(
        (tag.split("}")[-1].lower(), tuple(sorted(name.split("}")[-1].lower() for name in names)))
        for (tag, names), times in bones(read_html(html)).items()
        for _ in range(times)
    )
    more, less = parsed - written(html), written(html) - parsed
    return Counter({one: times for one, times in (more + less).items() if one[0] not in IMPLIED})


def drawing(file: Path) -> Element:
    return fromstring(file.read_text("utf-8"))  # noqa: S314  # made by the program, in this test


def copies(site: Path) -> dict[str, str]:
    """Every page of every copy that is carried home, by the names of both."""
    found = {}
    for file in sorted(site.rglob("*-take-home.zip")):
        with ZipFile(file) as packed:
            inside = [name for name in packed.namelist() if name.endswith(".html")]
            found |= {
                f"{file.relative_to(site)}/{name}": packed.read(name).decode() for name in inside
            }
    return found


def cartridges(site: Path) -> dict[str, Counter[tuple[str, tuple[str, ...]]]]:
    """What every file of every cartridge is made of, and the HTML in its questions."""
    found: dict[str, Counter[tuple[str, tuple[str, ...]]]] = {}
    for file in sorted(site.rglob("*.imscc")):
        with ZipFile(file) as packed:
            for name in (one for one in packed.namelist() if one.endswith(".xml")):
                root = fromstring(packed.read(name))  # noqa: S314  # made by the program, in this test
                asked = [one.text or "" for one in root.iter() if str(one.tag).endswith("}mattext")]
                html = (bones(read_html(f"<!doctype html><title>q</title>{one}")) for one in asked)
                found[f"{file.relative_to(site)}/{name}"] = sum(html, bones(root))
    return found


def test_the_words_change_nothing_of_any_cartridge_but_words(hostile: Path, plain: Path) -> None:
    told = cartridges(hostile)
    assert len(told) > 100
    assert told == cartridges(plain)


def test_the_words_change_no_markup_of_any_page(hostile: Path, plain: Path) -> None:
    names = [page.relative_to(plain) for page in pages(plain)]
    assert [page.relative_to(hostile) for page in pages(hostile)] == names
    found = {name: (hostile / name).read_text("utf-8") for name in names}
    same = {name: (plain / name).read_text("utf-8") for name in names}
    assert different(found, same) == []


def different(
    found: Mapping[object, str], same: Mapping[object, str]
) -> list[tuple[object, Bones]]:
    """Pages of which other tags are written, or of which a parser reads others than are written."""
    others = ((name, written(page) - written(same[name])) for name, page in found.items())
    changed = [
        (name, more) for name, more in others if more or written(found[name]) != written(same[name])
    ]
    read = ((name, only_implied(page)) for name, page in found.items())
    return changed + [(name, more) for name, more in read if more]


def test_nor_of_any_page_that_is_carried_home(hostile: Path, plain: Path) -> None:
    found, same = copies(hostile), copies(plain)
    assert found.keys() == same.keys()
    assert found
    assert different(dict(found), dict(same)) == []


@pytest.mark.parametrize(
    "html", ["<p>a<b>c", "<table><tr><td>a", "<p title='<i>'>a<a href=x>b", "<select><p>a</select>"]
)
def test_markup_that_came_with_words_would_be_seen(html: str) -> None:
    plain = "<!doctype html><html><head><title>t</title></head><body><main>{}</main></body></html>"
    page = plain.format("words")
    assert different({"one": page}, {"one": page}) == []
    assert Tags(plain.format(html)).found != Tags(page).found


def test_nothing_live_comes_with_them(hostile: Path, plain: Path) -> None:
    """Also where a page written by hand lets plain elements through."""
    for page in pages(hostile):
        root = read_page(page)
        same = written((plain / page.relative_to(hostile)).read_text("utf-8"))
        for tag in LIVE:
            there = sum(times for (name, _), times in same.items() if name == tag)
            assert len(list(root.iter(tag))) == there, (page, tag)
        for each in root.iter():
            assert not [name for name in each.attrib if name.startswith("on")], page
            assert "style" not in each.attrib, page


def test_no_template_was_run_by_them(hostile: Path) -> None:
    for page in pages(hostile):
        text = "".join(read_page(page).itertext())
        if "{{" in text:
            assert "{{ view.page }}" in text, page
            assert "{{7*7}}" in text, page


def test_all_data_is_whole(hostile: Path, plain: Path) -> None:
    """JSON by its own reader, drawings by one of XML 1.0."""
    for page in pages(hostile):
        for script in read_page(page).iter("script"):
            if script.get("type") in DATA:
                assert json.loads(script.text or "")
    read = 0
    for file in sorted(hostile.rglob("*")):
        if file.suffix == ".json":
            json.loads(file.read_text("utf-8"))
            read += 1
        elif file.suffix in {".svg", ".xml"}:
            same = drawing(plain / file.relative_to(hostile))
            assert bones(drawing(file)) == bones(same), file
            read += 1
    assert read > 10


def test_no_caption_or_chapter_holds_a_tag_of_theirs(hostile: Path) -> None:
    """WebVTT, W3C: a cue's text begins a tag with ``<``."""
    read = list(hostile.rglob("*.vtt"))
    assert read
    for file in read:
        text = file.read_text("utf-8")
        assert "<script" not in text, file
        assert "<img" not in text, file


def everything(site: Path) -> str:
    """All that is published, as text."""
    kinds = {".html", ".js", ".json", ".vtt", ".svg", ".txt"}
    return "".join(file.read_text("utf-8") for file in site.rglob("*") if file.suffix in kinds)


def test_the_words_of_every_field_are_published(project: Path, hostile: Path) -> None:
    """Else this walk would show nothing of a field.

    Words of the site that no page of the demo says are few: under a third, for it was never published.
    """
    published = everything(hostile)
    missing = {field for field in fields(project) if mark(field) not in published}
    words = {field for field in missing if field.startswith("words.")}
    assert missing - words - NOT_SHOWN.keys() == set()
    assert 3 * len(words) < len(library().words["en"].texts), sorted(words)


def strings(model: type[Frozen]) -> set[str]:
    """Fields of a model of the library that hold text."""
    return {name for name, field in model.model_fields.items() if "str" in str(field.annotation)}


def test_no_field_of_the_library_was_forgotten() -> None:
    """Whoever adds a field adds it to ``tests/hostile.py``, or here with its reason."""
    told_by_check = {"as_published"}  # a reason in the library; no page shows it
    assert strings(FoodEntry) == {"names", "group", "record", "release"} | told_by_check
    assert strings(Portion) == {
        "names",
        "record",
        "units",
    }  # a unit is part of an amount, as `names` is
    assert strings(FoodSource) == {"name", "release", "licence", "url"}  # a date and an address
    assert strings(MoveText) == {"name", "count_is", "steps", "seated", "care"}
    assert strings(EnergySource) == {"name", "url"}  # an address
    assert strings(Standard) == {"says"}
    site = {
        "programme",
        "programme_in",
        "address",
        "license",
        "formerly",
        "languages",
        "standards",
    }  # by patterns, or codes
    assert strings(SiteFile) <= site


def test_every_field_of_every_kind_of_stop_was_given_words(project: Path) -> None:
    given = set(fields(project))
    for kind, model in STOP_KINDS.items():
        for field in marked_fields(model):
            begins = f"{kind}.{field.key}"
            in_it = any(one == begins or one.startswith(f"{begins}.") for one in given)
            foods = {"rows", "ate", "changes"}  # named by their own words
            assert in_it or field.key in {*foods, "which"}, begins  # `which` holds ids alone
    tops = {one.partition(".")[0] for one in given}
    for field in marked_fields(LessonFile):
        assert field.key in {*tops, "stops", "video"}
