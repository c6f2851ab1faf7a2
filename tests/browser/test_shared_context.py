"""What one test leaves in the context that tests share is there for none after it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from tests.conftest import PATIENCE, PHONE
from tests.shared_context import SharedContext

KEEP = """async () => {
  localStorage.setItem("a", "b");
  sessionStorage.setItem("a", "b");
  document.cookie = "a=b";
  if (!isSecureContext || location.protocol === "file:") return;
  await caches.open("a");
  await new Promise((done, failed) => Object.assign(indexedDB.open("a"), { onsuccess: done, onerror: failed }));
  await navigator.serviceWorker.register("sw.js");
  await navigator.serviceWorker.ready;
}"""
KEPT = """async () => {
  const served = location.protocol !== "file:";
  return [localStorage.length, sessionStorage.length, document.cookie.length,
    served ? (await caches.keys()).length : 0, served ? (await indexedDB.databases()).length : 0,
    served ? (await navigator.serviceWorker.getRegistrations()).length : 0];
}"""


@pytest.fixture
def shared(browser: Browser) -> Iterator[SharedContext]:
    made = SharedContext(browser, PHONE, PATIENCE)
    yield made
    made.close()


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    (tmp_path / "index.html").write_text("<!doctype html><title>t</title><h1>One</h1>", "utf-8")
    (tmp_path / "sw.js").write_text("addEventListener('fetch', () => {})", "utf-8")
    return tmp_path


def test_nothing_is_kept_from_page_to_page(
    shared: SharedContext, folder: Path, serve: Callable[[Path], str]
) -> None:
    for address in (serve(folder), (folder / "index.html").as_uri()):
        page = shared.page([])
        page.goto(address)
        page.evaluate(KEEP)
        assert all(page.evaluate(KEPT)[: 2 if address.startswith("file:") else None])
        shared.clear()
        again = shared.page([])
        again.goto(address)
        assert again.context is page.context
        assert again.evaluate(KEPT) == [0] * 6, address
        shared.clear()


def test_what_was_fetched_before_is_fetched_anew(
    shared: SharedContext, folder: Path, serve: Callable[[Path], str]
) -> None:
    address = serve(folder)
    shared.page([]).goto(address)
    shared.clear()
    (folder / "index.html").write_text("<!doctype html><title>t</title><h1>Two</h1>", "utf-8")
    page = shared.page([])
    page.goto(address)
    assert page.locator("h1").inner_text() == "Two"
    shared.clear()


def by_a_false_clock(page: Page) -> None:
    page.clock.install(time=0)


def without_a_network(page: Page) -> None:
    page.context.set_offline(True)


@pytest.mark.parametrize("change", [by_a_false_clock, without_a_network])
def test_a_context_that_was_changed_is_left(
    shared: SharedContext, folder: Path, change: Callable[[Page], None]
) -> None:
    changed = shared.page([])
    change(changed)
    shared.clear()
    page = shared.page([])
    page.goto((folder / "index.html").as_uri())
    assert page.context is not changed.context
    assert page.evaluate("Date.now()") > 1e12
    assert page.evaluate("navigator.onLine")


def test_only_the_tests_own_page_is_watched(shared: SharedContext, folder: Path) -> None:
    first: list[str] = []
    second: list[str] = []
    for complaints in (first, second):
        page = shared.page(complaints)
        page.route("**/*", lambda route: route.abort())
        page.evaluate("console.error('wrong')")
        shared.clear()
    assert len(first) == len(second) == 1
    page = shared.page([])
    page.goto((folder / "index.html").as_uri())  # nobody holds it back any more
    shared.clear()
