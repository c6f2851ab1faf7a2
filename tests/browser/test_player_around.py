"""What stands around the video in a real Chromium: captions, chapters, what is said; and a video that does not come."""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Iterator
from decimal import Decimal
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Locator, Page, Route, expect

from generator.model.moment import clock
from tests.browser.watched import hold, until
from tests.shared_context import OWN_CONTEXT
from tests.site_project import ROOT, build_project, copy_project, small_lesson, write_lesson

Serve = Callable[[Path], str]
Axe = Callable[[Page], list[str]]

LESSON = "river-walk"
THERE = "https://films.example/watch/17"


@pytest.fixture
def address(built_site: Path, serve: Serve) -> str:
    """Address of a lesson of the demo."""
    return f"{serve(built_site)}{LESSON}/index.html"


@pytest.fixture
def lesson(page: Page, address: str) -> Page:
    """The lesson, with its captions there and what comes after the page."""
    page.goto(address)
    page.locator("caption-choices:defined").wait_for(state="attached")
    until(page, "document.querySelector('track').readyState === 2")
    return page


def watch_seeks(page: Page) -> None:
    page.evaluate("""() => {
      window.sought = [];
      document.querySelector("video").addEventListener("seeking", ({ target }) => sought.push(target.currentTime));
    }""")


def summary(page: Page, name: str) -> Locator:
    return page.locator("pause-player summary", has_text=name)


def test_every_caption_is_loaded_and_shown_from_the_start(lesson: Page) -> None:
    file = (ROOT / "lessons" / LESSON / f"{LESSON}.en.vtt").read_text("utf-8")
    shown = lesson.evaluate(
        "[...document.querySelector('video').textTracks].map(({mode, cues}) => [mode, cues?.length ?? 0])"
    )
    assert shown[0] == ["showing", file.count("-->")]
    assert all(mode != "showing" for mode, _ in shown[1:])


def test_captions_that_a_browser_leaves_off_are_shown_until_they_are_switched_off(
    page: Page, address: str
) -> None:
    held = hold(page, "**/video-*.js")
    with page.expect_request("**/video-*.js"):
        page.goto(address, wait_until="domcontentloaded")
    track = "document.querySelector('track').track"
    page.evaluate(f"{track}.mode = 'disabled'")  # as WebKitGTK does
    held[0].continue_()
    page.unroute("**/video-*.js")
    until(page, f"{track}.mode === 'showing'")
    page.evaluate(f"{track}.mode = 'hidden'")
    until(page, "(localStorage['plumline-2 / captions'] ?? '').includes('no')")
    page.reload()
    until(page, f"{track}.mode === 'disabled'")
    page.evaluate(f"{track}.mode = 'showing'")
    until(page, "localStorage['plumline-2 / captions'].includes('yes')")


BESIDE = """head => {
  const last = [...head.querySelector("h2").getClientRects()].at(-1);
  const time = head.querySelector(".time").getBoundingClientRect();
  return [time.left - last.right, time.top - last.top];
}"""
"""How far a time stands behind its heading, and how much lower; behind the last line of one that runs on."""


@pytest.mark.parametrize("width", [320, 390])
def test_the_time_of_a_stop_stands_beside_its_heading(lesson: Page, width: int) -> None:
    lesson.set_viewport_size({"width": width, "height": 844})
    heads = lesson.locator(".stop-head:has(.time)").all()
    assert heads
    for head in heads:
        behind, lower = head.evaluate(BESIDE)
        assert behind >= 0, "it has fallen below"
        assert lower < 30


def test_a_film_has_an_edge_also_where_it_is_like_the_paper(lesson: Page) -> None:
    video = lesson.locator("video")
    assert video.evaluate("each => getComputedStyle(each).outlineWidth") == "1px"


def test_how_captions_look_is_kept_on_the_device(lesson: Page) -> None:
    video = lesson.locator("video")
    video.evaluate("each => { each.controls = false; each.currentTime = 20; }")  # inside a caption
    until(lesson, "!video.seeking && video.textTracks[0].activeCues.length === 1")
    looks = {video.screenshot()}
    summary(lesson, "Captions").click()
    for name, value in (("Size", "Small"), ("Size", "Large"), ("Background", "Light"), ("Background", "None")):  # fmt: skip
        lesson.get_by_label(name).select_option(value)
        looks.add(video.screenshot())
    assert len(looks) == 5, "a choice changes nothing to be seen"
    lesson.reload()
    expect(video).to_have_attribute("data-size", "large")
    expect(video).to_have_attribute("data-ground", "none")
    assert lesson.get_by_label("Size").input_value() == "large"


def test_a_spoiled_choice_is_the_first_one(lesson: Page) -> None:
    lesson.evaluate("localStorage.setItem('plumline-2 / captions', '{\"size\": \"huge\"}')")
    lesson.reload()
    expect(lesson.locator("video")).to_have_attribute("data-size", "middle")


