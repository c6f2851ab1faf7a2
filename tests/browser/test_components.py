"""The page of all components is made in the preview only, and every state on it is accessible."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path, PurePosixPath

import pytest
from playwright.sync_api import Page

from generator.steps.run import begin
from tests.browser.watched import OPEN_ALL, wait_for_all
from tests.made import write_files
from tests.site_project import ROOT, copy_project

Serve = Callable[[Path], str]


@pytest.fixture(scope="module")
def preview(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """What a preview serves, without MkDocs and its reload script."""
    folder = tmp_path_factory.mktemp("preview")
    site = begin(copy_project(folder / "project"), folder, preview=True).site()
    write_files((*site.shared(), *site.components(folder / "project")), folder)
    return folder


@pytest.mark.parametrize("path", ["components/index.html", "es/components/index.html"])
@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("width", [320, 1280])
def test_every_state_is_accessible(
    page: Page,
    preview: Path,
    serve: Serve,
    axe: Callable[[Page], list[str]],
    path: str,
    scheme: str,
    width: int,
) -> None:
    page.set_viewport_size({"width": width, "height": 900})
    page.emulate_media(color_scheme="dark" if scheme == "dark" else "light")
    page.goto(serve(preview) + path)
    page.evaluate(OPEN_ALL)
    assert axe(page) == []


def test_it_is_not_published(built_site: Path) -> None:
    assert not (built_site / "components").exists()


def test_every_kind_of_stop_is_on_it(page: Page, preview: Path, serve: Serve) -> None:
    page.goto(serve(preview) + "components/index.html")
    shown = page.locator(".stop[id] code").all_inner_texts()
    kinds = {folder.name for folder in (ROOT / "theme/stops").iterdir()}
    assert {PurePosixPath(path).parent.name for path in shown} == kinds


def test_a_plum_has_a_leaf_to_the_side_it_hangs_to(page: Page, preview: Path, serve: Serve) -> None:
    page.goto(serve(preview) + "components/index.html")
    leaves = page.evaluate(
        """[...document.querySelectorAll('section[aria-labelledby="plumb-line"] svg')].map(each => {
            const leaf = each.querySelector('.leaf')?.getBBox();
            return leaf ? Math.sign(leaf.x + leaf.width / 2 - 160) : 0;
        })"""
    )
    assert leaves == [-1, 0, 1]


PARTS = """() => [...document.querySelectorAll(".component, .stop[id]")].map((part) => ({
  name: part.querySelector("h2").textContent,
  files: [...part.querySelectorAll(":scope > .prose code, :scope .prose code")].map((code) => code.textContent),
  id: part.getAttribute("aria-labelledby"),
}))"""


def test_each_component_stands_beside_its_files(page: Page, preview: Path, serve: Serve) -> None:
    page.goto(serve(preview) + "components/index.html")
    parts = page.evaluate(PARTS)
    assert len(parts) > 14
    for part in parts:
        assert part["files"], part["name"]
        assert [path for path in part["files"] if not (ROOT / path).is_file()] == []


def test_its_list_leads_to_each_part(page: Page, preview: Path, serve: Serve) -> None:
    page.goto(serve(preview) + "components/index.html")
    listed = page.locator("nav.contents a").all_text_contents()
    assert listed == [part["name"] for part in page.evaluate(PARTS)]
    assert (
        page.locator("nav.contents a").evaluate_all(
            "each => each.filter((link) => !document.getElementById(link.hash.slice(1))).length"
        )
        == 0
    )


@pytest.mark.parametrize(
    ("path", "states"),
    [
        (
            "components/index.html",
            ["Done", "Still to come", "Found, and folded to a line", "Not yet"],
        ),
        ("es/components/index.html", ["Hecho", "Todavía por venir", "Todavía no"]),
    ],
)
def test_states_are_named_in_words(
    page: Page, preview: Path, serve: Serve, path: str, states: list[str]
) -> None:
    page.goto(serve(preview) + path)
    named = page.locator(".component :is(dt, h3)").all_inner_texts()
    assert set(states) <= set(named)
    assert [name for name in named if "=" in name or "_" in name] == []


def test_a_covered_card_is_one_and_a_shown_one_is_none(
    page: Page, preview: Path, serve: Serve
) -> None:
    page.goto(serve(preview) + "components/index.html")
    cards = page.locator(".component move-card")
    page.locator(".component move-card[data-covered]").wait_for()
    assert [card.get_attribute("data-covered") is not None for card in cards.all()] == [True, False]


def test_every_element_on_it_works(page: Page, preview: Path, serve: Serve) -> None:
    """Those that a lesson brings once it is shown too."""
    page.goto(serve(preview) + "components/index.html")
    wait_for_all(page)
    assert page.locator(":not(:defined)").count() == 0
