"""The pages for filming, and the rehearsal video, in a real Chromium."""

from __future__ import annotations

import shutil
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, expect

from generator.present.recording.corrections import corrected_captions
from generator.present.recording.rehearsal import rehearsal
from generator.present.words.say import Say
from generator.write.rehearsal import write_rehearsal
from tests.browser.test_captions import PARSER
from tests.made import outputs, write_files
from tests.present.test_recording import CAPTIONS, filmed
from tests.printed_sheets import printed_sheets
from tests.project import ROOT, library
from tests.site_data.test_lessons import RESULTS

FOLDER = "river-walk/recording"


@pytest.fixture(scope="module")
def pack(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The preview's files, without its server."""
    folder = tmp_path_factory.mktemp("preview")
    media = shutil.ignore_patterns("*.yaml", "*.md")
    shutil.copytree(ROOT / "lessons", folder, ignore=media, dirs_exist_ok=True)
    write_files(outputs(ROOT, preview=True), folder)
    return folder


@pytest.fixture
def browser_context_args() -> dict[str, Any]:
    """A laptop on the kitchen table."""
    return {"viewport": {"width": 1280, "height": 720}}


@pytest.fixture
def address(pack: Path, serve: Callable[[Path], str]) -> str:
    return serve(pack) + FOLDER


@pytest.mark.parametrize("name", ["index", "numbers", "script", "slides"])
def test_nothing_keeps_anyone_out(
    page: Page, address: str, axe: Callable[[Page], list[str]], name: str
) -> None:
    page.goto(f"{address}/{name}.html")
    assert axe(page) == []


@pytest.mark.parametrize("name", ["index", "numbers", "script", "slides"])
def test_it_fits_a_narrow_screen(page: Page, address: str, name: str) -> None:
    """WCAG 2.2, 1.4.10 Reflow: 320 px without a second direction (references.md 6.4, M)."""
    page.set_viewport_size({"width": 320, "height": 640})
    page.goto(f"{address}/{name}.html")
    assert page.evaluate("document.documentElement.scrollWidth") <= 320


@pytest.mark.parametrize("width", [320, 390])
def test_nothing_of_the_cue_sheet_is_cut_off_on_a_phone(
    page: Page, address: str, width: int
) -> None:
    """Each entry is seen without scrolling sideways, beside what it is called."""
    page.set_viewport_size({"width": width, "height": 844})
    page.goto(f"{address}/index.html")
    seen = page.locator(".cues").evaluate("""table => {
      const edge = document.documentElement.clientWidth;
      const cells = [...table.querySelectorAll("tbody :is(th, td)")].filter((each) => each.textContent);
      return {
        over: [table, table.parentElement].map((each) => each.scrollWidth - each.clientWidth),
        cut: cells.filter((each) => each.getBoundingClientRect().right > edge).map((each) => each.textContent),
        running: cells.filter((each) => getComputedStyle(each, "::before").content === '"Running"').length,
        stops: table.querySelectorAll("tbody tr:not(.table)").length,
      };
    }""")
    assert seen["over"] == [0, 0]
    assert seen["cut"] == []
    assert seen["running"] == seen["stops"] > 5


def here(page: Page) -> str | None:
    return page.locator(".slide[data-here]").get_attribute("id")


def test_slides_are_a_long_page_without_a_script(browser: Browser, address: str) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(f"{address}/slides.html")
    assert page.locator(".slide:visible").count() == page.locator(".slide").count() > 10
    expect(page.locator("[data-show]")).to_be_hidden()
    context.close()


def test_one_key_leads_on_and_others_anywhere(page: Page, address: str) -> None:
    page.goto(f"{address}/slides.html")
    last = f"slide-{page.locator('.slide').count()}"
    page.get_by_role("button", name="Show full screen").press("Enter")
    assert page.locator(".slide:visible").count() == 1
    walked = [here(page)]
    for key in ("Space", "ArrowRight", "PageDown", "ArrowLeft", "End", "ArrowRight", "Home"):
        page.keyboard.press(key)
        walked.append(here(page))
    assert walked == [
        *("slide-1", "slide-2", "slide-3", "slide-4", "slide-3"),
        *(last, last, "slide-1"),
    ]
    page.keyboard.press("Escape")
    expect(page.locator("film-slides")).not_to_have_attribute("data-showing", "")
    assert page.locator(".slide:visible").count() > 10


def test_a_slide_named_in_the_address_comes_first(page: Page, address: str) -> None:
    page.goto(f"{address}/slides.html#slide-5")
    page.get_by_role("button", name="Show full screen").press("Enter")
    assert here(page) == "slide-5"


def test_a_slide_fills_the_window_and_nothing_is_cut_off(page: Page, address: str) -> None:
    page.goto(f"{address}/slides.html")
    page.get_by_role("button", name="Show full screen").press("Enter")
    for _ in range(page.locator(".slide").count()):
        cut = page.locator(".slide[data-here]").evaluate("""slide => {
          const edge = slide.getBoundingClientRect();
          return [...slide.querySelectorAll("*")].filter((part) => {
            const box = part.getBoundingClientRect();
            return box.width && (box.right > edge.right + 1 || box.bottom > edge.bottom + 1);
          }).length + (edge.width < innerWidth - 1 && edge.height < innerHeight - 1);
        }""")
        assert cut == 0, here(page)
        page.keyboard.press("ArrowRight")


def test_the_numbers_on_the_slides_are_those_of_the_page(page: Page, address: str) -> None:
    page.goto(f"{address}/slides.html")
    shown = page.locator(".slide-row-of-two .value").all_inner_texts()
    page.goto(f"{address}/../index.html")
    held = page.locator("#lunch .holding b").all_inner_texts()
    assert [text.split() for text in shown] == [text.split() for text in held[: len(shown)]]
    assert len(shown) == 6


def current(page: Page) -> str:
    return page.locator(".script [aria-current]").inner_text()


def test_the_script_moves_at_the_chosen_pace_and_halts_at_the_pause(
    page: Page, address: str
) -> None:
    """117 words lead to the first pause: at 240 a minute they take 29 s of a false clock."""
    page.clock.install()
    page.goto(f"{address}/script.html")
    page.get_by_label("Words a minute").fill("240")
    page.locator("h1").click()
    page.keyboard.press("Space")
    page.clock.run_for(10_000)  # 40 words: the first paragraph has 32
    assert current(page).startswith("The mill is far.")
    page.clock.run_for(20_000)
    assert current(page).startswith("Put your pencil down"), (
        "it waits before the words after the pause"
    )
    expect(page.get_by_role("button", name="Start")).to_be_visible()
    page.clock.run_for(20_000)
    assert current(page).startswith("Put your pencil down")
    page.keyboard.press("Space")
    page.clock.run_for(8_000)
    assert current(page).startswith("Now watch Salma")


def test_space_on_a_button_presses_the_button_once(page: Page, address: str) -> None:
    page.goto(f"{address}/script.html")
    page.get_by_role("button", name="Start").press("Space")
    expect(page.get_by_role("button", name="Halt")).to_be_visible()


def test_with_reduced_motion_it_steps_from_paragraph_to_paragraph(page: Page, address: str) -> None:
    page.emulate_media(reduced_motion="reduce")
    page.clock.install()
    page.goto(f"{address}/script.html")
    page.keyboard.press("Space")
    page.clock.run_for(16_000)  # the second paragraph has come to the eyes
    places = set()
    for _ in range(5):
        page.clock.run_for(200)
        places.add(page.evaluate("scrollY"))
    assert len(places) == 1


def test_letters_grow_and_shrink(page: Page, address: str) -> None:
    page.goto(f"{address}/script.html")
    size = "() => parseFloat(getComputedStyle(document.querySelector('.script')).fontSize)"
    usual = page.evaluate(size)
    page.get_by_role("button", name="Larger").click()
    assert page.evaluate(size) > usual
    for _ in range(9):
        page.get_by_role("button", name="Smaller").click()
    assert 0 < page.evaluate(size) < usual


@pytest.mark.parametrize("paper", ["A4", "Letter"])
@pytest.mark.parametrize("lesson", sorted(RESULTS))
def test_the_numbers_to_say_are_one_printed_page_to_be_read_at_arms_length(
    page: Page, address: str, lesson: str, paper: str
) -> None:
    """12 pt at the least: common practice, no source."""
    page.goto(f"{address}/numbers.html".replace("river-walk", lesson))
    if page.locator("details").count():  # filmed: as much as before
        page.locator("summary").click()
    [sheet] = printed_sheets(page.pdf(format=paper))
    assert min(ink.letters for ink in sheet.inks if ink.letters) >= 12


def test_a_tick_is_kept_on_the_device_until_it_is_taken_away(page: Page, address: str) -> None:
    page.goto(f"{address}/numbers.html".replace("river-walk", "soup-night"))
    box = page.get_by_role("checkbox").nth(1)
    box.check()
    page.reload()
    assert [one.is_checked() for one in page.get_by_role("checkbox").all()].count(True) == 1
    expect(box).to_be_checked()
    page.get_by_role("button", name="Take the ticks away").click()
    page.reload()
    expect(box).not_to_be_checked()


PARSED = """text => new WebVTTParser().parse(text, "subtitles").errors.map((one) => one.message)"""
LOADED = """async () => {
  const track = document.createElement("track");
  Object.assign(track, {kind: "captions", src: "corrected.vtt", srclang: "en"});
  document.querySelector("video").append(track);
  track.track.mode = "hidden";
  await new Promise((done) => track.addEventListener("load", done, { once: true }));
  return track.track.cues.length;
}"""


def test_captions_with_a_correction_are_valid_and_have_one_cue_more(
    tmp_path: Path, serve: Callable[[Path], str], page: Page
) -> None:
    """By npm's webvtt-parser and by Chromium itself, beside the educator's own file."""
    [text] = corrected_captions(filmed(400), Say(library().words["en"]), ("en",)).values()
    own = (ROOT / "lessons" / "river-walk" / CAPTIONS).read_text("utf-8")
    (tmp_path / "corrected.vtt").write_text(text, "utf-8")
    (tmp_path / "index.html").write_text("<!doctype html><title>Film</title><video></video>")
    page.goto(serve(tmp_path))
    page.add_script_tag(path=PARSER)
    assert page.evaluate(PARSED, text) == []
    assert page.evaluate(LOADED) == own.count("-->") + 1


LOOK = """async ([at, wanted]) => {
  const video = document.querySelector("video");
  video.currentTime = at;
  await new Promise((there) => video.addEventListener("seeked", there, { once: true }));
  let seen = nearest(video);
  // `seeked` may come before the picture does, and no other event is sure to come after it.
  for (let turn = 0; seen !== wanted && turn < 6000; turn++) {
    await new Promise((go) => setTimeout(go, 10));
    seen = nearest(video);
  }
  return seen;
}"""
"""Number of the slide that the video looks most like at a moment."""

HELP = """
const drawn = [];
function small(picture, width, height) {
  const canvas = document.createElement("canvas");
  [canvas.width, canvas.height] = [64, 36];
  const pen = canvas.getContext("2d");
  pen.drawImage(picture, 0, 0, width, height, 0, 0, 64, 36);
  return [...pen.getImageData(0, 0, 64, 36).data];
}
async function draw(names) {
  for (const name of names) {
    const image = new Image();
    image.src = name;
    await image.decode();
    drawn.push(small(image, image.naturalWidth, image.naturalHeight));
  }
}
function nearest(video) {
  const seen = small(video, video.videoWidth, video.videoHeight);
  const away = drawn.map((one) => one.reduce((sum, light, at) => sum + Math.abs(light - seen[at]), 0));
  return away.indexOf(Math.min(...away));
}
"""


def test_a_rehearsal_of_three_minutes_plays_and_seeks_to_the_right_slide(
    tmp_path: Path, serve: Callable[[Path], str], page: Page
) -> None:
    """In the middle of each slide, of all slides drawn, the video looks most like that one."""
    made = rehearsal(RESULTS["soup-night"], Say(library().words["en"]), ROOT / "theme")
    # A folder of its own: a rehearsal of the same name lies beside the lesson.
    written = write_rehearsal(made, tmp_path)
    assert written.seconds >= 180
    shutil.move(written.video, tmp_path / "film.mp4")
    for number, picture in enumerate(made.pictures):
        (tmp_path / f"{number}.png").write_bytes(picture.png)
    (tmp_path / "help.js").write_text(HELP, "utf-8")
    (tmp_path / "index.html").write_text(
        '<!doctype html><title>Film</title><video src="film.mp4" muted></video><script src="help.js"></script>',
        "utf-8",
    )
    page.goto(serve(tmp_path))
    page.wait_for_function("document.querySelector('video').readyState >= 1")
    page.evaluate("names => draw(names)", [f"{n}.png" for n in range(len(made.pictures))])
    begin, seen = 0.0, []
    for number, picture in enumerate(made.pictures):
        seen.append(page.evaluate(LOOK, [begin + picture.seconds / 2, number]))
        begin += picture.seconds
    assert seen == list(range(len(made.pictures)))
    page.evaluate("document.querySelector('video').play()")
    page.wait_for_function("document.querySelector('video').currentTime > 0.3")