def test_a_chapter_plays_from_where_it_begins(lesson: Page) -> None:
    watch_seeks(lesson)
    summary(lesson, "Chapters").press("Enter")
    lesson.get_by_role("link", name=re.compile("0:44.*Make a guess")).press("Enter")
    expect(lesson.locator("video")).to_be_focused()
    until(lesson, "!video.paused")
    until(lesson, "sought.length > 0")  # told a moment after it was asked for
    assert lesson.evaluate("sought") == [44]
    assert "#" not in lesson.url


def test_who_chooses_a_chapter_meets_its_pause_anew(lesson: Page) -> None:
    for _ in range(2):
        lesson.evaluate("document.querySelector('[href=\"#guess\"][data-play-from]').click()")
        lesson.evaluate("document.querySelector('video').currentTime = 64.5")
        expect(lesson.get_by_role("heading", name="Make a guess")).to_be_focused()
        lesson.locator("#guess [data-go-on]").press("Enter")
        until(lesson, "!video.paused")


def test_what_is_said_follows_and_leaves_page_and_focus_alone(lesson: Page) -> None:
    summary(lesson, "Read along").press("Enter")
    expect(lesson.locator(".said button").first).to_contain_text("0:00 Hello from Larkmead!")
    lesson.evaluate("scrollTo(0, 0)")
    for at, says in ((22, "I got mine at the kiosk"), (252, "Talk it over, and thank you")):
        lesson.evaluate("at => { document.querySelector('video').currentTime = at; }", at)
        here = lesson.locator(".said [aria-current=true]")
        expect(here).to_contain_text(says)
        expect(here).to_have_count(1)
        box, line = lesson.locator(".said").bounding_box(), here.bounding_box()
        assert box
        assert line
        assert box["y"] <= line["y"] <= box["y"] + box["height"] - line["height"]
    assert lesson.evaluate("scrollY") == 0
    expect(summary(lesson, "Read along")).to_be_focused()


def test_a_line_leads_to_its_moment_and_the_reader_stays(lesson: Page) -> None:
    summary(lesson, "Read along").press("Enter")
    watch_seeks(lesson)
    line = lesson.get_by_role("button", name="0:21 I got mine at the kiosk by the bridge.")
    line.press("Enter")
    until(lesson, "!video.paused")
    until(lesson, "sought.length > 0")  # told a moment after it was asked for
    assert lesson.evaluate("sought") == [21.1]
    expect(line).to_be_focused()


def test_what_is_said_can_be_read_with_the_captions_off(lesson: Page) -> None:
    lesson.evaluate("document.querySelector('video').textTracks[0].mode = 'disabled'")
    summary(lesson, "Read along").press("Enter")
    expect(lesson.locator(".said button").first).to_be_visible()
    until(lesson, "video.textTracks[0].mode === 'hidden'")  # its lines may have been there before


def test_who_opens_it_before_its_script_comes_reads_with_the_captions_off_too(
    page: Page, address: str
) -> None:
    held = hold(page, "**/later-*.js")
    with page.expect_request("**/later-*.js"):
        page.goto(address, wait_until="domcontentloaded")
    page.evaluate("document.querySelector('video').textTracks[0].mode = 'disabled'")
    summary(page, "Read along").press("Enter")
    expect(page.locator("details[open] > video-transcript")).to_be_visible()
    [route] = held
    route.continue_()
    expect(page.locator(".said button").first).to_be_visible()


def gone(route: Route) -> None:
    route.fulfill(status=404)


def test_without_the_file_the_lesson_goes_on(
    page: Page, address: str, axe: Axe, complaints: list[str]
) -> None:
    page.route("**/*.mp4", gone)
    page.goto(address)
    says = page.get_by_text("The video can't play here.")
    expect(says.first).to_be_visible()
    expect(page.locator("span[role=status].unseen")).to_contain_text("The video can't play here.")
    summary(page, "Read along").press("Enter")
    expect(page.locator(".said button").first).to_contain_text("Hello from Larkmead!")
    summary(page, "Chapters").press("Enter")
    page.get_by_role("link", name=re.compile("0:44")).press("Enter")
    assert page.url.endswith("#guess")
    expect(page.locator("button[data-play-from]:visible:not(video-transcript *)")).to_have_count(0)
    page.locator("#guess [data-go-on]").press("Enter")
    expect(page.locator("li[data-done] #guess")).to_have_count(1)
    expect(page.locator("#lunch h2")).to_be_focused()
    assert axe(page) == []
    assert complaints
    assert all(".mp4" in complaint for complaint in complaints)
    complaints.clear()


def test_a_file_no_browser_plays_is_told_too(page: Page, address: str) -> None:
    page.route("**/*.mp4", lambda route: route.fulfill(body=b"not a video", content_type="video/mp4"))  # fmt: skip
    page.goto(address)
    expect(page.get_by_text("The video can't play here.").first).to_be_visible()


