"""The page of all components is made in the preview only, and every state on it is accessible."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page

from generator.steps.run import begin
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
    page.evaluate("document.querySelectorAll('details').forEach(each => each.open = true)")
    assert axe(page) == []


def test_it_is_not_published(built_site: Path) -> None:
    assert not (built_site / "components").exists()


def test_every_kind_of_stop_is_on_it(page: Page, preview: Path, serve: Serve) -> None:
    page.goto(serve(preview) + "components/index.html")
    shown = page.evaluate(
        "[...document.querySelectorAll('.stop h2')].map(each => each.textContent)"
    )
    kinds = {folder.name for folder in (ROOT / "theme/stops").iterdir()}
    assert set(shown) == kinds


def test_a_plum_has_a_leaf_to_the_side_it_hangs_to(page: Page, preview: Path, serve: Serve) -> None:
    page.goto(serve(preview) + "components/index.html")
    leaves = page.evaluate(
        """[...document.querySelectorAll('section[aria-labelledby="plumb-line"] svg')].map(each => {
            const leaf = each.querySelector('.leaf')?.getBBox();
            return leaf ? Math.sign(leaf.x + leaf.width / 2 - 160) : 0;
        })"""
    )
    assert leaves == [-1, 0, 1]
