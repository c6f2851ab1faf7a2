"""Stops are read aloud on request, by a voice of the device; the browser's speech is stood in for."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

SPEECH = """
window.said = []; window.cancelled = 0;
window.SpeechSynthesisUtterance = class { constructor(text) { this.text = text } };
const speech = new EventTarget();
speech.getVoices = () => window.voices ?? %s;
speech.speak = each => said.push(each);
speech.cancel = () => { cancelled += 1; };
Object.defineProperty(window, 'speechSynthesis', {value: speech});
"""
OURS = {"lang": "en-GB", "localService": True}
SPANISH = {"lang": "es_MX", "localService": True}
NETWORK = {"lang": "en-US", "localService": False}
SAID = "said.map(({text, lang}) => [lang, text])"
Open = Callable[..., Page]


@pytest.fixture
def opened(page: Page, built_site: Path, serve: Callable[[Path], str]) -> Open:
    site = serve(built_site)

    def go(*voices: dict[str, object], path: str = "river-walk/index.html") -> Page:
        page.add_init_script(SPEECH % json.dumps(voices))
        page.goto(site + path)
        page.locator(".who").wait_for()
        return page

    return go


def test_it_reads_heading_and_question_sentence_by_sentence(opened: Open) -> None:
    page = opened(OURS)
    ask = page.locator(".stop-ask").first
    ask.get_by_role("button", name="Read this to me").click()
    said = page.evaluate(SAID)
    assert [language for language, _ in said] == ["en-US"] * len(said)
    told = " ".join(text for _, text in said)
    assert told.startswith(ask.locator("h2").evaluate("each => each.firstChild.textContent.trim()"))
    assert " ".join(ask.locator(".prompt").inner_text().split()) in told
    assert "(you are here)" not in told


def test_a_hint_is_read_only_when_it_is_open(opened: Open) -> None:
    page = opened(OURS)
    ask = page.locator(".stop-ask", has=page.locator("[data-hint]")).first
    hint = " ".join((ask.locator("[data-hint] p").text_content() or "").split())
    listen = ask.get_by_role("button", name="Read this to me")
    listen.click()
    assert hint not in " ".join(text for _, text in page.evaluate(SAID))
    listen.click()
    ask.locator("[data-hint] summary").click()
    page.evaluate("said.length = 0")
    listen.click()
    assert hint in " ".join(text for _, text in page.evaluate(SAID))


def test_a_second_tap_stops_it(opened: Open) -> None:
    page = opened(OURS)
    listen = page.get_by_role("button", name="Read this to me").first
    listen.click()
    expect(listen).to_have_attribute("aria-pressed", "true")
    before = page.evaluate("cancelled")
    listen.click()
    expect(listen).to_have_attribute("aria-pressed", "false")
    assert page.evaluate("cancelled") == before + 1


def test_it_falls_silent_at_its_end_and_when_the_video_plays(opened: Open) -> None:
    page = opened(OURS)
    listen = page.get_by_role("button", name="Read this to me").nth(1)
    listen.click()
    page.evaluate("said.at(-1).onend()")
    expect(listen).to_have_attribute("aria-pressed", "false")
    listen.click()
    page.evaluate("document.querySelector('video').dispatchEvent(new Event('play'))")
    expect(listen).to_have_attribute("aria-pressed", "false")


def test_nothing_is_read_unasked(opened: Open) -> None:
    page = opened(OURS)
    page.wait_for_timeout(300)  # what is shown is that nothing happens
    assert page.evaluate("said.length") == 0


@pytest.mark.parametrize("voices", [(), (SPANISH,), (NETWORK,)], ids=["none", "other", "network"])
def test_without_a_voice_of_this_device_and_language_there_is_no_button(
    opened: Open, voices: tuple[dict[str, object], ...]
) -> None:
    """Some browsers list voices that send the text to a server: `localService` is false (Web Speech API)."""
    page = opened(*voices)
    expect(page.get_by_role("button", name="Read this to me")).to_have_count(0)


def test_voices_may_come_late(opened: Open) -> None:
    page = opened()
    page.evaluate(
        f"window.voices = [{json.dumps(OURS)}]; speechSynthesis.dispatchEvent(new Event('voiceschanged'))"
    )
    assert page.get_by_role("button", name="Read this to me").count() > 1


def test_a_spanish_page_is_read_by_a_spanish_voice(opened: Open) -> None:
    page = opened(SPANISH, OURS, path="es/river-walk/index.html")
    page.get_by_role("button", name="Léeme esto").nth(1).click()
    assert page.evaluate("said.every(({voice}) => voice.lang === 'es_MX')")


APART = """() => {
  const word = document.createElement('span');
  word.lang = 'es';
  word.textContent = 'manzana';
  document.querySelector('.stop-ask .prompt').append(' ', word);
}"""


@pytest.mark.parametrize("others", [(), (NETWORK | {"lang": "es-MX"},)], ids=["none", "network"])
def test_a_part_no_voice_of_the_device_can_read_is_left_out_and_told(
    opened: Open, others: tuple[dict[str, object], ...]
) -> None:
    """A browser left to choose may take a voice that sends the text to someone."""
    page = opened(OURS, *others)
    page.evaluate(APART)
    ask = page.locator(".stop-ask").first
    ask.get_by_role("button", name="Read this to me").click()
    said = page.evaluate(
        "said.map(({text, lang, voice}) => [lang, text, voice && voice.localService])"
    )
    assert said
    assert all(local is True for _, _, local in said)
    assert not [text for _, text, _ in said if "manzana" in text]
    expect(ask.locator("[data-unread][role=status]")).to_contain_text(
        "no voice for a part in another language"
    )


def test_nothing_is_told_where_the_device_can_read_all(opened: Open) -> None:
    page = opened(OURS, SPANISH)
    page.evaluate(APART)
    ask = page.locator(".stop-ask").first
    ask.get_by_role("button", name="Read this to me").click()
    assert "manzana" in [text for _, text in page.evaluate(SAID)]
    assert page.locator("[data-unread]").count() == 0


def test_what_blocks_only_leaves_out_is_not_read(opened: Open) -> None:
    page = opened(OURS, path="two-days/index.html")
    day = page.locator(".stop-day").first
    listen = day.get_by_role("button", name="Read this to me")
    listen.click()
    heard = " ".join(text for _, text in page.evaluate(SAID))
    assert "kcal" in heard
    assert "Blocks only is on" not in heard
    listen.click()
    page.locator("[data-care] > summary").click()
    page.get_by_role("button", name="Blocks only").click()
    page.evaluate("said.length = 0")
    listen.click()
    heard = " ".join(text for _, text in page.evaluate(SAID))
    assert "Blocks only is on" in heard
    assert "kcal" not in heard
