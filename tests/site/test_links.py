"""Every address on every page leads somewhere, and nothing but a link leads to another host."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from posixpath import normpath
from urllib.parse import unquote, urlsplit
from xml.etree.ElementTree import Element

import pytest

from generator.compute.class_link import ClassLink, read_class_link
from generator.present.pages.not_found import NOT_FOUND
from generator.present.policy import FRAMED
from tests.html_page import pages, read_page
from tests.project import library

ADDRESSES = (
    "href",
    "src",
    "poster",
    "data",
    "action",
    "cite",
    "{http://www.w3.org/1999/xlink}href",
)
FILE = re.compile(r"[\w./-]+\.(?:css|html|jpg|js|json|mp4|pdf|png|svg|vtt|webmanifest|zip)")
ELSEWHERE = re.compile(r"(?:[a-z][a-z0-9+.-]*:)?//|(?:javascript|data|blob):", re.IGNORECASE)


def test_every_address_in_a_page_leads_to_a_file_of_the_site(built_site: Path) -> None:
    dead = [
        f"{page.relative_to(built_site)}: {address}"
        for page in pages(built_site)
        for _, _, address in addresses(read_page(page))
        if not ELSEWHERE.match(address) and not is_alive(address, page, built_site)
    ]
    assert dead == []


def test_every_address_in_a_style_sheet_leads_to_a_file_of_the_site(built_site: Path) -> None:
    for sheet in built_site.rglob("*.css"):
        css = sheet.read_text("utf-8")
        found = re.findall(r"url\(\s*[\"']?([^\"')]*)", css)
        assert [
            url
            for url in found
            if not url.startswith("data:") and not (sheet.parent / url).is_file()
        ] == []
        assert "@import" not in css


def test_only_a_plain_link_leads_to_another_host(built_site: Path) -> None:
    others = [
        f"{page.relative_to(built_site)}: <{tag} {name}={address}>"
        for page in pages(built_site)
        for tag, name, address in addresses(read_page(page))
        if ELSEWHERE.match(address) and not (tag == "a" and address.startswith("https://"))
        if not (tag in ("meta", "link") and leads_home(address, built_site))
    ]
    assert others == []


def test_every_lesson_and_its_papers_are_linked(built_site: Path) -> None:
    linked = {
        (page.parent / unquote(urlsplit(address).path)).resolve()
        for page in pages(built_site)
        for tag, _, address in addresses(read_page(page))
        if tag == "a" and not ELSEWHERE.match(address)
    }
    lone = [page for page in pages(built_site) if page.resolve() not in linked]
    framed = built_site / FRAMED  # other sites show them, and nobody leads there
    lone = [page for page in lone if not page.is_relative_to(framed)]
    assert [page.name for page in lone] == [NOT_FOUND]  # a host sends it, nobody leads there


@pytest.mark.parametrize(
    ("address", "alive"),
    [
        ("two.html", True),
        ("two.html#there", True),
        ("#here", True),
        ("#", True),
        ("three.html", False),
        ("two.html#gone", False),
        ("#there", False),
        ("../one.html", False),
    ],
)
def test_a_dead_address_would_be_noticed(tmp_path: Path, address: str, alive: bool) -> None:
    for name, anchor in (("one", "here"), ("two", "there")):
        (tmp_path / f"{name}.html").write_text(
            f"<!doctype html><title>{name}</title><p id={anchor}>", "utf-8"
        )
    assert is_alive(address, tmp_path / "one.html", tmp_path) is alive


def addresses(root: Element) -> Iterator[tuple[str, str, str]]:
    """Element, attribute and address, also of files that `data-` attributes name."""
    for element in root.iter():
        for name, value in element.attrib.items():
            if name in ADDRESSES or (name.startswith("data-") and FILE.fullmatch(value)):
                yield str(element.tag), name, value
            elif name == "srcset":
                yield from ((str(element.tag), name, part.split()[0]) for part in value.split(","))
            elif name == "content" and element.get("property", "").startswith("og:"):
                yield from (
                    (str(element.tag), name, url) for url in re.findall(r"https?://\S+", value)
                )


def leads_home(address: str, site: Path) -> bool:
    """Whether it is a file of this site by its whole address, as search engines and shared links want it."""
    home = library().site.address
    return address.startswith(home) and (site / unquote(address.removeprefix(home))).is_file()


def is_alive(address: str, page: Path, site: Path) -> bool:
    """Whether a relative address leads to a file inside the site and, with `#`, to an element there, or opens a lesson for a class.

    The page that a host sends for any that is not there has its addresses from the root of the host.
    """
    path, fragment = unquote(urlsplit(address).path), unquote(urlsplit(address).fragment)
    if page.name == NOT_FOUND and path.startswith("/"):
        path = path.removeprefix("/")
    place = normpath(page.parent.relative_to(site).joinpath(path).as_posix()) if path else ""
    target = site / place if path else page
    if place.startswith("..") or not target.is_file():
        return False
    return (
        not fragment
        or target.suffix != ".html"
        or isinstance(read_class_link(fragment, target.parent.name), ClassLink)
        or any(  # a moment of a film is no element
            element.get("id") == fragment for element in read_page(target).iter()
        )
    )
