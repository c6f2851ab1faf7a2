"""A kept lesson opens, plays and calculates with the network cut, in a real Chromium and its real worker."""

from __future__ import annotations

import json
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from generator.present.assets.bundle import join_script, sources
from generator.write.keep_list import file_hash
from tests.browser.watched import until

Serve = Callable[[Path], str]
LESSON = "river-walk/index.html"
ONLY_THE_NEW = "(await caches.keys()).map(key => key.endsWith('wrapped')).join() === 'true'"
ROOT = Path(__file__).parents[2]
WORKERS = "navigator.serviceWorker.getRegistrations().then(found => found.length)"
PLAYS = """async () => {
  const video = document.querySelector('video');
  video.muted = true;
  video.currentTime = 20; // far in: a range, not the beginning
  await new Promise(done => video.addEventListener('seeked', done, {once: true}));
  await video.play();
  await new Promise(done => video.addEventListener('timeupdate', () => video.currentTime > 20 && done()));
  return video.error;
}"""


@pytest.fixture
def folder(built_site: Path, tmp_path: Path) -> Path:
    """A site in a folder below its host's root, as many are published, to be changed by a test."""
    shutil.copytree(built_site, tmp_path / "host" / "kitchen")
    return tmp_path / "host"


@pytest.fixture
def site(folder: Path, serve: Serve) -> str:
    return serve(folder) + "kitchen/"


def keep(page: Page, site: str) -> None:
    page.goto(site + LESSON)
    box = page.locator("keep-lesson")
    box.locator("summary").click()
    box.get_by_role("button", name="Keep it").click()
    expect(box.locator("summary")).to_have_text("This lesson is kept here")
    box.get_by_role(
        "button", name="Remove it"
    ).wait_for()  # it has asked whether there is a newer one


def cut(context: BrowserContext, page: Page) -> None:
    context.set_offline(True)
    page.reload()


def test_its_size_is_told_before_anything_is_stored(page: Page, site: str, folder: Path) -> None:
    page.goto(site + LESSON)
    page.locator("keep-lesson summary").click()
    files = json.loads((folder / "kitchen/river-walk/keep.json").read_text("utf-8"))["files"]
    size = round(sum(file["bytes"] for file in files) / 1e5) / 10
    expect(page.locator("keep-lesson [role=status]")).to_contain_text(f"{size} MB")
    assert page.evaluate("caches.keys()") == []


def test_progress_is_shown_while_it_comes(page: Page, site: str) -> None:
    page.goto(site + LESSON)
    page.evaluate("""() => { window.seen = []; new MutationObserver(() => {
      const bar = document.querySelector('progress'); if (bar) seen.push(bar.value); })
      .observe(document.querySelector('keep-lesson'), {attributes: true, childList: true, subtree: true}) }""")
    page.locator("keep-lesson summary").click()
    page.get_by_role("button", name="Keep it").click()
    expect(page.locator("keep-lesson summary")).to_have_text("This lesson is kept here")
    seen = page.evaluate("seen")
    assert len(set(seen)) > 5
    assert seen == sorted(seen)


def test_with_the_network_cut_the_video_plays_and_the_calculator_answers(
    page: Page, context: BrowserContext, site: str
) -> None:
    keep(page, site)
    cut(context, page)
    assert page.evaluate(PLAYS) is None
    page.evaluate("document.querySelector('video').pause()")
    assert page.evaluate("document.querySelector('video').textTracks[0].cues.length") > 10
    row = page.locator("form:has(input[name=gap])").first
    row.locator("input[name=gap]").fill("1")
    row.locator("[data-check]").click()
    expect(row.locator("[data-band]")).to_contain_text("Not yet")


def test_every_page_of_it_opens_with_the_network_cut(
    page: Page, context: BrowserContext, site: str
) -> None:
    keep(page, site)
    context.set_offline(True)
    for name in ("cards", "worksheet", "answers", "notes", "transcript"):
        page.goto(f"{site}river-walk/{name}.html")
        assert page.evaluate("document.styleSheets.length") > 0
    page.goto(f"{site}river-walk/")  # the folder's own address
    expect(page.locator("h1")).to_have_text("Packed for the river walk")


