"""The pacer: right by the clock however busy or hidden the page is, silent unless asked, calm at its end."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise
from pathlib import Path
from typing import Literal

import pytest
from playwright.sync_api import Locator, Page, expect

from tests.browser.pacer_watch import BUSY, LATE

Serve = Callable[[Path], str]
LESSON = "river-walk"
SCHEMES: tuple[Literal["light", "dark"], ...] = ("light", "dark")


@pytest.fixture
def address(built_site: Path, serve: Serve) -> str:
    """A lesson of the demo whose move counts what its rows find."""
    return f"{serve(built_site)}{LESSON}/index.html"


def show_counts(page: Page) -> None:
    cover = page.get_by_role("button", name="Show the count")
    while cover.count():
        cover.first.click()


def open_pacer(page: Page, *, count: int = 0) -> Locator:
    """Open the first move's pacer, as far as the room check; with a count of its own if given."""
    if page.locator("[data-covered]").count():
        show_counts(page)
    card = page.locator("move-card").first
    if count:
        card.evaluate("(each, count) => { each.dataset.count = count; }", count)
    card.get_by_role("button", name="Count with me").click()
    pacer = page.locator("dialog.pacer")
    expect(pacer).to_be_visible()
    return pacer


def begin(page: Page, *, count: int = 0) -> Locator:
    """Open the pacer and say that the room is ready."""
    pacer = open_pacer(page, count=count)
    pacer.get_by_role("button", name="We are ready").click()
    return pacer


def hold_time(page: Page) -> None:
    """From now on time goes on only as a test lets it: a busy machine adds nothing."""
    page.clock.pause_at(page.evaluate("Date.now()") / 1000 + 3600)


def begin_out_of_time(page: Page, address: str, *, count: int = 0) -> Locator:
    """Open a lesson and its pacer, the room being ready, and hold the time."""
    page.clock.install()
    page.goto(address)
    pacer = begin(page, count=count)
    hold_time(page)
    return pacer


def number(pacer: Locator) -> int:
    return int(pacer.locator(".pacer-number b").inner_text())


def pace(pacer: Locator) -> int:
    return int(pacer.locator(".pacer-pace b").inner_text().split()[0])


def test_two_minutes_by_a_controlled_clock(page: Page, address: str) -> None:
    pacer = begin_out_of_time(page, address, count=500)
    own = pace(pacer)
    pacer.get_by_role("button", name="Start").click()
    start = page.evaluate("performance.now()")
    for seconds in (30, 60, 120):
        page.clock.run_for(seconds * 1000 - round(page.evaluate("performance.now()") - start))
        passed = page.evaluate("performance.now()") - start
        assert passed == pytest.approx(seconds * 1000, abs=1)
        due = passed * own / 60_000
        near = 50 * own / 60_000  # 50 ms of a beat, either way
        assert int(due - near) <= number(pacer) <= int(due + near)


def test_a_page_that_slept_counts_as_if_it_had_not(page: Page, address: str) -> None:
    """As after a hidden tab or a closed lid: every timer that was due comes once, late."""
    pacer = begin_out_of_time(page, address, count=500)
    own = pace(pacer)
    pacer.get_by_role("button", name="Start").click()
    start = page.evaluate("performance.now()")
    page.clock.fast_forward(90_000)
    page.evaluate("document.dispatchEvent(new Event('visibilitychange'))")
    passed = page.evaluate("performance.now()") - start
    assert abs(number(pacer) - passed * own / 60_000) <= 1
    assert number(pacer) == int(passed * own / 60_000 + 1e-6)


