"""Where the tests' browser is: finds a Chromium or, run as a program, brings one in."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

NAMES = (
    "chromium",
    "chromium-browser",
    "google-chrome",
    "google-chrome-stable",
    "chrome",
    "msedge",
)
PLACES = (
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
    r"C:\Program Files\Google\Chrome\Application\chrome.exe",
    r"C:\Program Files (x86)\Google\Chrome\Application\chrome.exe",
    r"C:\Program Files (x86)\Microsoft\Edge\Application\msedge.exe",
)
WAY_OUT = (
    "The tests need Chromium. Install it, or set PLUMLINE_CHROMIUM to the path of one; "
    "`python3 generator test` tries to install it by itself."
)


def find() -> str | None:
    """Give the program that PLUMLINE_CHROMIUM names or, where it is unset, the first one here."""
    chosen = os.environ.get("PLUMLINE_CHROMIUM")
    if chosen:
        return shutil.which(chosen)
    return next(filter(None, map(shutil.which, (*NAMES, *PLACES))), None) or _playwrights_own()


def bring() -> None:
    """Install Chromium: from Debian where we may, else the build that Playwright fetches."""
    sys.stdout.write("The tests need Chromium and none is here: bringing one in, about 200 MB.\n")
    sys.stdout.flush()
    if _on_debian_as_root() and _ran("apt-get", "update", "-q"):
        _ran("apt-get", "install", "-qy", "chromium")
    if not find():
        _ran(sys.executable, "-m", "playwright", "install", "chromium")


def _playwrights_own() -> str | None:
    from playwright.sync_api import sync_playwright  # noqa: PLC0415 - slow, and seldom needed

    with sync_playwright() as playwright:
        return shutil.which(playwright.chromium.executable_path)


def _on_debian_as_root() -> bool:
    return Path("/etc/debian_version").exists() and os.geteuid() == 0


def _ran(*command: str) -> bool:
    try:
        return subprocess.run(command, check=False).returncode == 0
    except FileNotFoundError:
        return False


if __name__ == "__main__":
    if not find() and not os.environ.get("PLUMLINE_CHROMIUM"):
        bring()
    sys.exit(None if find() else WAY_OUT)
