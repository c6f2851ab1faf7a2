"""Which browsers besides Chromium this machine has, and how each is begun."""

from __future__ import annotations

import shutil
import socket
from contextlib import AbstractContextManager
from pathlib import Path

from tests.browser.engines.engine import Engine
from tests.browser.engines.firefox import firefox
from tests.browser.engines.webkit import webkit

PACKAGES = ("firefox-esr", "webkit2gtk-driver", "gstreamer1.0-libav", "gstreamer1.0-plugins-good", "xvfb")  # fmt: skip
"""Debian's; the third lets WebKitGTK play H.264."""
WAY_OUT = "on Debian `python -m tests.browser.engines` brings it in"


def engine(name: str, folder: Path) -> AbstractContextManager[Engine] | None:
    """The browser of a name, to be begun; nothing where it is not here.

    Args:
        name: ``firefox`` or ``webkit``.
        folder: empty, for all that it keeps.
    """
    return _firefox(folder) if name == "firefox" else _webkit(folder)


def _firefox(folder: Path) -> AbstractContextManager[Engine] | None:
    program = shutil.which("firefox-esr") or shutil.which("firefox")
    return firefox(program, folder, _free_port()) if program else None


def _webkit(folder: Path) -> AbstractContextManager[Engine] | None:
    driver, screen = shutil.which("WebKitWebDriver"), shutil.which("Xvfb")
    browser = next(Path("/usr/lib").glob("*/webkit2gtk-4.*/MiniBrowser"), None)
    if not (driver and screen and browser):
        return None
    return webkit(driver, str(browser), screen, folder, _free_port())


def _free_port() -> int:
    with socket.socket() as line:
        line.bind(("127.0.0.1", 0))
        return int(line.getsockname()[1])
