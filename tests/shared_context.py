"""A browser context that tests use one after another, each as if nobody had been there before.

A context of its own costs a test twice the work of most pages: a browser begins anew all that its
pages share. Storage, caches and workers are cleared after each test; whoever changes what a context
itself is (its clock, its screen) leaves it, and the next test begins another one.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import Browser, BrowserContext, Error, Page, Request

from tests.browser.watched import watch

OWN_CONTEXT = pytest.mark.usefixtures("context")
"""A test that changes the context itself has its own from the beginning: no other one is begun for it."""
AS_NEW = "Date.now.toString().includes('[native code]') && navigator.onLine"
"""Whether the clock is the device's own, and nobody has cut the network."""


class SharedContext:
    """Gives a page at a time, in one context as long as that is as new."""

    def __init__(self, browser: Browser, args: dict[str, Any], patience: int) -> None:
        """Begin with no context.

        Args:
            browser: where contexts are made.
            args: how each is made.
            patience: milliseconds that a page has for anything.
        """
        self._browser, self._args, self._patience = browser, args, patience
        self._context: BrowserContext | None = None
        self._origins: set[str] = set()
        self._unwatch: Callable[[], None] = lambda: None

    def page(self, complaints: list[str]) -> Page:
        """A page without memory, all that it does wrong being noted."""
        page = (self._context or self._begin()).new_page()
        if not page.evaluate(AS_NEW):
            self.close()
            page = self._begin().new_page()
        self._unwatch = watch(page.context, complaints)
        return page

    def clear(self) -> None:
        """Close the test's pages and forget all that they kept."""
        self._unwatch()
        context = self._context
        if context is None:
            return
        try:
            first, *others = context.pages
            for page in others:
                page.close()
            context.unroute_all(behavior="ignoreErrors")
            context.clear_permissions()
            context.clear_cookies()
            self._forget(first)
        except Error:  # a page that does not end takes its context with it
            self.close()

    def close(self) -> None:
        """End the context, if there is one."""
        if self._context is not None:
            self._context.close()
        self._context = None

    def _begin(self) -> BrowserContext:
        self._origins.clear()
        self._context = context = self._browser.new_context(**self._args)
        context.set_default_timeout(self._patience)
        context.new_page()  # stays open: what its pages share lasts as long as one is there
        context.on("request", self._note)
        return context

    def _note(self, request: Request) -> None:
        address = urlsplit(request.url)
        if address.scheme in ("http", "https", "file"):
            self._origins.add(f"{address.scheme}://{address.netloc}")

    def _forget(self, page: Page) -> None:
        session = page.context.new_cdp_session(page)
        for origin in self._origins:
            told = {"origin": origin, "storageTypes": "all"}
            session.send("Storage.clearDataForOrigin", told)
        session.send("Network.clearBrowserCache")
        session.detach()
        self._origins.clear()
