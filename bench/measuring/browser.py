"""The browser of the tests, for benches."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from contextlib import contextmanager

from playwright.sync_api import Browser, sync_playwright

from tests import chromium
from tests.conftest import QUIET


@contextmanager
def launched() -> Iterator[Browser]:
    """One Chromium for as long as the block lasts."""
    program = chromium.find()
    if program is None:
        sys.exit(chromium.WAY_OUT)
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=program, args=list(QUIET))
        yield browser
        browser.close()