def test_the_front_page_leads_to_kept_lessons_with_the_network_cut(
    page: Page, context: BrowserContext, site: str
) -> None:
    keep(page, site)
    context.set_offline(True)
    page.goto(f"{site}index.html")
    page.locator("kept-lessons").get_by_role("link", name="Packed for the river walk").click()
    expect(page.locator("lesson-thread")).to_be_visible()


def explore(page: Page) -> None:
    page.get_by_text("For adults", exact=True).first.click()
    page.get_by_role("button", name="Explore the chart").first.click()


def test_the_chart_to_explore_is_kept_only_when_it_is_asked_for(
    page: Page, context: BrowserContext, site: str, complaints: list[str]
) -> None:
    keep(page, site)
    cut(context, page)
    explore(page)
    expect(page.locator("gap-chart [role=status]").first).to_contain_text("could not load")
    complaints.clear()
    context.set_offline(False)
    page.reload()
    box = page.locator("keep-lesson")
    box.locator("summary").click()
    box.get_by_role("button", name="Keep the chart too (0.8 MB)").click()
    expect(box.get_by_role("button", name="Keep the chart too")).to_have_count(0)
    box.get_by_role("button", name="Remove it").wait_for()
    cut(context, page)
    explore(page)
    page.locator(".js-plotly-plot").first.wait_for()


def test_a_newer_version_keeps_the_chart_that_was_asked_for(
    page: Page, context: BrowserContext, site: str, folder: Path
) -> None:
    keep(page, site)
    page.get_by_role("button", name="Keep the chart too").click()
    expect(page.get_by_role("button", name="Keep the chart too")).to_have_count(0)
    page.get_by_role("button", name="Remove it").wait_for()
    listed = folder / "kitchen/river-walk/keep.json"
    newer = json.loads(listed.read_text("utf-8"))
    transcript = folder / "kitchen/river-walk/transcript.html"
    transcript.write_text(transcript.read_text("utf-8") + "<!-- newer -->", "utf-8")
    for file in newer["files"]:
        if file["path"] == "transcript.html":
            file |= {"hash": file_hash(transcript.read_bytes()), "bytes": transcript.stat().st_size}
    listed.write_text(json.dumps(newer | {"version": "wrapped"}), "utf-8")
    page.reload()
    until(page, ONLY_THE_NEW)
    cut(context, page)
    explore(page)
    page.locator(".js-plotly-plot").first.wait_for()


def test_parts_of_the_video_come_from_the_copy_as_parts(
    page: Page, context: BrowserContext, site: str, folder: Path, complaints: list[str]
) -> None:
    """RFC 9110, sections 14 and 15.3.7: 206 with Content-Range, 416 where nothing is there."""
    keep(page, site)
    cut(context, page)
    video = (folder / "kitchen/river-walk/river-walk.mp4").read_bytes()
    asked = "async range => { const a = await fetch('river-walk.mp4', {headers: {Range: range}}); return [a.status, a.headers.get('Content-Range'), [...new Uint8Array(await a.arrayBuffer())]] }"
    size = len(video)
    assert page.evaluate(asked, "bytes=5-9") == [206, f"bytes 5-9/{size}", list(video[5:10])]
    assert page.evaluate(asked, "bytes=-3") == [
        206,
        f"bytes {size - 3}-{size - 1}/{size}",
        list(video[-3:]),
    ]
    assert page.evaluate(asked, f"bytes={size - 2}-") == [
        206,
        f"bytes {size - 2}-{size - 1}/{size}",
        list(video[-2:]),
    ]
    assert page.evaluate(asked, f"bytes={size}-")[:2] == [416, f"bytes */{size}"]
    complaints.clear()  # the browser tells of the 416


def test_a_lesson_that_is_not_kept_is_answered_by_those_that_are(
    page: Page, context: BrowserContext, site: str, complaints: list[str]
) -> None:
    """What else that page says is in `test_not_kept.py`."""
    keep(page, site)
    context.set_offline(True)
    answered = page.goto(f"{site}soup-night/index.html")
    assert answered is not None
    assert answered.status == 503
    expect(page.locator("h1")).to_have_text("Not kept on this device")
    expect(page.locator("li a")).to_have_text(["Packed for the river walk"])
    complaints.clear()