@OWN_CONTEXT  # its clock is false
def test_a_line_too_slow_is_told_after_a_while_and_taken_back(page: Page, address: str) -> None:
    page.clock.install()
    held = hold(page, "**/*.mp4")
    page.goto(address, wait_until="domcontentloaded")
    says = page.locator("[data-missing]")
    page.locator("video").press("Space")
    page.clock.run_for(5_000)
    expect(says).to_be_hidden()
    page.clock.run_for(5_000)
    expect(says).to_be_visible()
    for route in held:
        route.continue_()
    page.unroute("**/*.mp4")
    until(page, "!video.paused && video.currentTime > 0")
    expect(says).to_be_hidden()


@pytest.fixture
def scriptless(browser: Browser) -> Iterator[Page]:
    """A page of a browser that runs no script."""
    context = browser.new_context(java_script_enabled=False, viewport={"width": 390, "height": 844})
    yield context.new_page()
    context.close()


def test_without_script_all_that_is_said_is_a_page(scriptless: Page, address: str) -> None:
    scriptless.goto(address)
    expect(scriptless.locator("video[controls] track[default]")).to_have_count(1)
    expect(summary(scriptless, "Captions")).to_be_hidden()
    summary(scriptless, "Read along").click()
    scriptless.get_by_role("link", name="Everything that is said, on one page").click()
    expect(scriptless.get_by_text("I got mine at the kiosk by the bridge.")).to_be_visible()
    scriptless.get_by_role("link", name="Make a guess").click()
    assert scriptless.url.endswith("/index.html#guess")


def test_without_script_chapters_lead_to_their_stops(scriptless: Page, address: str) -> None:
    scriptless.goto(address)
    summary(scriptless, "Chapters").click()
    scriptless.get_by_role("link", name=re.compile("0:44")).click()
    assert scriptless.url.endswith("#guess")


def test_without_script_each_part_is_a_link_that_halts_by_itself(
    scriptless: Page, page: Page, address: str
) -> None:
    scriptless.goto(address)
    points = scriptless.locator("pause-player").get_attribute("data-pauses")
    assert points
    pauses = list(dict.fromkeys(at for at, _ in json.loads(points)))
    links = scriptless.locator("a[href*='.mp4#t=']:visible")
    moments = [str(one.get_attribute("href")).partition("#t=")[2] for one in links.all()]
    assert {"0", *pauses} <= {each.partition(",")[0] for each in moments}
    for start, _, end in (each.partition(",") for each in moments):
        assert end == next((at for at in pauses if float(at) > float(start)), "")
    expect(links.first).to_have_text(f"Watch 0:00 to {clock(Decimal(pauses[0]))}")
    expect(scriptless.locator(".stop-watch").first).to_contain_text("Then it is your turn.")
    page.goto(address.replace("index.html", f"{LESSON}.mp4#t={moments[0]}"))
    until(page, "video.readyState === 4")
    page.evaluate(
        "at => { document.querySelector('video').currentTime = at; }", float(pauses[0]) - 1
    )
    page.evaluate("document.querySelector('video').play()")
    until(page, f"video.paused && video.currentTime >= {pauses[0]}")
    assert page.evaluate("document.querySelector('video').currentTime") < float(pauses[0]) + 1


def test_with_a_script_the_links_of_parts_are_not_there(lesson: Page) -> None:
    expect(lesson.locator("a[href*='.mp4#t=']")).to_have_count(0)


@pytest.fixture(scope="module")
def elsewhere(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A site with one lesson, whose video another site shows."""
    project = copy_project(tmp_path_factory.mktemp("elsewhere"), lessons=False)
    lesson = small_lesson(video={"elsewhere": THERE})
    stops = lesson["stops"]
    assert isinstance(stops, list)
    stops[0]["compare"]["at"] = "0:40"
    stops.insert(0, {"watch": {"from": "0:00", "to": "0:20"}})
    stops.insert(1, {"ask": {"at": "0:30", "prompt": "Which?", "reveal": "We will see."}})
    write_lesson(project, "small", lesson)
    return build_project(project)


def test_a_video_elsewhere_is_a_link_and_times_to_pause(
    page: Page, elsewhere: Path, serve: Serve, axe: Axe
) -> None:
    """The watched page fails its test on any request to another host, so nothing is embedded."""
    page.goto(f"{serve(elsewhere)}small/index.html")
    link = page.get_by_role("link", name="Watch it there")
    expect(link).to_have_attribute("href", THERE)
    expect(link).to_have_attribute("rel", "noreferrer noopener")
    expect(page.locator("#watch-from-0-00")).to_contain_text("films.example")
    expect(page.locator("#watch-from-0-00")).to_contain_text("own rules")
    times = [
        " ".join(text.split()) for text in page.locator("#watch-from-0-00 li").all_inner_texts()
    ]
    assert times == ["0:30 Think", "0:40 Work out the gap"]
    expect(page.locator("video, iframe, embed, object")).to_have_count(0)
    page.locator("#which [data-go-on]").press("Enter")
    expect(page.locator("#compare-1 h2, #lunch h2")).to_be_focused()
    assert axe(page) == []
