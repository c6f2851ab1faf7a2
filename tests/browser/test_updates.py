"""The page of updates with a long record: it fits, is read aloud, keeps nobody out, and hides values with Blocks only."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from playwright.sync_api import Browser

from generator.steps.by_hand import ByHand
from generator.steps.filling import other_files
from generator.steps.run import begin
from generator.write.fill import write_outputs
from tests.browser.watched import RUNS_OVER, violations
from tests.local_server import serving
from tests.publications import DAYS, gone, number, publication, record, state
from tests.site_project import copy_project, small_lesson, write_lesson

FIRST, SECOND, THIRD, FOURTH, *_ = DAYS
LONG = "Two-thirds-of-a-word-that-nobody-can-break-before-it-ends-somewhere-else"
RECORD = record(
    publication(FIRST),
    publication(SECOND, note=f"The record was read wrong. {LONG}"),
    publication(THIRD, address=f"https://{LONG}.example.org/"),
    publication(FOURTH, undoes=THIRD),
    soup=(
        state(FIRST),
        state(SECOND, numbers={"soups.broth": number("920", LONG)}),
        state(THIRD, title=LONG, stamps={"worksheet": "AAAAAA", "answers": "BBBBBB"}),
    ),
    walk=(state(SECOND, title="River walk"), gone(FOURTH)),
)


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The pages of a site that was published four times."""
    root = copy_project(tmp_path_factory.mktemp("updates") / "site", lessons=False)
    write_lesson(root, "soup", small_lesson())
    site = begin(root, root / "shown", preview=False, last={}).site()
    folder = root / "written"
    folder.mkdir()
    write_outputs(folder, other_files(replace(site, published=RECORD), ByHand((), ())))
    return folder


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_it_fits_every_screen_and_keeps_nobody_out(
    browser: Browser, site: Path, scheme: str
) -> None:
    with (
        serving(site) as address,
        browser.new_context(color_scheme=scheme, viewport={"width": 320, "height": 700}) as context,  # type: ignore[arg-type]  # one of both
    ):
        page = context.new_page()
        page.goto(f"{address}updates.html")
        assert violations(page) == []
        for width in (320, 768, 1280):
            page.set_viewport_size({"width": width, "height": 700})
            assert page.evaluate(RUNS_OVER) == 0
        values = page.locator("[data-with-numbers]")
        assert values.count() == 4
        assert values.first.is_visible()
        page.evaluate("document.documentElement.toggleAttribute('data-blocks-only', true)")
        assert not values.first.is_visible()


def test_nothing_of_it_needs_a_script(browser: Browser, site: Path) -> None:
    with serving(site) as address, browser.new_context(java_script_enabled=False) as context:
        page = context.new_page()
        page.goto(f"{address}updates.html")
        assert page.locator("h2").count() == 4
        page.get_by_role("link", name="Atom").focus()
        # of another food: both are named
        assert page.get_by_text("920 mg now, 910 mg before").count() == 0
        assert page.get_by_text("920 mg now. In its place before: ").is_visible()
