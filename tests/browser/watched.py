"""Watches a page of a real Chromium: what it does wrong, what keeps anyone out, when all of it is there."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import BrowserContext, ConsoleMessage, Page, Request, Route, WebError

AXE = Path(__file__).parents[1] / "vendor" / "axe.min.js"
AXE_OPTIONS = {"resultTypes": ["violations"]}  # all rules: WCAG 2.2 A and AA, and best practice
INSIDE = {"", "localhost", "127.0.0.1"}  # "" is a file, a blob or data: no host at all
ALL_THERE = """async () => {
  // A page asks for its later scripts, and they for their styles, before it is complete.
  const isThere = () => document.readyState === 'complete' && !document.querySelector(':not(:defined)')
    && [...document.querySelectorAll('link[rel=stylesheet]')].every(each => each.sheet);
  for (let turn = 0; !isThere(); turn++) {
    if (turn > 6000) throw new Error('waited in vain for what comes later');
    await new Promise(go => setTimeout(go, 10));
  }
  await new Promise(go => setTimeout(go)); // what waits for it runs first
}"""

OPEN_ALL = "document.querySelectorAll('details').forEach(each => each.open = true)"
RUNS_OVER = "document.scrollingElement.scrollWidth - document.scrollingElement.clientWidth"
"""Pixels that a page is wider than its screen."""


def watch(context: BrowserContext, complaints: list[str]) -> Callable[[], None]:
    """Note errors in the console of every page, and requests to anyone else's host, until what is returned is called."""

    def heard(message: ConsoleMessage) -> None:
        # The browser asks for favicon.ico by itself, so its absence is not the page's doing.
        if message.type == "error" and not message.location["url"].endswith("/favicon.ico"):
            complaints.append(f"console: {message.text} ({message.location['url']})")

    def asked(request: Request) -> None:
        if (urlsplit(request.url).hostname or "") not in INSIDE:
            complaints.append(f"request to another host: {request.url}")

    def failed(error: WebError) -> None:
        complaints.append(f"error: {error.error}")

    context.on("console", heard)
    context.on("weberror", failed)
    context.on("request", asked)

    def end() -> None:
        context.remove_listener("console", heard)
        context.remove_listener("weberror", failed)
        context.remove_listener("request", asked)

    return end


def until(page: Page, condition: str) -> None:
    """Wait for the page, whose film is ``video``; a condition may await.

    Through the debugger, as the pages' policy refuses scripts made of text; and here, as
    ``wait_for_function`` takes a promise itself for true.
    """
    page.evaluate(f"""async () => {{
      const video = document.querySelector("video");
      for (let turn = 0; !({condition}); turn++) {{
        if (turn > 6000) throw new Error("waited in vain for {condition}: " + video?.currentTime);
        await new Promise((go) => setTimeout(go, 10));
      }}
    }}""")


def hold(page: Page, address: str | re.Pattern[str]) -> list[Route]:
    """Whatever is asked for at an address waits in this list, until a test lets it come."""
    held: list[Route] = []
    page.route(address, lambda route: held.append(route))  # noqa: PLW0108 - it puts a mark on what it calls
    return held


def wait_for_all(page: Page) -> None:
    """Until the scripts and styles that a page brings later are there and have run."""
    page.evaluate(ALL_THERE)


FRAMES = "() => new Promise(go => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(go))))"
LONGEST_WAIT = 2_000
"""Times that two pictures are drawn: more than any answer takes on a busy machine; nothing is timed here."""


def unanswered(context: BrowserContext) -> set[Request]:
    """Requests that wait for their answer; a film's apart, which a player asks for by pieces, as it likes."""
    waiting: set[Request] = set()

    def asked(request: Request) -> None:
        if request.resource_type != "media":
            waiting.add(request)

    def ended(request: Request) -> None:
        waiting.discard(request)

    context.on("request", asked)
    context.on("requestfinished", ended)
    context.on("requestfailed", ended)
    return waiting


def wait_for_answers(page: Page, waiting: set[Request]) -> None:
    """Until all that was asked for is answered and what waited for it has run, so that late complaints count."""
    for _ in range(LONGEST_WAIT):
        page.evaluate(FRAMES)
        if not waiting:
            page.evaluate(FRAMES)  # what came with the last answer may ask for more
            if not waiting:
                return
    pytest.fail(f"waited in vain for {sorted(each.url for each in waiting)}")


def violations(page: Page) -> list[str]:
    """What axe-core finds inaccessible, each with its rule and its place."""
    if page.evaluate("!window.axe"):  # it stays until the page is left
        # Through the debugger, for the pages' own policy rightly refuses a script from elsewhere.
        session = page.context.new_cdp_session(page)
        session.send("Runtime.evaluate", {"expression": AXE.read_text(encoding="utf-8")})
        session.detach()
    found = page.evaluate("options => axe.run(document, options)", AXE_OPTIONS)
    return [
        f"{rule['id']}: {rule['help']}: {' '.join(map(str, node['target']))}"
        for rule in found["violations"]
        for node in rule["nodes"]
    ]
