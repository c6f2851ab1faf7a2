"""Whatever addresses a lesson had before, each holds a page that says so and leads to the same page of today."""

from __future__ import annotations

import json
import re
from hashlib import sha256
from pathlib import Path
from posixpath import normpath
from xml.etree.ElementTree import Element

import pytest

from tests.html_page import read_page
from tests.site_project import build_project, copy_project, make_papers

OLD, NEW = "creek-walk", "river-walk"
SAID = {"": "This lesson has another address now", "es/": "ahora tiene otra dirección"}
"""By the folder of a language."""


def renamed(folder: Path) -> Path:
    """One lesson of the demo in two languages, which had another name; one of its stops too."""
    project = copy_project(folder, lessons=False)
    make_papers(project, "worksheet")
    lesson = project / "lessons" / NEW
    lesson.mkdir()
    for file in (Path(__file__).parents[2] / "lessons" / NEW).iterdir():
        (lesson / file.name).write_bytes(file.read_bytes())
    text = (lesson / "lesson.yaml").read_text("utf-8")
    changed = text.replace("      id: lunch\n", "      id: lunch\n      formerly: [noon]\n", 1)
    assert changed != text
    (lesson / "lesson.yaml").write_text(f"formerly: [{OLD}]\n{changed}", "utf-8")
    return project


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The site of that lesson."""
    return build_project(renamed(tmp_path_factory.mktemp("formerly")))


def main(page: Path) -> Element:
    found = read_page(page).find(".//main")
    assert found is not None
    return found


def way(page: Path, site: Path) -> str:
    """Where a page of before leads, from the site's root."""
    links = [link for link in main(page).iter("a") if link.get("data-way") is not None]
    assert len(links) == 1
    href = links[0].get("href") or ""
    return normpath((page.parent.relative_to(site) / href).as_posix())


@pytest.mark.parametrize("folder", SAID, ids=["en", "es"])
def test_every_page_of_the_lesson_is_led_to_from_its_older_name(site: Path, folder: str) -> None:
    pages = sorted(one.name for one in (site / folder / NEW).glob("*.html"))
    assert len(pages) >= 8
    for name in pages:
        page = site / folder / OLD / name
        assert way(page, site) == f"{folder}{NEW}/{name}"
        assert SAID[folder] in " ".join(main(page).itertext())
    frame = site / "embed" / folder / OLD / "stop.html"
    assert way(frame, site) == f"embed/{folder}{NEW}/stop.html"


def test_a_link_to_a_part_leads_there_without_scripts(site: Path) -> None:
    sections = read_page(site / NEW / "index.html").iter("section")
    stops = [part.get("id") for part in sections if "stop" in (part.get("class") or "").split()]
    places = {part.get("id"): part for part in main(site / OLD / "index.html").iter("li")}
    assert places.keys() == {*stops, "noon"} - {"parting"}
    for name, part in places.items():
        to = "lunch" if name == "noon" else name
        assert part[0].get("href") == f"../{NEW}/index.html#{to}"
    assert places["noon"].get("class") == "formerly"


def test_a_part_of_another_name_says_so_at_its_old_address(site: Path) -> None:
    for path in (f"{NEW}/index.html", f"es/{NEW}/index.html", f"embed/{NEW}/stop.html"):
        (said,) = [one for one in read_page(site / path).iter("p") if one.get("id") == "noon"]
        assert said.get("class") == "band formerly"
        assert "".join(said.itertext()) in {
            "You followed an older link. This part is here now.",
            "Seguiste un enlace anterior. Esta parte está aquí ahora.",
        }
    style = (site / "assets/below.css").read_text("utf-8")
    assert ".formerly:not(:target){display:none}" in style


def test_no_list_and_no_search_names_an_old_address(site: Path) -> None:
    told = [site / "sitemap.xml", *site.glob("*.html"), *(site / NEW).glob("*.html")]
    assert len(told) > 10
    for file in told:
        addresses = re.findall(r'(?:href|src)="([^"]*)"|<loc>([^<]*)', file.read_text("utf-8"))
        assert not [one for one in addresses if OLD in "".join(one)], file
    for page in (site / OLD).glob("*.html"):
        text = page.read_text("utf-8")
        assert '<meta name="robots" content="noindex">' in text
        assert f'rel="canonical" href="https://kitchen.example.org/{NEW}/{page.name}"' in text


def test_a_device_that_kept_the_lesson_keeps_what_it_is_now(site: Path) -> None:
    """What a list names is there and holds what the list says, so that a copy made by it is whole."""
    for folder in SAID:
        there, here = site / folder / NEW, site / folder / OLD
        now = json.loads((there / "keep.json").read_text("utf-8"))
        old = json.loads((here / "keep.json").read_text("utf-8"))
        assert old["version"] != now["version"]
        assert not re.search(r"\s", old["version"])  # it is part of the copy's name
        held = {(here / one["path"]).resolve(): one for one in old["files"]}
        assert len(held) == len(old["files"])
        assert held.keys() >= {(there / one["path"]).resolve() for one in now["files"]}
        assert (here / "index.html").resolve() in held
        for file, one in held.items():
            content = file.read_bytes()
            assert not one["hash"] or sha256(content).hexdigest()[:16] == one["hash"], file
            assert not one["hash"] or len(content) == one["bytes"], file


def test_a_lesson_without_an_older_name_has_nothing_of_it(built_site: Path) -> None:
    for page in built_site.rglob("*.html"):
        text = page.read_text("utf-8")
        assert "data-formerly" not in text
        assert 'class="band formerly"' not in text
