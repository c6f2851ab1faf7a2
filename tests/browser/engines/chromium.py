"""The tests' own Chromium, spoken to as the other browsers are."""

from __future__ import annotations

from playwright.sync_api import Page

from tests.browser.engines.engine import Engine

_RUN = """([text, given]) => new Promise((done) => {{ (function () {{ {text} }})(...given, done); }})"""


class _Playwright:
    def __init__(self, page: Page) -> None:
        self._page = page

    def navigate(self, address: str) -> None:
        self._page.goto(address)

    def script(self, text: str, *arguments: object) -> object:
        return self._page.evaluate(_RUN.format(text=text), ["", list(arguments)])

    def find(self, selector: str) -> str:
        return selector

    def click(self, element: str) -> None:
        self._page.locator(element).first.click()

    def quit(self) -> None:
        """Its fixture ends it."""


def chromium(page: Page) -> Engine:
    """A page of the Chromium that all browser tests share."""
    return Engine("Chromium", _Playwright(page))
