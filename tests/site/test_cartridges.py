"""The files for learning platforms, as lxml and the schemas of 1EdTech read them, against the built site.

The namespaces, types and names are those of references 10.1 and of the schemas (read at their source);
that importers differ, so that both versions are there, is S.
"""

from __future__ import annotations

import re
from pathlib import Path
from zipfile import ZipFile

import pytest
from lxml import etree

from tests.cartridges import MANIFEST, SCHEMAS, Cartridges, complaints, items, of_site
from tests.html_page import read_page
from tests.project import library

SITE = library().site.address
with_schemas = pytest.mark.skipif(
    not SCHEMAS.is_dir(), reason="the schemas of Common Cartridge are not beside this project"
)


@pytest.fixture(scope="module")
def cartridges(built_site: Path) -> Cartridges:
    """Those of the demo."""
    return of_site(built_site)


def lessons(cartridges: Cartridges) -> Cartridges:
    """Those of one lesson."""
    return {path: one for path, one in cartridges.items() if "all-lessons" not in path}


def whole(cartridge: dict[str, bytes]) -> str:
    """All its XML."""
    return "\n".join(one.decode() for name, one in cartridge.items() if name.endswith(".xml"))


def test_every_lesson_has_both_versions_in_each_of_its_languages(
    built_site: Path, cartridges: Cartridges
) -> None:
    folders = [file.parent for file in built_site.rglob("keep.json")]
    assert len(folders) >= 9
    wanted = {
        f"{folder.relative_to(built_site).as_posix()}/{folder.name}-{version}.imscc"
        for folder in folders
        for version in ("1.1", "1.3")
    }
    assert wanted <= cartridges.keys()


@with_schemas
def test_every_file_is_valid(cartridges: Cartridges) -> None:
    told = [
        f"{path}: {name}: {complaint}"
        for path, one in cartridges.items()
        for name, content in one.items()
        if name.endswith(".xml")
        for complaint in complaints(content)
    ]
    assert told == []
    assert sum(len(one) for one in cartridges.values()) > 100


@with_schemas
@pytest.mark.parametrize(
    ("taken", "put"),
    [
        ("<schemaversion>1.1.0", "<schemaversion>1.2.0"),
        ('structure="rooted-hierarchy"', 'structure="flat"'),
        ("lomr:intendedEndUserRole", "lomr:role"),
        ("<fieldentry>cc.fib.v0p1", "<fieldentry>cc.number.v0p1"),
        ('linkrefid="right"', 'linkrefid="nothing"'),
        ("<itemmetadata>", "<item-metadata>"),
    ],
)
def test_the_validator_sees_what_is_wrong(cartridges: Cartridges, taken: str, put: str) -> None:
    """Each of these is caught by a schema, or by a rule that is written into one."""
    assert taken in whole(cartridges["river-walk/river-walk-1.1.imscc"])
    held_by = next(
        one.decode()
        for name, one in cartridges["river-walk/river-walk-1.1.imscc"].items()
        if name.endswith(".xml") and taken in one.decode()
    )
    wrong = held_by.replace(taken, put).replace(taken.replace("<", "</"), put.replace("<", "</"))
    assert complaints(wrong.encode())


def test_every_link_leads_to_a_page_and_a_place_of_the_site(
    built_site: Path, cartridges: Cartridges
) -> None:
    ids: dict[str, set[str]] = {}
    links = 0
    for cartridge in cartridges.values():
        told = whole(cartridge)
        found = set(re.findall(r'(?:<url href="|href=")(https?://[^"]+)"', told))
        for link in found | set(re.findall(r"https?://kitchen[^\"&<]+", told)):
            assert link.startswith(SITE)
            path, _, place = link.removeprefix(SITE).partition("#")
            if path not in ids:
                page = read_page(built_site / path)
                ids[path] = {one.get("id", "") for one in page.iter()}
            assert not place or place in ids[path], link
            links += 1
    assert links > 200


def test_a_list_names_every_file_and_no_other(cartridges: Cartridges) -> None:
    for path, cartridge in cartridges.items():
        manifest = etree.fromstring(cartridge[MANIFEST])
        named = [one.get("href") for one in manifest.iter("{*}file")]
        assert sorted([*named, MANIFEST]) == sorted(cartridge), path
        resources = {one.get("identifier") for one in manifest.iter("{*}resource")}
        shown = [one.get("identifierref") for one in manifest.iter("{*}item")]
        assert {one for one in shown if one} <= resources
        bank = [one for one in manifest.iter("{*}resource") if "question-bank" in one.get("type")]
        assert len(bank) == 1  # the standard takes one, and shows it to nobody
        assert resources - set(shown) == {bank[0].get("identifier")}


def test_what_is_the_teachers_is_marked_so(cartridges: Cartridges) -> None:
    for path, cartridge in cartridges.items():
        manifest = etree.fromstring(cartridge[MANIFEST])
        for resource in manifest.iter("{*}resource"):
            name = resource.find("{*}file").get("href")
            file = name if name.endswith(".pdf") else cartridge[name].decode()
            roles = [one.findtext("{*}value") for one in resource.iter("{*}intendedEndUserRole")]
            is_teachers = re.search(r"/(notes|answers)(\.html|-\w+\.pdf)", file) is not None
            assert roles == (["Instructor"] if is_teachers else []), path


