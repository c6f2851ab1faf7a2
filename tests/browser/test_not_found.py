"""In the place of a page that is not there a host sends ours, whatever the address was and wherever the site stands."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.browser.watched import violations, wait_for_all, watch
from tests.html_page import read_page
from tests.local_server import serving
from tests.site_project import build_project, copy_project, small_lesson, write_lesson

ADDRESSES = re.compile(r'\b(?:href|src|data-later)="([^"]+)"')
DEEP = "river-walk/gone/and/deeper/page.html"


@pytest.fixture(scope="module")
def below_a_path(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder of a host that shows a site below a path, as hosts of projects do."""
    folder = tmp_path_factory.mktemp("below")
    project = copy_project(folder / "project", lessons=False)
    write_lesson(project, "small", small_lesson())
    file = project / "site_data/site.yaml"
    told = re.sub(r"address: .*", "address: https://hill.example.org/kitchen/", file.read_text())
    file.write_text(told, "utf-8")
    host = folder / "host"
    host.mkdir()
    build_project(project).rename(host / "kitchen")
    (host / "404.html").write_bytes(
        (host / "kitchen/404.html").read_bytes()
    )  # as such a host finds it
    return host


def test_it_speaks_every_language_of_the_site(built_site: Path) -> None:
    root = read_page(built_site / "404.html")
    parts = [(part.get("lang"), part.find("*")) for part in root.iter("section")]
    assert [(lang, "".join(title.itertext())) for lang, title in parts if title is not None] == [
        ("en-US", "This page is not here"),
        ("es-US", "Esta página no está aquí"),
    ]


def test_every_address_of_it_is_from_the_root_of_the_host(
    built_site: Path, below_a_path: Path
) -> None:
    for folder, begins in ((built_site, "/"), (below_a_path, "/kitchen/")):
        found = ADDRESSES.findall((folder / "404.html").read_text("utf-8"))
        found.remove("#main")
        assert len(found) > 8
        for address in found:
            assert address.startswith(begins), address
            assert (folder / address.removeprefix("/")).is_file(), address


def test_it_is_listed_nowhere(built_site: Path) -> None:
    assert '<meta name="robots" content="noindex">' in (built_site / "404.html").read_text("utf-8")
    assert "404" not in (built_site / "sitemap.xml").read_text("utf-8")
    for page in built_site.rglob("*.html"):
        assert "404.html" not in page.read_text("utf-8"), page


def test_a_deep_address_ends_in_it_with_its_look_and_its_ways_on(
    page: Page, built_site: Path
) -> None:
    with serving(built_site) as site:
        answer = page.goto(site + DEEP)
        assert answer is not None
        assert answer.status == 404
        looks_whole(page)
        for link in page.locator("main a").all():
            box = link.bounding_box()
            assert box is not None
            assert box["height"] >= 44  # as high as a thumb
        assert violations(page) == []
        page.get_by_role("link", name="Noche de sopa en el salón").click()
        assert page.url == f"{site}es/soup-night/index.html"
        wait_for_all(page)
        page.goto(site + DEEP)
        page.get_by_role("link", name="All lessons").click()
        assert page.url == f"{site}index.html"
        wait_for_all(page)


def test_it_works_below_a_path(page: Page, below_a_path: Path) -> None:
    with serving(below_a_path) as host:
        page.goto(f"{host}kitchen/small/gone/page.html")
        looks_whole(page)
        page.get_by_role("link", name="A small lesson").first.click()
        assert page.url == f"{host}kitchen/small/index.html"
        wait_for_all(page)


@pytest.fixture
def page(browser: Browser) -> Iterator[Page]:
    """Unlike that of all other tests it takes the console's line about an answer of 404 for what it is."""
    with browser.new_context(locale="en-US") as context:
        said: list[str] = []
        watch(context, said)
        yield context.new_page()
    assert [one for one in said if "status of 404" not in one] == []


def looks_whole(page: Page) -> None:
    expect(page.locator("h1")).to_have_text("This page is not here")
    assert (
        page.evaluate("[...document.styleSheets].map(each => each.cssRules.length > 0)")
        == [True] * page.locator("link[rel=stylesheet]").count()
    )
    for width in (320, 1280):
        page.set_viewport_size({"width": width, "height": 800})
        assert page.evaluate("document.scrollingElement.scrollWidth") <= width