def test_another_lesson_gets_its_files_from_the_network_and_not_from_the_copy(
    page: Page, site: str, folder: Path
) -> None:
    keep(page, site)
    sheet = folder / "kitchen/assets/screen.css"
    sheet.write_text(sheet.read_text("utf-8") + "\n:root{--fresh:1}\n", "utf-8")
    fresh = "getComputedStyle(document.documentElement).getPropertyValue('--fresh')"
    page.goto(f"{site}soup-night/index.html")
    assert page.evaluate(fresh) == "1"
    page.goto(site + LESSON)
    assert page.evaluate(fresh) == ""


def test_a_request_to_another_host_is_none_of_the_workers_business(
    page: Page, site: str, folder: Path, serve: Serve
) -> None:
    """Another port is another origin (RFC 6454, section 5)."""
    keep(page, site)
    elsewhere = serve(folder) + "kitchen/assets/favicon.svg"
    own = f"{site}assets/favicon.svg"
    images = "".join(f'<img src="{address}" alt="">' for address in (elsewhere, own))
    # A page of our own forbids such a request; one that somebody else put beside it may not.
    (folder / "kitchen/other.html").write_text(f"<!doctype html><title>O</title>{images}", "utf-8")
    answers: dict[str, bool] = {}
    page.on("response", lambda one: answers.update({one.url: one.from_service_worker}))
    page.goto(f"{site}other.html")
    assert (answers[own], answers[elsewhere]) == (True, False)


def change(folder: Path, *, film: int = 0) -> None:
    """Publish the lesson anew with another heading, and with so many bytes more at the end of its film."""
    lesson = folder / "kitchen/river-walk"
    page, video = lesson / "index.html", lesson / "river-walk.mp4"
    page.write_text(page.read_text("utf-8").replace("Packed for the", "Wrapped for the"), "utf-8")
    video.write_bytes(video.read_bytes() + bytes(film))
    file = lesson / "keep.json"
    listed = json.loads(file.read_text("utf-8"))
    for one in listed["files"]:
        if one["path"] in {"index.html", "river-walk.mp4"}:
            content = (lesson / one["path"]).read_bytes()
            one |= {"bytes": len(content), "hash": file_hash(content)}
    listed |= {"title": "Wrapped for the river walk", "version": "wrapped"}
    file.write_text(json.dumps(listed), "utf-8")


def addresses(page: Page) -> list[str]:
    """All that is asked for from now on."""
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    return asked


def test_a_lesson_that_is_published_anew_arrives_by_itself(
    page: Page, context: BrowserContext, site: str, folder: Path
) -> None:
    """A corrected allergen must not wait until somebody asks for it."""
    keep(page, site)
    change(folder)
    asked = addresses(page)
    page.reload()
    expect(page.locator("h1")).to_have_text("Wrapped for the river walk")  # at once
    box = page.locator("keep-lesson")
    box.locator("summary").click()
    expect(box.get_by_role("button", name="Remove it")).to_be_visible()
    until(page, ONLY_THE_NEW)
    assert not [url for url in asked if url.endswith("worksheet.html")]  # what is the same is there
    cut(context, page)
    expect(page.locator("h1")).to_have_text("Wrapped for the river walk")


def test_a_large_newer_lesson_is_seen_at_once_and_kept_when_it_is_asked_for(
    page: Page, context: BrowserContext, site: str, folder: Path
) -> None:
    """Two megabytes or more are not brought over a line that may be metered."""
    keep(page, site)
    change(folder, film=2_000_000)
    page.reload()
    box = page.locator("keep-lesson")
    expect(page.locator("h1")).to_have_text("Wrapped for the river walk")
    expect(box.locator("summary")).to_contain_text("There is a newer version")
    cut(context, page)
    expect(page.locator("h1")).to_have_text("Packed for the river walk")  # better than nothing
    context.set_offline(False)
    page.reload()
    box.locator("summary", has_text="newer").click()
    box.get_by_role("button", name="Get the new version").click()
    expect(box.locator("summary")).to_have_text("This lesson is kept here")
    assert len(page.evaluate("caches.keys()")) == 1
    cut(context, page)
    expect(page.locator("h1")).to_have_text("Wrapped for the river walk")


