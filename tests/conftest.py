"""What browser tests are given: a served folder, a watched page of a real Chromium, and axe."""

from __future__ import annotations

import os
import signal
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from pathlib import Path
from typing import Any

import pytest
from hypothesis import settings
from playwright.sync_api import Browser, BrowserContext, Page, expect, sync_playwright

from tests import chromium
from tests.browser.watched import violations, watch
from tests.closing_lesson import closing_project
from tests.local_server import serving
from tests.longest import place
from tests.made import outputs, write_files
from tests.made_papers import demo_papers
from tests.once import once
from tests.once_each import once_each
from tests.shared_context import SharedContext
from tests.site_project import build_demo

# No test is timed: a busy machine takes longer and finds the same. The same examples on every run.
settings.register_profile("plumline", deadline=None, derandomize=True)
settings.load_profile("plumline")

# Whoever began the tests stands somewhere, and may have put them into the background, where a
# shell lets Ctrl+C pass by; the programs that tests begin are to know neither.
os.environ.pop("PLUMLINE_FROM", None)
if signal.getsignal(signal.SIGINT) == signal.SIG_IGN:
    signal.signal(signal.SIGINT, signal.default_int_handler)

PATIENCE = 60_000
"""Milliseconds that a page has for anything: a wait ends with what is waited for, and not before."""
expect.set_options(timeout=PATIENCE)

PHONE: dict[str, Any] = {
    "viewport": {"width": 390, "height": 844},
    "locale": "en-US",
    "service_workers": "allow",
}
QUIET = (
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-gpu",
    "--disable-quic",
    "--disable-sync",
    "--no-first-run",
)


def pytest_configure(config: pytest.Config) -> None:
    """Keep pytest-xdist from beginning with the files of the most tests, which are not the longest."""
    config.option.loadscopereorder = False


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Begin with the longest files."""
    items.sort(key=lambda item: place(item.path))


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    """Print what tests counted and told by ``record_property("told", …)``."""
    passed = terminalreporter.getreports("passed")
    for said in [said for one in passed for name, said in one.user_properties if name == "told"]:
        terminalreporter.write_line(str(said))


@pytest.fixture(scope="session", autouse=True)
def _sites_of_tests_share_what_is_worked_out() -> Iterator[None]:
    with once_each():
        yield


@pytest.fixture(scope="session")
def built_site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The demo, built once for all tests that only look at it, whichever process they run in."""
    folder = tmp_path_factory.getbasetemp()
    if "PYTEST_XDIST_WORKER" in os.environ:
        folder = folder.parent  # what all processes of this run share
    return once(folder / "demo", lambda: build_demo(folder / "demo-project"))


@pytest.fixture(scope="session")
def made_papers(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Every paper of the demo in every size and language, large print too, made once for all processes.

    By path as on the site: ``soup-night/papers/worksheet-a4.pdf``, ``es/soup-night/papers/…-large-letter.pdf``.
    """
    folder = tmp_path_factory.getbasetemp()
    if "PYTEST_XDIST_WORKER" in os.environ:
        folder = folder.parent  # what all processes of this run share
    return once(folder / "papers-made", lambda: demo_papers(folder / "papers"))


@pytest.fixture(scope="session")
def closing_site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The lesson with questions that can be checked, written once."""
    folder = tmp_path_factory.mktemp("closing")
    write_files(outputs(closing_project(folder / "project")), folder / "site")
    return folder / "site"


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """One Chromium for all tests. Without one they fail: a skipped test would look like a pass."""
    program = chromium.find()
    if program is None:
        pytest.fail(chromium.WAY_OUT, pytrace=False)
    with sync_playwright() as playwright:
        launched = playwright.chromium.launch(executable_path=program, args=list(QUIET))
        yield launched
        launched.close()


@pytest.fixture(scope="session")
def shared_context(browser: Browser) -> Iterator[SharedContext]:
    """What gives most tests their page."""
    shared = SharedContext(browser, PHONE, PATIENCE)
    yield shared
    shared.close()


@pytest.fixture
def browser_context_args() -> dict[str, Any]:
    """A phone in the hand. A test that needs another screen overrides this fixture."""
    return PHONE


@pytest.fixture
def context(browser: Browser, browser_context_args: dict[str, Any]) -> Iterator[BrowserContext]:
    """A browser without memory: no storage, no cache, no worker of the test before.

    A test that changes the context itself names it, and has it for itself alone.
    """
    fresh = browser.new_context(**browser_context_args)
    fresh.set_default_timeout(PATIENCE)
    yield fresh
    fresh.close()


@pytest.fixture
def complaints() -> list[str]:
    """All that the watched page did wrong. A test that expects one asserts it, then clears this."""
    return []


@pytest.fixture
def page(
    request: pytest.FixtureRequest, browser_context_args: dict[str, Any], complaints: list[str]
) -> Iterator[Page]:
    """A page that fails its test on errors in its console or requests to anyone else's host."""
    if "context" in request.fixturenames or browser_context_args is not PHONE:
        own: BrowserContext = request.getfixturevalue("context")
        watch(own, complaints)
        yield own.new_page()
    else:
        shared: SharedContext = request.getfixturevalue("shared_context")
        yield shared.page(complaints)
        shared.clear()
    assert complaints == []


@pytest.fixture
def serve() -> Iterator[Callable[[Path], str]]:
    """`serve(folder)` gives the folder's address on this machine until the test ends."""
    with ExitStack() as stack:
        yield lambda folder: stack.enter_context(serving(folder))


@pytest.fixture
def axe() -> Callable[[Page], list[str]]:
    """`axe(page)` lists what axe-core finds inaccessible, each with its rule and its place."""
    return violations