def test_on_a_busy_page_no_number_comes_late(page: Page, address: str) -> None:
    """Ten seconds of a page that does nothing but work for BUSY ms in every 700, by a false clock.

    A timer that falls due meanwhile comes once, at the end. By the real clock it is measured by
    `python bench/run.py --only pacer`.
    """
    pacer = begin_out_of_time(page, address, count=500)
    own = pace(pacer)
    pacer.get_by_role("button", name="Start").click()
    start = page.evaluate("performance.now()")
    shown = []
    for _ in range(10_000 // 700 + 1):
        for pass_time, milliseconds in (
            (page.clock.fast_forward, BUSY),
            (page.clock.run_for, 700 - BUSY),
        ):
            pass_time(milliseconds)
            now, number = page.evaluate(
                "[performance.now(), Number(document.querySelector('.pacer-number b').textContent)]"
            )
            due = (now - start) * own / 60_000
            near = LATE * own / 60_000
            assert int(due - near) <= number <= int(due + near)
            shown.append(number)
    assert shown == sorted(shown)
    assert shown[-1] > 3


def test_a_pause_stops_it_and_going_on_keeps_the_beat(page: Page, address: str) -> None:
    pacer = begin_out_of_time(page, address)
    pacer.get_by_role("button", name="Start").click()
    page.clock.run_for(60_000 // pace(pacer) * 3 + 200)
    assert number(pacer) == 3
    pacer.get_by_role("button", name="Pause").click()
    expect(pacer).to_contain_text("Paused at 3")
    page.clock.run_for(20_000)
    assert number(pacer) == 3
    pacer.get_by_role("button", name="Keep counting").click()
    page.clock.run_for(60_000 // pace(pacer))
    assert number(pacer) == 4


def test_it_ends_with_rest_and_waits_for_the_learner(page: Page, address: str) -> None:
    pacer = begin_out_of_time(page, address, count=3)
    pacer.get_by_role("button", name="Start").click()
    page.clock.run_for(60_000)
    expect(pacer.get_by_role("heading")).to_have_text(
        "You counted to 3. Now you know how long that is."
    )
    expect(pacer.get_by_role("heading")).to_be_focused()
    expect(pacer).to_contain_text("have some water")
    page.clock.run_for(600_000)
    expect(pacer).to_contain_text("have some water")
    pacer.get_by_role("button", name="Next:").click()
    expect(pacer.get_by_role("button", name="Start")).to_be_focused()  # no second room check


def test_what_is_left_over_is_told(page: Page, address: str) -> None:
    page.clock.install()
    page.goto(address)
    show_counts(page)
    card = page.locator("move-card:not([data-left=''])").first
    left = card.get_attribute("data-left") or ""
    card.get_by_role("button", name="Count with me").click()
    pacer = page.locator("dialog.pacer")
    pacer.get_by_role("button", name="We are ready").click()
    hold_time(page)
    pacer.get_by_role("button", name="Start").click()
    page.clock.run_for(120_000)
    expect(pacer).to_contain_text(f"{left} left over.")
    assert left.isdigit()  # no unit: nothing to take for a price


def test_the_count_belongs_to_everybody_while_it_runs_and_after(page: Page, address: str) -> None:
    page.clock.install()
    page.goto(address)
    show_counts(page)
    page.get_by_role("button", name="Count with me").first.click()
    pacer = page.locator("dialog.pacer")
    pacer.get_by_role("button", name="We are ready").click()
    hold_time(page)
    team = pacer.get_by_text("This is a team count: share it among everyone in the room.")
    expect(team).to_be_visible()
    pacer.get_by_role("button", name="Start").click()
    page.clock.run_for(600_000)
    expect(pacer).to_contain_text("have some water")
    expect(team).to_be_visible()


def test_by_keyboard_alone_and_back_to_where_it_was_opened(page: Page, address: str) -> None:
    page.goto(address)
    show_counts(page)
    opener = page.get_by_role("button", name="Count with me").first
    opener.focus()
    page.keyboard.press("Enter")
    pacer = page.locator("dialog.pacer")
    expect(pacer.get_by_role("heading", name="Before you move")).to_be_focused()
    expect(pacer.locator("li")).to_have_count(page.locator(".before li").count())
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    expect(pacer.get_by_role("button", name="Start")).to_be_focused()
    page.keyboard.press("Space")
    expect(pacer.get_by_role("button", name="Pause")).to_be_focused()
    page.keyboard.press("Escape")
    expect(pacer).not_to_be_visible()
    expect(opener).to_be_focused()


def test_the_number_is_said_in_steps_and_not_at_each_beat(page: Page, address: str) -> None:
    pacer = begin_out_of_time(page, address, count=12)
    pacer.get_by_role("button", name="Start").click()
    said = []
    for _ in range(12):
        page.clock.run_for(60_000 // pace(pacer))
        said.append(pacer.get_by_role("status").first.inner_text())
    assert list(dict.fromkeys(said)) == ["1", "5", "10", "12"]


def test_the_seated_way_brings_its_own_figures_and_words(page: Page, address: str) -> None:
    page.goto(address)
    seated = page.locator("move-card [data-seated] p:last-child").first.text_content() or ""
    pacer = begin(page)
    standing = pacer.locator(".figure").first.get_attribute("src")
    pacer.get_by_label("Seated").check()
    expect(pacer).to_contain_text(seated)
    assert pacer.locator(".figure").first.get_attribute("src") != standing


def test_the_pace_is_kept_on_the_device(page: Page, address: str) -> None:
    page.goto(address)
    pacer = begin(page)
    own = pace(pacer)
    pacer.get_by_role("button", name="Slower").click()
    slower = pace(pacer)
    assert slower < own
    page.reload()
    assert pace(begin(page)) == slower


TOLD = """() => {
  window.told = [];
  const region = document.querySelector('.pacer [role=status]');
  new MutationObserver(() => region.textContent && told.push(region.textContent)).observe(region, {childList: true});
}"""


def test_start_pause_going_on_and_pace_are_told_once_in_one_place(page: Page, address: str) -> None:
    """What the eye sees of it is hidden from who listens; the end is told by the heading alone."""
    pacer = begin_out_of_time(page, address, count=2)
    page.evaluate(TOLD)
    beat = 60_000 // pace(pacer)
    pacer.get_by_role("button", name="Start").click()
    page.clock.run_for(beat + 100)
    pacer.get_by_role("button", name="Pause").click()
    pacer.get_by_role("button", name="Keep counting").click()
    pacer.get_by_role("button", name="Slower").click()
    page.clock.run_for(10 * beat)
    heading = "You counted to 2. Now you know how long that is."
    expect(pacer.get_by_role("heading")).to_be_focused()
    expect(pacer.get_by_role("heading")).to_have_text(heading)
    assert page.evaluate("told") == [
        "Get ready",
        "1",
        "Paused at 1",
        "Going on from 1",
        "25 a minute",
        "2",
    ]
    assert pacer.locator("[role=status], [aria-live], output").count() == 1
    expect(pacer.get_by_role("status")).to_have_text("")


def test_what_is_told_is_not_read_twice(page: Page, address: str) -> None:
    pacer = begin_out_of_time(page, address)
    pacer.get_by_role("button", name="Start").click()
    assert pacer.get_by_text("Get ready").count() == 2
    seen = pacer.locator(".pacer-state")
    expect(seen).to_be_visible()
    expect(seen).to_have_attribute("aria-hidden", "true")


TURN = "each => Number(each.querySelector('.pacer-bob > g').getAttribute('transform').match(/-?[\\d.]+/)[0])"
"""Degrees that the plumb bob hangs out."""


def test_a_plumb_bob_swings_across_once_a_count_at_the_learners_pace(
    page: Page, address: str
) -> None:
    pacer = begin_out_of_time(page, address, count=20)
    assert pacer.evaluate(TURN) == 0
    pacer.get_by_role("button", name="Slower").click()
    beat = 60_000 / pace(pacer)
    pacer.get_by_role("button", name="Start").click()
    start = page.evaluate("performance.now()")
    turns = []
    for half in range(2, 11):
        page.clock.run_for(round(start + half * beat / 2) - page.evaluate("performance.now()"))
        turns.append(pacer.evaluate(TURN))
    turned = turns[::2]
    assert [round(abs(turn)) for turn in turned] == [20] * 5
    assert all(one * other < 0 for one, other in pairwise(turned))
    assert all(abs(turn) < 3 for turn in turns[1::2])
    pacer.get_by_role("button", name="Pause").click()
    held = pacer.evaluate(TURN)
    page.clock.run_for(5_000)
    assert pacer.evaluate(TURN) == held


def test_the_bob_hangs_still_where_nothing_may_move(page: Page, address: str) -> None:
    page.emulate_media(reduced_motion="reduce")
    pacer = begin_out_of_time(page, address, count=20)
    pacer.get_by_role("button", name="Start").click()
    for _ in range(4):
        page.clock.run_for(700)
        assert pacer.evaluate(TURN) == 0
        assert page.evaluate("document.getAnimations().length") == 0
    assert number(pacer) > 0


LEFT = "each => each.querySelector('.pacer-tens .wash').getAttribute('d').split('M').length - 1"
"""How many blocks are drawn."""


def test_a_block_walks_off_with_each_count_until_none_is_left(page: Page, address: str) -> None:
    pacer = begin_out_of_time(page, address, count=13)
    beat = 60_000 // pace(pacer)
    left = [pacer.evaluate(LEFT)]
    pacer.get_by_role("button", name="Start").click()
    page.clock.run_for(beat // 2)
    for _ in range(13):
        page.clock.run_for(beat)
        left.append(pacer.evaluate(LEFT))
        assert left[-1] == 13 - number(pacer)
    assert left == [*range(13, -1, -1)]


def test_a_count_of_nothing_rests(page: Page, address: str) -> None:
    page.goto(address)
    show_counts(page)
    card = page.locator("move-card").first
    card.evaluate("each => { each.dataset.count = '0'; }")
    card.get_by_role("button", name="Count with me").click()
    pacer = page.locator("dialog.pacer")
    expect(pacer.get_by_role("heading", name="Nothing to count here")).to_be_focused()
    expect(pacer).to_contain_text("Rest now")
    expect(pacer.get_by_role("button", name="Start")).to_have_count(0)


def test_heading_text_and_buttons_of_the_last_window_begin_on_one_line(
    page: Page, address: str
) -> None:
    pacer = begin_out_of_time(page, address, count=1)
    pacer.get_by_role("button", name="Start").click()
    page.clock.run_for(60_000)
    expect(pacer).to_contain_text("have some water")
    aligned = pacer.evaluate(
        "each => [...each.querySelectorAll('h2, p:not(.unseen)')].map(one => getComputedStyle(one).textAlign)"
    )
    assert set(aligned) == {"start"}
    begin_at = "each => [...each.querySelectorAll('h2, p:not(.unseen), .buttons > :first-child')].map(one => one.getBoundingClientRect().left)"
    assert len({round(left) for left in pacer.evaluate(begin_at)}) == 1


@pytest.mark.parametrize("way", ["standing", "seated"])
def test_two_poses_take_turns_with_the_count(page: Page, address: str, way: str) -> None:
    pacer = begin_out_of_time(page, address, count=5)
    if way == "seated":
        pacer.get_by_label("Seated").check()
    seen = "each => [...each.querySelectorAll('.pacer-stage .figure')].findIndex(one => one.checkVisibility({visibilityProperty: true}))"
    assert pacer.locator(".figure").count() == 2
    pacer.get_by_role("button", name="Start").click()
    shown = []
    for _ in range(4):
        page.clock.run_for(60_000 // pace(pacer))
        shown.append(pacer.evaluate(seen))
    assert shown == [1, 0, 1, 0]


COUNT_SOUNDS = """
  window.sounds = 0;
  const Context = AudioContext;
  window.AudioContext = class extends Context { constructor() { super(); window.sounds += 1; } };
"""


def test_no_sound_is_asked_for_before_a_tap_that_wants_it(page: Page, address: str) -> None:
    page.add_init_script(COUNT_SOUNDS)
    page.goto(address)
    pacer = begin(page)
    expect(pacer.get_by_label("Quiet")).to_be_checked()
    pacer.get_by_role("button", name="Start").click()
    assert page.evaluate("sounds") == 0
    pacer.get_by_label("Kettle").check()
    assert page.evaluate("sounds") == 1
    page.reload()
    pacer = begin(page)
    expect(pacer.get_by_label("Kettle")).to_be_checked()
    assert page.evaluate("sounds") == 0
    pacer.get_by_label("Quiet").check()
    expect(pacer).to_contain_text("No sound.")
    page.reload()
    pacer = begin(page)
    pacer.get_by_role("button", name="Start").click()
    assert page.evaluate("sounds") == 0, "quiet is kept"


def test_a_chosen_sound_is_seen_as_well_as_heard(page: Page, address: str) -> None:
    pacer = begin_out_of_time(page, address)
    drawn = pacer.locator(".pacer-beat")
    pacer.get_by_role("button", name="Start").click()
    page.clock.run_for(60_000 // pace(pacer) + 100)
    expect(drawn).to_have_text("")
    pacer.get_by_label("Mill wheel").check()
    page.clock.run_for(60_000 // pace(pacer))
    expect(drawn).to_have_text("clack")


@pytest.mark.parametrize(
    "kept", ["99999", "-3", "0.0001", "fast", "null"], ids=lambda text: text.strip("-")
)
def test_what_cannot_be_was_never_chosen(page: Page, address: str, kept: str) -> None:
    """A pace no child can do, a sound nobody has: whatever spoiled what is kept."""
    page.goto(address)
    pacer = begin(page)
    own = pace(pacer)
    pacer.get_by_role("button", name="Slower").click()
    page.evaluate(
        """kept => { const key = Object.keys(localStorage).find(each => each.endsWith('pacer'));
        const all = JSON.parse(localStorage.getItem(key));
        for (const name of Object.keys(all)) all[name] = kept;
        localStorage.setItem(key, JSON.stringify({...all, sound: kept})); }""",
        kept,
    )
    page.reload()
    pacer = begin(page)
    assert pace(pacer) == own
    expect(pacer.get_by_label("Quiet")).to_be_checked()


def test_figures_take_turns_but_not_where_nothing_may_move(page: Page, address: str) -> None:
    seen = "each => [...each.querySelectorAll('.pacer-stage .figure')].filter(one => one.checkVisibility({visibilityProperty: true})).length"
    page.goto(address)
    pacer = begin(page)
    assert pacer.evaluate(seen) == 1
    page.emulate_media(reduced_motion="reduce")
    assert pacer.evaluate(seen) == 2


@pytest.mark.parametrize(("width", "height"), [(320, 568), (390, 844), (844, 390)])
def test_start_is_on_the_screen_however_small_it_is(
    page: Page, address: str, width: int, height: int
) -> None:
    page.set_viewport_size({"width": width, "height": height})
    page.goto(address)
    pacer = begin(page)
    expect(pacer.get_by_role("button", name="Start")).to_be_in_viewport(ratio=1)
    assert pacer.evaluate("each => each.scrollTop") == 0


@pytest.mark.parametrize("width", [320, 1280])
def test_axe_finds_nothing_on_any_screen(
    page: Page, address: str, axe: Callable[[Page], list[str]], width: int
) -> None:
    """In the light and in the dark: what is asked for changes styles alone, so one visit serves both."""

    def barriers() -> list[str]:
        found = []
        for scheme in SCHEMES:
            page.emulate_media(color_scheme=scheme)
            found += axe(page)
        return found

    page.set_viewport_size({"width": width, "height": 700})
    page.goto(address)
    pacer = open_pacer(page, count=1)
    assert barriers() == []
    pacer.get_by_role("button", name="We are ready").click()
    assert barriers() == []
    for name in ("Seated", "River"):
        pacer.get_by_label(name).check()
    assert barriers() == []
    pacer.get_by_role("button", name="Start").click()
    expect(pacer).to_contain_text("have some water")
    assert barriers() == []
    assert page.evaluate("document.querySelector('dialog.pacer').scrollWidth") <= width


def test_when_the_script_does_not_come_it_is_said_and_can_be_asked_for_again(
    page: Page, address: str, complaints: list[str]
) -> None:
    page.goto(address)
    show_counts(page)
    page.route("**/play-*.js", lambda route: route.abort())
    button = page.locator("[data-count-with]").first
    button.click()
    expect(button).to_have_text("That part could not load. Try again when you are connected.")
    complaints.clear()
    page.unroute("**/play-*.js")
    button.click()
    expect(page.locator("dialog.pacer")).to_be_visible()
    expect(button).to_have_text("Count with me")


def test_it_opens_from_a_folder(page: Page, built_site: Path, complaints: list[str]) -> None:
    page.goto((built_site / LESSON / "index.html").as_uri())
    expect(open_pacer(page)).to_contain_text("Before you move")
    complaints.clear()  # Chromium reads no captions from a folder
