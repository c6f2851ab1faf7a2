"""What a count sounds like: silent unless asked, soft, short, from nothing to nothing, and each unlike the others."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TypedDict

import pytest
from playwright.sync_api import Page, expect

from tests.browser.opened_pacer import LESSON, begin, begin_out_of_time, pace
from tests.shared_context import OWN_CONTEXT

THEME = Path(__file__).parents[2] / "theme"
BEGINS = 0.1
"""s"""

HEARD = """async ({address, begins}) => {
  const { SOUNDS } = await import(address);
  const heard = {};
  for (const [name, sound] of Object.entries(SOUNDS)) {
    const context = new OfflineAudioContext(1, 44100 * 1.5, 44100);
    sound(context, context.destination, begins);
    const samples = (await context.startRendering()).getChannelData(0);
    const loud = [...samples.keys()].filter(at => Math.abs(samples[at]) > 1e-3);
    const passes = samples.reduce((sum, each, at) => sum + (at && each * samples[at - 1] < 0 ? 1 : 0), 0);
    heard[name] = {
      peak: Math.max(...samples.map(Math.abs)),
      from: loud[0] / 44100,
      to: loud.at(-1) / 44100,
      first: Math.max(...samples.slice(0, 44100 * begins + 40).map(Math.abs)),
      pitch: passes / 2 / (loud.at(-1) - loud[0]) * 44100,
    };
  }
  return heard;
}"""


class Heard(TypedDict):
    """A sound as it was made, apart from any loudspeaker."""

    peak: float
    """1 is all there is."""
    first: float
    """The loudest of what stands before it and in its first millisecond."""
    pitch: float
    """How often it passes through nothing, as a tone of so many Hz would."""
    to: float
    """s"""


@pytest.fixture
def heard(page: Page, tmp_path: Path, serve: Callable[[Path], str]) -> dict[str, Heard]:
    """The sounds of the theme's own module, which a bundle holds as it stands."""
    (tmp_path / "index.html").write_text("<!doctype html><link rel=icon href=data:,>", "utf-8")
    sounds = (THEME / "js/pacer-sounds.js").read_text("utf-8")
    (tmp_path / "sounds.js").write_text(sounds, "utf-8")
    address = serve(tmp_path)
    page.goto(f"{address}index.html")
    made: dict[str, Heard] = page.evaluate(
        HEARD, {"address": f"{address}sounds.js", "begins": BEGINS}
    )
    return made


def test_river_kettle_and_mill_wheel_are_soft_short_and_no_click(heard: dict[str, Heard]) -> None:
    assert set(heard) == {"river", "kettle", "mill"}
    for sound in heard.values():
        assert 0.03 < sound["peak"] < 0.35
        assert sound["first"] < 0.05
        assert sound["to"] < BEGINS + 0.9


def test_each_is_known_from_the_others(heard: dict[str, Heard]) -> None:
    """The mill wheel knocks low, the kettle sings high, the river is between."""
    assert heard["mill"]["pitch"] * 1.5 < heard["kettle"]["pitch"]
    assert heard["mill"]["to"] < heard["kettle"]["to"] < heard["river"]["to"]


@pytest.fixture
def address(built_site: Path, serve: Callable[[Path], str]) -> str:
    """A lesson of the demo whose move counts what its rows find."""
    return f"{serve(built_site)}{LESSON}/index.html"


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


@OWN_CONTEXT  # its clock is false
def test_a_chosen_sound_is_seen_as_well_as_heard(page: Page, address: str) -> None:
    pacer = begin_out_of_time(page, address)
    drawn = pacer.locator(".pacer-beat")
    pacer.get_by_role("button", name="Start").click()
    page.clock.run_for(60_000 // pace(pacer) + 100)
    expect(drawn).to_have_text("")
    pacer.get_by_label("Mill wheel").check()
    page.clock.run_for(60_000 // pace(pacer))
    expect(drawn).to_have_text("clack")