def test_the_standards_of_the_lesson_are_told_and_no_identifier_is_made_up(
    built_site: Path, cartridges: Cartridges
) -> None:
    for path, cartridge in lessons(cartridges).items():
        manifest = etree.fromstring(cartridge[MANIFEST])
        told = [one.text for one in manifest.iterfind(".//{*}taxon/{*}id")]
        page = read_page((built_site / path).parent / "notes.html")
        shown = [
            "".join(one.itertext())
            for one in page.iter("dt")
            if re.fullmatch(r"\d\.[A-Z]+\.[A-Z]\.\d", "".join(one.itertext()))
        ]
        assert told == shown, path
        assert b"GUID" not in cartridge[MANIFEST]


def test_both_versions_call_everything_alike_and_no_two_lessons_share_a_name(
    cartridges: Cartridges,
) -> None:
    """What is taken in a second time is meant to be brought up to date and not to stand there twice."""
    seen: dict[str, str] = {}
    for path, cartridge in lessons(cartridges).items():
        named = re.findall(rb'(?:identifier|ident)="(p[0-9a-f]{32})"', b"".join(cartridge.values()))
        other = path.replace("1.1.imscc", "1.3.imscc")
        assert sorted(cartridge) == sorted(cartridges[other]), path
        for name in {one.decode() for one in named}:
            whose = path.rpartition("-")[0]
            assert seen.setdefault(name, whose) == whose


@pytest.mark.parametrize(("folder", "number"), [("", 6), ("es/", 3)])
@pytest.mark.parametrize("version", ["1.1", "1.3"])
def test_the_file_of_all_lessons_holds_what_each_of_theirs_does(
    cartridges: Cartridges, folder: str, number: int, version: str
) -> None:
    """In the order of the lists, a folder for each, under the same names, the questions of all in one bank."""
    every = cartridges[f"{folder}all-lessons-{version}.imscc"]
    manifest = etree.fromstring(every[MANIFEST])
    folders = manifest.findall(".//{*}organization/{*}item/{*}item")
    assert len(folders) == number
    own = {
        path: one
        for path, one in lessons(cartridges).items()
        if path.startswith("es/") is bool(folder) and path.endswith(f"-{version}.imscc")
    }
    assert len(own) == number
    told = 0
    for cartridge in own.values():
        one = etree.fromstring(cartridge[MANIFEST])
        bank = one.xpath("//*[contains(@type, 'question-bank')]/@identifier")[0]
        mine = {
            name: held_
            for name, held_ in cartridge.items()
            if name not in (MANIFEST, f"{bank}.xml")
        }
        assert mine.items() <= every.items()
        told += len(items(cartridge, "objectbank"))
    assert len(items(every, "objectbank")) == told


def test_a_paper_that_the_site_makes_comes_along_as_it_stands_there(
    built_site: Path, cartridges: Cartridges
) -> None:
    """In one size, US Letter for the demo's regions; the page that prints the same is not linked besides."""
    for path, cartridge in lessons(cartridges).items():
        folder = (built_site / path).parent
        names = {name.rpartition("/")[2]: one for name, one in cartridge.items() if ".pdf" in name}
        assert {"worksheet-letter.pdf", "answers-letter.pdf"} <= names.keys()
        assert not [name for name in names if "a4" in name or "packet" in name or "large" in name]
        for name, content in names.items():
            assert content == (folder / "papers" / name).read_bytes()
            assert f"/{name.partition('-')[0]}.html" not in whole(cartridge) or "notes" in name


def test_the_page_for_teachers_leads_to_the_files_of_all_lessons(built_site: Path) -> None:
    for folder in ("", "es/"):
        page = read_page(built_site / folder / "teachers.html")
        links = [one.get("href", "") for one in page.iter("a") if "imscc" in one.get("href", "")]
        assert links == ["all-lessons-1.1.imscc", "all-lessons-1.3.imscc"]
        assert "{cartridges}" not in "".join(page.itertext())


def test_nothing_that_is_only_kept_goes_out(built_site: Path) -> None:
    assert not list(built_site.rglob(".kept"))


def test_no_copy_and_no_kept_lesson_holds_one(built_site: Path) -> None:
    for file in built_site.rglob("keep.json"):
        assert "imscc" not in file.read_text("utf-8")
    for file in built_site.rglob("*-take-home.zip"):
        with ZipFile(file) as packed:
            assert not [name for name in packed.namelist() if "imscc" in name]


def test_the_notes_lead_to_both_and_say_which_to_try_first(built_site: Path) -> None:
    for file in built_site.rglob("notes.html"):
        page = read_page(file)
        links = [one.get("href", "") for one in page.iter("a") if "imscc" in one.get("href", "")]
        assert links == [f"{file.parent.name}-{version}.imscc" for version in ("1.1", "1.3")]
        assert "1.1" in "".join(page.itertext())
