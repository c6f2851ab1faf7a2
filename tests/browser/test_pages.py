"""Every kind of page in a real Chromium: readable for all, quiet, still while loading, whole without script."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, Route

from tests.browser.watched import OPEN_ALL, hold, unanswered, wait_for_all, wait_for_answers
from tests.site_project import ROOT

Serve = Callable[[Path], str]
Axe = Callable[[Page], list[str]]

LESSONS = sorted(file.parent.name for file in (ROOT / "lessons").glob("*/lesson.yaml"))
IN_SPANISH = sorted(
    f"es/{file.parent.name}" for file in (ROOT / "lessons").glob("*/lesson.es.yaml")
)
WRITTEN = sorted((ROOT / "lessons").rglob("*.md"))
KINDS = {
    "front": "index.html",
    "lesson": f"{LESSONS[0]}/index.html",
    "cards": f"{LESSONS[0]}/cards.html",
    "worksheet": f"{LESSONS[0]}/worksheet.html",
    "answers": f"{LESSONS[0]}/answers.html",
    "written": WRITTEN[0].relative_to(ROOT / "lessons").with_suffix(".html").as_posix(),
}
PAGES = pytest.mark.parametrize("path", KINDS.values(), ids=KINDS)
SCREENS = {
    "light": (390, "light"),
    "dark": (390, "dark"),
    "narrow": (320, "light"),
    "wide": (1280, "dark"),
}

# What can be reached with the Tab key, in the order of the page.
REACHABLE = """() => [...document.querySelectorAll('a[href], button, input, select, textarea, summary, video[controls], [tabindex]')]
  .filter(each => each.tabIndex >= 0 && !each.disabled && each.checkVisibility({visibilityProperty: true}))
  .filter((each, _, all) => each.type !== 'radio' || each === all.find(one => one.name === each.name && one.form === each.form))"""
# Until the page as it is has been painted, then whether all it asked for has come.
PICTURE = """async () => {
  const picture = () => new Promise(requestAnimationFrame);
  while (!performance.getEntriesByName('first-contentful-paint').length) await picture();
  await picture();
  await picture();
  return document.readyState;
}"""
# Styles that a lesson page links in the page, not in its head.
FURTHER_DOWN = re.compile(r"/assets/(?!screen)\w+\.css$")
SHIFTS = """() => {
  const watcher = new PerformanceObserver(() => {});
  watcher.observe({type: 'layout-shift', buffered: true});
  return watcher.takeRecords().flatMap(each => each.sources.map(({node, previousRect, currentRect}) =>
    `${each.value} ${node?.nodeName}.${node?.className} ${previousRect.y}+${previousRect.height} to ${currentRect.y}+${currentRect.height}`));
}"""


@pytest.fixture
def site(built_site: Path, serve: Serve) -> str:
    """Address of the demo."""
    return serve(built_site)


@PAGES
def test_axe_finds_nothing_on_any_screen(page: Page, site: str, axe: Axe, path: str) -> None:
    """All rules of axe-core: WCAG 2.2 A and AA, and best practice; folded, and with all details open."""
    page.goto(site + path)
    found = {}
    for opened in (False, True):
        if opened:
            page.evaluate(OPEN_ALL)
        for name, (width, scheme) in SCREENS.items():
            page.set_viewport_size({"width": width, "height": 844})
            page.emulate_media(color_scheme="dark" if scheme == "dark" else "light")
            found[name, opened] = axe(page)
    assert {screen: barriers for screen, barriers in found.items() if barriers} == {}


def test_no_page_complains_when_opened_from_a_folder(
    page: Page, complaints: list[str], built_site: Path
) -> None:
    waiting = unanswered(page.context)
    for path in KINDS.values():
        page.goto((built_site / path).as_uri())
        assert page.locator("h1").is_visible()
        wait_for_all(page)
        wait_for_answers(page, waiting)
    page.goto((built_site / KINDS["lesson"]).as_uri())
    page.locator("lesson-thread:defined").wait_for()
    page.locator("[data-check]").first.wait_for()
    assert page.evaluate("getComputedStyle(document.documentElement).getPropertyValue('--ink')")
    # Chromium reads no captions from a folder; everything else of the page must be there.
    assert [text for text in complaints if ".vtt" not in text] == []
    complaints.clear()


@pytest.fixture(scope="module")
def scriptless(browser: Browser) -> Iterator[Page]:
    """A page of a browser that runs no script, so that nothing of one test is left for the next."""
    context = browser.new_context(java_script_enabled=False, viewport={"width": 390, "height": 844})
    yield context.new_page()
    context.close()


@pytest.fixture(scope="module")
def touched(browser: Browser) -> Iterator[Page]:
    """A page on a phone, for tests that only look at it."""
    context = browser.new_context(
        viewport={"width": 390, "height": 844}, has_touch=True, is_mobile=True
    )
    yield context.new_page()
    context.close()


@pytest.mark.parametrize("name", ["lesson", "worksheet", "answers", "written"])
def test_a_phone_shows_sheets_in_the_size_of_the_other_pages(
    page: Page, site: str, name: str
) -> None:
    page.set_viewport_size({"width": 390, "height": 844})
    page.goto(site + KINDS[name])
    wait_for_all(page)
    size = "each => parseFloat(getComputedStyle(each).fontSize)"
    where = ".sheet .prompt, .sheet p" if name in {"worksheet", "answers"} else "main p"
    assert page.locator(where).first.evaluate(size) >= 18


@PAGES
def test_without_script_nothing_that_is_needed_is_hidden(
    scriptless: Page, site: str, path: str
) -> None:
    scriptless.goto(site + path)
    for summary in scriptless.locator("summary").all():
        if not summary.evaluate("each => each.parentElement.open || each.closest('[hidden]')"):
            summary.click()
    lost = scriptless.evaluate(
        """() => [...document.querySelectorAll('main *')]
        .filter(each => [...each.childNodes].some(node => node.nodeType === 3 && node.data.trim()))
        .filter(each => !each.checkVisibility({visibilityProperty: true, opacityProperty: true}))
        .filter(each => !each.closest('[hidden], script, video, .only-print, [data-instead-of-numbers], .what-if thead, move-card i'))
        .map(each => each.outerHTML)"""
    )
    assert lost == []


@PAGES
def test_without_script_no_control_is_dead(scriptless: Page, site: str, path: str) -> None:
    scriptless.goto(site + path)
    assert [
        button.inner_text() for button in scriptless.locator("button").all() if button.is_visible()
    ] == []


@PAGES
@pytest.mark.parametrize("width", [390, 1280])
def test_the_tab_key_goes_through_everything_in_the_order_of_the_page(
    page: Page, site: str, path: str, width: int
) -> None:
    """WCAG 2.2, 2.1.1 Keyboard, 2.4.3 Focus Order and 2.4.7 Focus Visible."""
    page.set_viewport_size({"width": width, "height": 844})
    page.goto(site + path)
    page.evaluate(OPEN_ALL)
    wait_for_all(page)  # what comes later, or by what was opened, has its place in the order too
    page.evaluate(OPEN_ALL)
    if page.locator("keep-lesson details").count():
        page.locator("keep-lesson button").first.wait_for()  # it asks the site before it offers
    page.evaluate(f"window.reachable = ({REACHABLE})()")
    wanted = list(range(page.evaluate("reachable.length")))
    reached: list[int] = []
    unseen: list[str] = []
    above: list[str] = []
    last = [0.0, 0.0]
    for _ in range(20 * len(wanted) + 20):  # a video has controls of its own inside
        page.keyboard.press("Tab")
        at = page.evaluate("reachable.indexOf(document.activeElement)")
        if at < 0 and reached:
            break
        if reached[-1:] == [at]:
            continue
        reached.append(at)
        name, has_ring, left, top, bottom, scrolled = page.evaluate(STATE)
        unseen += [] if has_ring else [name]
        if scrolled:  # lines of the transcript move in a box of their own as they come into sight
            continue
        above += [name] if bottom < last[1] and left <= last[0] else []  # unless a column begins
        last = [left, top]
    assert reached == wanted
    assert unseen == []
    assert above == []


# Name of what has the focus, whether a ring shows it, its left edge, where it begins and ends, and
# whether it stands in a box that scrolls.
STATE = """() => {
  const here = document.activeElement;
  const ringed = [here, here.closest('label')].filter(Boolean).map(each => getComputedStyle(each));
  const box = here.getBoundingClientRect();
  return [here.outerHTML.slice(0, 120),
    ringed.some(({outlineStyle, outlineWidth}) => outlineStyle === 'auto' || (outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2)),
    box.left, box.top + scrollY, box.bottom + scrollY, !!here.closest('video-transcript')];
}"""


@PAGES
def test_every_control_is_large_enough_for_a_thumb(touched: Page, site: str, path: str) -> None:
    """WCAG 2.2, 2.5.5 Target Size (Enhanced): 44 by 44 CSS pixels, links inside a sentence excepted."""
    touched.goto(site + path)
    wait_for_all(touched)
    touched.evaluate(OPEN_ALL)
    small = touched.evaluate(f"({REACHABLE})()" + SMALL)
    assert small == [], "\n".join(small)


# A box to tick is as large as its label; a link that has words around it in its line is excepted.
SMALL = """.map(each => each.matches('input[type=checkbox], input[type=radio]') ? each.closest('label') ?? each : each)
  .filter(each => !(each.matches('a') && getComputedStyle(each).display === 'inline'
    && [...each.parentElement.childNodes].some(node => node.nodeType === 3 && node.data.trim())))
  .filter(each => !each.matches('.skip') && each.tabIndex < 1)
  .map(each => [each.outerHTML.slice(0, 120), each.getBoundingClientRect()])
  .filter(([, {width, height}]) => Math.min(width, height) < 43.99)
  .map(([html, {width, height}]) => `${Math.round(width)} x ${Math.round(height)}: ${html}`)"""


def let_come(page: Page, held: list[Route]) -> None:
    """Each held file after a picture without it, until all of the page is there."""
    came = 0
    while page.evaluate(PICTURE) != "complete":
        came += len(held)
        while held:
            held.pop().continue_()
    wait_for_all(page)
    assert came


@PAGES
@pytest.mark.parametrize("width", [390, 1280])
def test_nothing_shifts_while_a_page_loads(page: Page, site: str, path: str, width: int) -> None:
    """Layout Instability, W3C: also when each script comes after a picture without it."""
    page.set_viewport_size({"width": width, "height": 844})
    held = hold(page, "**/*.js")
    page.goto(site + path, wait_until="commit")
    let_come(page, held)
    page.evaluate(PICTURE)
    assert page.evaluate(SHIFTS) == []


@pytest.mark.parametrize("width", [320, 390, 1280])
@pytest.mark.parametrize("lesson", LESSONS)
def test_nothing_shifts_when_the_styles_further_down_come_late(
    page: Page, site: str, lesson: str, width: int
) -> None:
    """Layout Instability, W3C: the first screen stands as it is before the rest has its style."""
    page.set_viewport_size({"width": width, "height": 844})
    held = hold(page, FURTHER_DOWN)
    page.goto(f"{site}{lesson}/index.html", wait_until="commit")
    page.evaluate(PICTURE)
    seen = page.locator("h1, .summary, .helps summary, video").all()
    before = [each.bounding_box() for each in seen if each.is_visible()]
    let_come(page, held)
    assert before
    assert [each.bounding_box() for each in seen][: len(before)] == before
    assert page.evaluate(SHIFTS) == []


def test_a_shift_is_seen(page: Page, site: str) -> None:
    page.goto(site)
    page.evaluate(PICTURE)
    page.evaluate(
        "document.body.prepend(Object.assign(document.createElement('p'), {textContent: 'late'}))"
    )
    page.evaluate(PICTURE)
    assert page.evaluate(SHIFTS)


@pytest.mark.parametrize("lesson", [*LESSONS, *IN_SPANISH])
def test_the_first_screen_of_a_phone_holds_the_whole_video(
    page: Page, site: str, lesson: str
) -> None:
    """Common practice, no source: what a page is for is reached without scrolling."""
    page.set_viewport_size({"width": 390, "height": 844})
    page.goto(f"{site}{lesson}/index.html")
    box = page.locator("video").bounding_box()
    assert box is not None
    assert box["y"] + box["height"] <= 844
