"""A lesson opened by a class link, in a real Chromium: what is shown, what is held back, and that nothing is kept of it."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from pathlib import Path
from urllib.parse import quote

import pytest
from playwright.sync_api import Page, expect

from generator.compute.class_link import Answers, ClassLink, class_link
from generator.compute.finish_code import Done, Found, read_code
from generator.compute.finish_layout import finish_layout
from tests.browser.test_finish_code import code_of
from tests.browser.test_practice import asked, made
from tests.browser.watched import ALL_THERE, OPEN_ALL, RUNS_OVER, until
from tests.site_data.test_lessons import RESULTS

RIVER = "river-walk"
SOME = ClassLink(("lunch", "count-it", "table-talk"))
KEPT = "JSON.stringify([{...localStorage}, {...sessionStorage}])"


@pytest.fixture
def site(built_site: Path, serve: Callable[[Path], str]) -> str:
    return serve(built_site)


def opened(page: Page, site: str, link: ClassLink | str, path: str = f"{RIVER}/index.html") -> Page:
    """The page at a class link, or at any fragment, once all of it is there."""
    fragment = link if isinstance(link, str) else class_link(link, RIVER)
    page.goto("about:blank")
    page.goto(f"{site}{path}#{fragment}")
    page.evaluate(ALL_THERE)
    return page


def told(page: Page) -> str:
    return page.locator("[data-for-class]").inner_text()


def stops(page: Page) -> list[str]:
    """Ids of the stops that are there at all."""
    found: list[str] = page.evaluate("[...document.querySelectorAll('.stop')].map(({id}) => id)")
    return found


def answers_seen(page: Page) -> int:
    """How many solutions can be opened or are seen."""
    places = "details:is([data-reveal], [data-working], lesson-ending > *)"
    return page.locator(places).locator("visible=true").count()


def test_only_the_chosen_stops_are_there_and_the_line_says_so(page: Page, site: str) -> None:
    opened(page, site, SOME)
    assert stops(page) == list(SOME.stops)
    assert told(page) == "For your class: 3 of 7 stops. Show the whole lesson"
    assert page.locator("#two-ways, [href='#two-ways']:not([data-play-from])").count() == 0
    expect(
        page.locator("pause-player video")
    ).to_be_visible()  # it stood in a stop that is left out
    here = page.locator("[aria-current=step] .stop")
    assert here.get_attribute("id") == "lunch"
    page.get_by_text("Skip to the lesson").focus()
    page.keyboard.press("Enter")
    page.locator("#count-it .time").click()
    assert page.url.endswith("#count-it")
    page.reload()
    page.evaluate(ALL_THERE)
    assert stops(page) == list(SOME.stops)
    assert "for-class" not in page.evaluate(KEPT)
    page.get_by_role("link", name="Show the whole lesson").click()
    page.evaluate(ALL_THERE)
    assert len(stops(page)) == 7
    assert page.locator("[data-for-class]").count() == 0
    page.locator("#guess .time").click()
    page.reload()
    assert len(stops(page)) == 7


def test_another_class_link_in_the_same_tab_opens_anew(page: Page, site: str) -> None:
    opened(page, site, SOME)
    with page.expect_event("load"):
        page.evaluate("to => void (location.hash = to)", class_link(ClassLink(("guess",)), RIVER))
    page.evaluate(ALL_THERE)
    assert stops(page) == ["guess"]


@pytest.mark.parametrize(
    "fragment",
    [
        class_link(SOME, "soup-night"),
        class_link(SOME, RIVER).replace("lunch", "brunch"),
        "for-class=<script>alert(1)</script>;k=00",
        "for-class=%E0%A4;k=00",
        "for-class=" + "lunch+" * 200_000,
        quote('for-class="><img src=x onerror=alert(1)>;k=00'),
        "for-class=;blocks=only;k=00",
        "for-class",
    ],
    ids=["foreign", "changed", "script", "percent", "huge", "markup", "blocks", "bare"],
)
def test_what_cannot_be_read_opens_the_whole_lesson_with_one_sentence(
    page: Page, site: str, fragment: str
) -> None:
    page.on("dialog", lambda _: pytest.fail("a script ran"))
    opened(page, site, fragment)
    assert len(stops(page)) == 7
    assert page.locator("[data-with-numbers]").locator("visible=true").count() > 0
    assert told(page).endswith("Here is the whole lesson.")
    assert page.locator("[data-for-class] *:not(span)").count() == 0


def test_a_stop_that_is_gone_is_said_and_the_others_open(page: Page, site: str) -> None:
    opened(page, site, ClassLink(("lunch", "gone-long-ago")))
    assert stops(page) == ["lunch"]
    assert "One stop that this link asks for is no longer in the lesson." in told(page)
    opened(page, site, ClassLink(("gone-long-ago",)))
    assert len(stops(page)) == 7
    assert "so all of it is here" in told(page)


def test_a_plain_link_to_a_stop_still_leads_there(page: Page, site: str) -> None:
    opened(page, site, "lunch")
    assert len(stops(page)) == 7
    assert page.locator("#lunch").evaluate("stop => stop.getBoundingClientRect().top") < 400


def test_answers_wait_for_a_try(page: Page, site: str) -> None:
    opened(page, site, ClassLink(("lunch", "parting"), answers=Answers.TRY))
    assert told(page).startswith("For your class: 2 of 7 stops. Answers open after a try.")
    assert answers_seen(page) == 0
    first, *others = page.locator("#lunch form:has(input)").all()
    first.locator("input").first.press("Enter")
    assert answers_seen(page) == 0  # nothing was tried
    first.locator("input").first.fill("1")
    first.locator("input").first.press("Enter")
    expect(first.locator("[data-working]")).to_be_visible()
    assert answers_seen(page) == 1
    page.reload()
    page.evaluate(ALL_THERE)
    assert answers_seen(page) == 1
    for other in others:
        other.locator("input").first.fill("1")
        other.locator("input").first.press("Enter")
    expect(page.locator("#lunch [data-reveal]")).to_be_visible()
    expect(page.get_by_role("link", name="Answer key")).to_be_hidden()


def test_answers_that_come_later_are_nowhere(page: Page, site: str) -> None:
    opened(page, site, ClassLink(answers=Answers.LATER))
    page.evaluate(OPEN_ALL)
    assert answers_seen(page) == 0
    row = page.locator("#lunch form:has(input)").first
    row.locator("input").first.fill("1")
    row.locator("[data-check]").click()
    expect(row.get_by_role("status").first).not_to_be_empty()  # what is written is checked
    assert answers_seen(page) == 0


def test_a_code_tells_what_was_asked_for_and_nothing_of_the_rest(page: Page, site: str) -> None:
    opened(page, site, ClassLink(("lunch", "table-talk")))
    did = {"done hello": "yes", "done table-talk": "yes", "tried parting--answer answer": "first"}
    page.evaluate(
        "kept => localStorage.setItem('plumline-2 / boat/river-walk', kept)", json.dumps(did)
    )
    layout = finish_layout(RESULTS[RIVER])
    code = code_of(page)
    read = read_code(code, [layout])
    assert not isinstance(read, str)
    finished = read[0][1]
    wanted = {"lunch": Done.NOT, "table-talk": Done.DONE}
    assert finished.stops == tuple(wanted.get(stop, Done.NOT_ASKED) for stop in layout.stops)
    assert set(finished.answers) == {Found.NOT}
    page.goto(f"{site}codes.html")
    page.locator("textarea").fill(f"Ana {code}")
    page.get_by_role("button", name="Read the codes").click()
    cells = page.locator("code-reader tbody td")
    expect(cells.nth(1)).to_have_text("1 of 2; 5 not asked")
    expect(cells.nth(2)).to_have_text("0 of 5")


def test_practice_is_the_same_for_everyone_and_its_answers_wait(page: Page, site: str) -> None:
    opened(page, site, ClassLink(("lunch",), 100, "room-12", answers=Answers.TRY))
    page.get_by_role("link", name="Practice").click()
    page.evaluate(ALL_THERE)
    assert asked(page) == made("room-12", 100, 12)
    details = page.locator(".problems details").locator("visible=true")
    assert details.count() == 0
    page.locator(".problems [name=gap]").first.fill("1")
    page.locator(".problems [data-check]").first.click()
    assert details.count() == 1
    page.get_by_role("button", name="Another set").click()
    page.reload()
    page.evaluate(ALL_THERE)
    assert details.count() == 0
    page.get_by_role("link", name="Back to the lesson").click()
    page.evaluate(ALL_THERE)
    assert stops(page) == ["lunch"]


def test_blocks_and_large_letters_go_along_and_stay_off_the_device(page: Page, site: str) -> None:
    opened(page, site, ClassLink(blocks_only=True, large_print=True))
    assert page.locator("[data-with-numbers]").locator("visible=true").count() == 0
    expect(page.get_by_role("button", name="Blocks only")).to_have_count(0)
    assert page.evaluate("getComputedStyle(document.body).fontSize") == "20.8px"
    assert page.evaluate(RUNS_OVER) <= 0
    page.evaluate(OPEN_ALL)
    assert not re.search(r"\d\skcal", page.locator("main").inner_text())
    page.get_by_role("link", name="Worksheet").click()
    page.evaluate(ALL_THERE)
    until(page, "location.hash === '#large-print'")
    page.reload()
    assert page.locator("[data-with-numbers]").locator("visible=true").count() == 0
    page.goto(f"{site}{RIVER}/index.html")
    page.evaluate(ALL_THERE)
    assert page.locator("[data-with-numbers]").locator("visible=true").count() > 0


def test_large_letters_leave_words_whole_on_a_small_phone(page: Page, site: str) -> None:
    page.set_viewport_size({"width": 320, "height": 640})
    opened(page, site, ClassLink(large_print=True))
    who = page.locator(".who")
    words = who.locator("span").bounding_box()
    assert words
    assert words["width"] > words["height"]  # two words, one under the other
    assert not who.evaluate(
        """who => {
          const words = document.createRange();
          words.selectNodeContents(document.querySelector('.opening > .quiet'));
          const { left, bottom } = who.querySelector('svg').getBoundingClientRect();
          return [...words.getClientRects()].some(each => each.right > left && each.top < bottom);
        }"""
    )


def test_the_film_halts_at_chosen_stops_alone(page: Page, site: str) -> None:
    opened(page, site, ClassLink(("lunch",)))
    page.get_by_role("button", name="Play from 1:05").click()
    until(page, "video.currentTime >= 65 && !video.paused")
    page.evaluate("document.querySelector('video').currentTime = 137")
    until(page, "video.paused")
    assert page.evaluate("document.activeElement.id") == "lunch-name"
    page.locator("#lunch [data-go-on]").click()
    assert page.evaluate("document.activeElement.closest('finish-code') !== null")


def test_in_spanish_the_same_link_opens_the_same_stops(page: Page, site: str) -> None:
    opened(page, site, SOME)
    page.get_by_role("link", name="Español").click()
    page.evaluate(ALL_THERE)
    assert stops(page) == list(SOME.stops)
    assert told(page) == "Para tu clase: 3 de 7 partes. Mostrar la lección entera"
