"""Prints how late the pacer's numbers come in two minutes on a busy page, beside the limit of 50 ms."""

from __future__ import annotations

import sys
import tempfile
from pathlib import Path

from playwright.sync_api import sync_playwright

ROOT = Path(__file__).parents[1]
sys.path.insert(0, str(ROOT))

from tests import chromium  # noqa: E402  # run as a file, beside tests/
from tests.browser.pacer_watch import BUSY, LATE, latest  # noqa: E402  # the same
from tests.browser.test_pacer import LESSON, begin  # noqa: E402  # the same
from tests.local_server import serving  # noqa: E402  # the same
from tests.site_project import build_project, copy_project  # noqa: E402  # the same

SECONDS = 120


def main() -> int:
    """Build the demo, count for two minutes, print one line; 1 when a number came too late."""
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        site = build_project(copy_project(Path(folder)))
        browser = playwright.chromium.launch(
            executable_path=chromium.find(), args=["--disable-gpu"]
        )
        with serving(site) as address:
            page = browser.new_page()
            page.goto(f"{address}{LESSON}/index.html")
            away = latest(page, begin(page, count=500), SECONDS)
        browser.close()
    print(f"pacer: {away:.1f} ms at worst in {SECONDS} s, busy {BUSY} ms in 700   of {LATE} ms")
    return int(away > LATE)


if __name__ == "__main__":
    sys.exit(main())
