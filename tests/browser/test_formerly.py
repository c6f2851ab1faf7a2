"""What was sent or printed under an older name keeps meaning what it meant: links, class links, codes, what is kept."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace

import pytest
from playwright.sync_api import Browser, Page, expect

from generator.compute.class_link import ClassLink, class_link
from generator.compute.counted_answers import answers_that_count, stops_of
from generator.compute.finish_code import Done, Finished, Found, finish_code
from generator.compute.finish_layout import finish_layout, mark
from tests.browser.watched import violations, watch
from tests.local_server import serving
from tests.site.test_formerly import NEW, OLD, renamed
from tests.site_data.test_lessons import RESULTS
from tests.site_project import build_project

SENTENCE = "You followed an older link. This part is here now."
STOPS = ("guess", "noon", "count-it")
"""Of an old class link; the second has another name today."""
LINK = class_link(ClassLink(stops=STOPS), OLD)


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """A lesson that had another name, as a stop of it had too, on a host."""
    with serving(build_project(renamed(tmp_path_factory.mktemp("formerly")))) as address:
        yield address


@pytest.mark.parametrize(
    ("folder", "says"), [("", SENTENCE), ("es/", "Seguiste un enlace anterior.")]
)
def test_a_printed_code_of_before_leads_to_its_part(
    page: Page, site: str, folder: str, says: str
) -> None:
    page.goto(f"{site}{folder}{OLD}/index.html#noon")
    page.wait_for_url(f"{site}{folder}{NEW}/index.html#noon")
    said = page.locator("#lunch > .formerly")
    expect(said).to_be_in_viewport()
    expect(said).to_contain_text(says)
    page.goto(f"{site}{folder}{OLD}/index.html#lunch")
    page.wait_for_url(f"{site}{folder}{NEW}/index.html#lunch")
    expect(page.locator("#lunch-name")).to_be_in_viewport()
    expect(said).to_be_hidden()
    page.goto(f"{site}{folder}{OLD}/practice.html#seed=k3f&size=100")
    page.wait_for_url(f"{site}{folder}{NEW}/practice.html#seed=k3f&size=100")


def test_a_class_link_of_before_opens_its_stops(page: Page, site: str) -> None:
    page.goto(f"{site}{OLD}/index.html#{LINK}")
    page.wait_for_url(f"{site}{NEW}/index.html#{LINK}")
    expect(page.locator("[data-for-class]")).to_contain_text("3 of 7 stops")
    shown = page.locator(".thread .stop").evaluate_all("all => all.map(({ id }) => id)")
    assert shown == ["guess", "lunch", "count-it"]
    page.goto(f"{site}{OLD}/projector.html#{LINK}")
    page.wait_for_url(f"{site}{NEW}/projector.html#*")
    assert page.locator("[data-bar] ol li:not([hidden])").count() == 3


def noon_numbers() -> int:
    """The mark of the lesson's numbers while its stop `lunch` was called `noon`."""
    result = RESULTS[NEW]
    answers = (f"{one.id}={one.value}" for one in answers_that_count(result))
    said = [re.sub(r"^lunch(?=$|\.)", "noon", one) for one in (*stops_of(result), *answers)]
    return mark("\n".join(said))


def test_a_finish_code_of_before_is_read(page: Page, site: str) -> None:
    layout = finish_layout(RESULTS[NEW])  # as it was while the stop had its present name
    before = replace(layout, lesson=mark(OLD), numbers=noon_numbers())
    told = Finished((Done.DONE,) * 7, (Found.FIRST,) * 7, (), (), 3)
    page.goto(f"{site}codes.html")
    page.locator("textarea").fill(
        f"Zoe {finish_code(told, before)}\nAna {finish_code(told, layout)}"
    )
    page.get_by_role("button", name="Read the codes").click()
    rows = page.locator("code-reader tbody tr")
    expect(rows).to_have_count(2)
    for row in rows.all():
        expect(row).to_contain_text("Packed for the river walk")
        expect(row).to_contain_text("7 of 7")


def test_what_a_learner_kept_under_an_older_name_is_taken_along(page: Page, site: str) -> None:
    page.goto(f"{site}{NEW}/index.html")
    page.locator(".who").wait_for()
    page.evaluate(
        """old => {
          localStorage.clear();
          const kept = { "noon--total gap": "55", "done noon": "yes", "done guess": "yes", here: "noon" };
          localStorage.setItem(`plumline-2 / boat/${old}`, JSON.stringify(kept));
        }""",
        OLD,
    )
    page.reload()
    expect(page.locator("[id='lunch--total'] input[name=gap]")).to_have_value("55")
    kept = page.evaluate(
        "name => JSON.parse(localStorage.getItem(name))", f"plumline-2 / boat/{NEW}"
    )
    assert kept["lunch--total gap"] == "55"
    assert kept["done lunch"] == kept["done guess"] == "yes"
    assert kept["here"] == "lunch"
    assert page.evaluate("name => localStorage.getItem(name)", f"plumline-2 / boat/{OLD}") is None


def test_without_scripts_one_link_leads_on(browser: Browser, site: str) -> None:
    with browser.new_context(java_script_enabled=False, locale="en-US") as context:
        said: list[str] = []
        watch(context, said)
        page = context.new_page()
        page.set_viewport_size({"width": 320, "height": 700})
        page.goto(f"{site}{OLD}/index.html#noon")
        expect(page.locator(".former-places a")).to_have_count(7)
        expect(page.locator(".former-places a:visible")).to_have_count(1)
        assert page.evaluate("document.scrollingElement.scrollWidth") <= 320
        page.locator(".former-places a:visible").click()
        assert page.url == f"{site}{NEW}/index.html#lunch"
        page.goto(f"{site}{OLD}/cards.html")
        page.get_by_role("link", name="Movement cards").click()
        assert page.url == f"{site}{NEW}/cards.html"
        page.goto(f"{site}{NEW}/index.html#noon")
        expect(page.get_by_text(SENTENCE)).to_be_visible()
        page.goto(f"{site}{NEW}/index.html")
        expect(page.get_by_text(SENTENCE)).to_be_hidden()
    assert said == []


def test_a_file_of_before_is_found_from_the_page_in_its_place(browser: Browser, site: str) -> None:
    with browser.new_context(locale="en-US") as context:
        page = context.new_page()
        for folder in ("", "es/"):
            page.goto(f"{site}{folder}{OLD}/papers/worksheet-a4.pdf")
            way = page.get_by_role("link", name="Get the file")
            expect(way).to_have_attribute("href", f"{site}{folder}{NEW}/papers/worksheet-a4.pdf")
        assert violations(page) == []
        page.goto(f"{site}{OLD}/{OLD}-take-home.zip")
        expect(way).to_have_attribute("href", f"{site}{NEW}/{NEW}-take-home.zip")
        page.goto(f"{site}{OLD}/papers/nothing.pdf")
        expect(page.locator("h1")).to_be_visible()
        page.wait_for_load_state("networkidle")
        expect(way).to_be_hidden()
