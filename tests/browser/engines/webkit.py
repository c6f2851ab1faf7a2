"""WebKitGTK by the W3C's WebDriver over plain HTTP, on a screen that nobody sees."""

from __future__ import annotations

import json
import os
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from time import sleep
from urllib.error import HTTPError, URLError
from urllib.request import Request, urlopen

from tests.browser.engines.engine import ELEMENT, PATIENCE, Engine


class _WebDriver:
    """One session."""

    def __init__(self, port: int, browser: str) -> None:
        self._at = f"http://127.0.0.1:{port}/session"
        own = {"binary": browser, "args": ["--automation"]}
        wanted = {"capabilities": {"alwaysMatch": {"webkitgtk:browserOptions": own}}}
        began = self._post("", wanted)
        assert isinstance(began, dict)
        self._at += f"/{began['sessionId']}"
        self._post("/timeouts", {"script": PATIENCE, "pageLoad": PATIENCE})
        self._post("/window/rect", {"width": 900, "height": 900})

    def navigate(self, address: str) -> None:
        self._post("/url", {"url": address})

    def script(self, text: str, *arguments: object) -> object:
        return self._post("/execute/async", {"script": text, "args": list(arguments)})

    def find(self, selector: str) -> str:
        found = self._post("/element", {"using": "css selector", "value": selector})
        assert isinstance(found, dict)
        return str(found[ELEMENT])

    def click(self, element: str) -> None:
        self._post(f"/element/{element}/click", {})

    def quit(self) -> None:
        with urlopen(Request(self._at, method="DELETE")):  # our own machine
            pass

    def _post(self, path: str, values: dict[str, object]) -> object:
        request = Request(self._at + path, json.dumps(values).encode(), method="POST")  # the same
        try:
            with urlopen(request, timeout=PATIENCE / 1_000 + 30) as answer:  # the same
                return json.load(answer)["value"]
        except HTTPError as error:
            raise AssertionError(f"{path}: {error.read().decode()[:600]}") from None


def _answered(port: int) -> None:
    for _ in range(600):
        try:
            with urlopen(f"http://127.0.0.1:{port}/status"):  # our own machine
                return
        except (URLError, ConnectionError):
            sleep(0.1)
    raise AssertionError("WebKitWebDriver does not answer")


@contextmanager
def webkit(driver: str, browser: str, screen: str, folder: Path, port: int) -> Iterator[Engine]:
    """A WebKitGTK on a screen of its own.

    Args:
        driver: program that speaks WebDriver.
        browser: MiniBrowser.
        screen: Xvfb.
        folder: empty, for all that it keeps.
        port: free, for the driver.
    """
    with _screen(screen) as display:
        own = {"HOME": str(folder), "XDG_RUNTIME_DIR": str(folder), "DISPLAY": display, "LIBGL_ALWAYS_SOFTWARE": "1"}  # fmt: skip
        quiet = {"stdout": subprocess.DEVNULL, "stderr": subprocess.DEVNULL}
        with subprocess.Popen([driver, f"--port={port}"], env=os.environ | own, **quiet) as running:  # type: ignore[call-overload]
            try:
                _answered(port)
                wire = _WebDriver(port, browser)
                yield Engine("WebKitGTK", wire)
                wire.quit()
            finally:
                running.kill()


@contextmanager
def _screen(program: str) -> Iterator[str]:
    """A screen in memory; it chooses a free number itself."""
    read, write = os.pipe()
    command = [
        program,
        "-displayfd",
        str(write),
        "-screen",
        "0",
        "1280x1024x24",
        "-nolisten",
        "tcp",
    ]
    with subprocess.Popen(command, pass_fds=[write], stderr=subprocess.DEVNULL) as running:
        os.close(write)
        try:
            with os.fdopen(read, encoding="ascii") as told:
                yield f":{told.readline().strip()}"
        finally:
            running.kill()