def test_every_part_of_a_newer_page_comes_from_the_site(
    page: Page, site: str, folder: Path
) -> None:
    keep(page, site)
    change(folder, film=2_000_000)
    sheet = folder / "kitchen/assets/screen.css"
    sheet.write_text(sheet.read_text("utf-8") + "\n:root{--fresh:1}\n", "utf-8")
    page.reload()
    expect(page.locator("h1")).to_have_text("Wrapped for the river walk")
    fresh = "getComputedStyle(document.documentElement).getPropertyValue('--fresh')"
    assert page.evaluate(fresh) == "1"


def test_a_site_that_does_not_answer_leaves_the_kept_page_as_it_was(
    page: Page, context: BrowserContext, site: str, folder: Path
) -> None:
    """The newer version is told once the site answers, and is not put under anybody's hands."""
    keep(page, site)
    change(folder)
    worker = context.service_workers[0]
    worker.evaluate("AbortSignal.timeout = () => AbortSignal.abort()")  # as if it took too long
    page.reload()
    expect(page.locator("h1")).to_have_text("Packed for the river walk")
    box = page.locator("keep-lesson")
    expect(box.locator("summary")).to_have_text("A newer version is here")
    expect(box.get_by_role("status")).to_contain_text("This page is still the one before")
    box.get_by_role("button", name="Show the newer version").click()
    expect(page.locator("h1")).to_have_text("Wrapped for the river walk")


def test_a_copy_made_while_the_site_is_published_never_mixes_two_versions(
    page: Page, site: str, folder: Path
) -> None:
    """The list is of the version before, a page already of the next one."""
    page.goto(site + LESSON)
    old = (folder / "kitchen/river-walk/keep.json").read_text("utf-8")
    page.locator("keep-lesson summary").click()
    page.get_by_role("button", name="Keep it").wait_for()
    change(folder)
    new = (folder / "kitchen/river-walk/keep.json").read_text("utf-8")
    page.get_by_role("button", name="Keep it").click()
    expect(page.locator("keep-lesson [role=status]")).to_contain_text("stopped partway")
    assert old != new
    whole = "caches.match(new URL('whole-copy', location.href).href).then(Boolean)"
    assert page.evaluate(whole) is False
    page.get_by_role("button", name="Try again").click()  # by the list as it is now
    expect(page.locator("keep-lesson summary")).to_have_text("This lesson is kept here")
    assert [name.rpartition(" ")[2] for name in page.evaluate("caches.keys()")] == ["wrapped"]


def test_a_broken_update_leaves_the_old_copy_usable(
    page: Page, context: BrowserContext, site: str, folder: Path, complaints: list[str]
) -> None:
    keep(page, site)
    change(folder)
    (folder / "kitchen/river-walk/index.html").unlink()
    page.reload()
    expect(page.locator("h1")).to_have_text("Packed for the river walk")
    box = page.locator("keep-lesson")
    box.locator("summary").click()
    expect(box.locator("[role=status]")).to_contain_text("stopped partway")
    complaints.clear()  # the browser tells of the 404
    cut(context, page)
    expect(page.locator("h1")).to_have_text("Packed for the river walk")


def test_a_kept_lesson_can_be_removed(
    page: Page, context: BrowserContext, site: str, complaints: list[str]
) -> None:
    keep(page, site)
    page.get_by_role("button", name="Remove it").click()
    expect(page.locator("keep-lesson summary")).to_have_text("Keep this lesson")
    assert page.evaluate("caches.keys()") == []
    assert page.evaluate(WORKERS) == 0
    context.set_offline(True)
    with pytest.raises(Exception, match="ERR_"):
        page.reload()
    complaints.clear()


def test_kept_lessons_are_listed_and_removed_on_the_front_page(page: Page, site: str) -> None:
    page.goto(f"{site}index.html")
    expect(page.locator("kept-lessons")).to_be_hidden()
    keep(page, site)
    page.goto(f"{site}index.html")
    kept = page.locator("kept-lessons")
    expect(kept.get_by_role("link")).to_have_text("Packed for the river walk")
    kept.get_by_role("button", name="Remove it: Packed for the river walk").click()
    expect(kept).to_be_hidden()
    assert page.evaluate("caches.keys()") == []
    assert page.evaluate(WORKERS) == 0


def test_the_worker_stays_while_another_lesson_is_kept(page: Page, site: str) -> None:
    keep(page, site)
    page.goto(f"{site}soup-night/index.html")
    box = page.locator("keep-lesson")
    box.locator("summary").click()
    box.get_by_role("button", name="Keep it").click()
    box.get_by_role("button", name="Remove it").click()
    expect(box.locator("summary")).to_have_text("Keep this lesson")
    assert page.evaluate(WORKERS) == 1


def test_a_site_can_take_worker_and_copies_away(page: Page, site: str, folder: Path) -> None:
    """With ``keep_lessons: false`` this stands in the worker's place; a browser finds it when it comes back."""
    keep(page, site)
    off = join_script("js/sw-off.js", sources(ROOT / "theme", "js"))
    (folder / "kitchen/sw.js").write_text(off, "utf-8")
    page.evaluate("navigator.serviceWorker.getRegistration().then(found => found.update())")
    until(page, "!(await caches.keys()).length")
    until(page, f"!(await {WORKERS})")
    back = page.context.new_page()
    page.close()
    back.goto(site + LESSON)
    assert back.evaluate(WORKERS) == 0


def test_without_room_nothing_is_kept_and_it_is_said(
    page: Page, context: BrowserContext, site: str
) -> None:
    page.goto(site + LESSON)
    origin = "/".join(site.split("/")[:3])
    context.new_cdp_session(page).send(
        "Storage.overrideQuotaForOrigin", {"origin": origin, "quotaSize": 150_000}
    )
    page.locator("keep-lesson summary").click()
    page.get_by_role("button", name="Keep it").click()
    expect(page.locator("keep-lesson [role=status]")).to_contain_text("not enough room")
    assert page.evaluate("caches.keys()") == []


def test_a_broken_attempt_goes_on_where_it_ended(
    page: Page, site: str, complaints: list[str]
) -> None:
    page.goto(site + LESSON)
    page.route("**/worksheet.html", lambda route: route.abort())
    page.locator("keep-lesson summary").click()
    page.get_by_role("button", name="Keep it").click()
    expect(page.locator("keep-lesson [role=status]")).to_contain_text("stopped partway")
    page.unroute("**/worksheet.html")
    complaints.clear()
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url.rsplit("/", 1)[1]))
    page.get_by_role("button", name="Try again").click()
    expect(page.locator("keep-lesson summary")).to_have_text("This lesson is kept here")
    assert "worksheet.html" in asked
    assert "screen.css" not in asked


def test_it_is_not_offered_from_a_folder(
    page: Page, built_site: Path, complaints: list[str]
) -> None:
    page.goto((built_site / LESSON).as_uri())
    page.locator(".who").wait_for()
    expect(page.locator("keep-lesson")).to_be_hidden()
    complaints.clear()  # Chromium reads no captions from a folder


def test_it_is_not_offered_without_workers(page: Page, site: str) -> None:
    page.add_init_script("delete Navigator.prototype.serviceWorker")
    page.goto(site + LESSON)
    page.locator(".who").wait_for()
    expect(page.locator("keep-lesson")).to_be_hidden()


def test_each_state_is_accessible(page: Page, site: str, axe: Callable[[Page], list[str]]) -> None:
    page.goto(site + LESSON)
    page.locator("keep-lesson summary").click()
    page.get_by_role("button", name="Keep it").wait_for()
    assert axe(page) == []
    page.get_by_role("button", name="Keep it").click()
    expect(page.locator("keep-lesson summary")).to_have_text("This lesson is kept here")
    assert axe(page) == []
    page.goto(f"{site}index.html")
    page.locator("kept-lessons li").wait_for()
    assert axe(page) == []
