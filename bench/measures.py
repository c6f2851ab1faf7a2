"""Prints each measure of the pages beside its target, over a fresh build of the demo in a real Chromium."""

from __future__ import annotations

import argparse
import sys
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from playwright.sync_api import Browser, sync_playwright

ROOT = Path(__file__).parents[1]
sys.path.insert(0, str(ROOT))

from bench.measuring import care, pages, screens  # noqa: E402  # run as a file, beside tests/
from tests import chromium  # noqa: E402
from tests.conftest import QUIET  # noqa: E402
from tests.local_server import serving  # noqa: E402
from tests.site_project import build_project, copy_project  # noqa: E402


@dataclass(frozen=True, slots=True)
class Measure:
    """One line of what is printed."""

    name: str
    target: str
    figure: str
    is_met: bool


def main() -> int:
    """Build the demo, or look at a site that is built; 1 when a target is missed."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--site", type=Path, help="a built site; otherwise the demo is built")
    site = parser.parse_args().site
    if site is not None:
        return show(site)
    with tempfile.TemporaryDirectory() as folder:
        return show(build_project(copy_project(Path(folder))))


def show(site: Path) -> int:
    """One line for each measure, as soon as it is known."""
    met = True
    print(f"{'measure':<58}{'target':>14}{'here':>14}")
    with serving(site) as address, launched() as browser:
        for measure in measured(site, address, browser):
            met &= measure.is_met
            mark = "" if measure.is_met else "   missed"
            print(f"{measure.name:<58}{measure.target:>14}{measure.figure:>14}{mark}", flush=True)
    return int(not met)


def measured(site: Path, address: str, browser: Browser) -> Iterator[Measure]:
    """Every measure, those that need no browser first."""
    for name, size in pages.first_views(site):
        yield Measure(
            f"first view of {name}, {pages.PACKED}, bytes", "≤ 14,600", f"{size:,}", size <= 14_600
        )
    yield none_of("mistakes a strict HTML parser finds", pages.parser_errors(site))
    yield none_of("texts of care that a lesson page lacks", care.missing(site))
    shifts = screens.layout_shift(browser, address, site)
    yield Measure("layout shift of a lesson page, largest", "0", f"{shifts:.4f}", shifts == 0)
    ready = screens.milliseconds_to_ready(browser, address, site)
    yield Measure(
        "ready after its HTML came, 4 times throttled, ms",
        "≤ 1,000",
        f"{ready:,.0f}",
        ready <= 1000,
    )
    size, what = screens.smallest_target(browser, address, site)
    yield Measure(f"smallest control on touch, px ({what})", "≥ 44", f"{size:.1f}", size >= 43.99)
    yield none_of(
        "controls out of the order of the page", screens.out_of_order(browser, address, site)
    )
    yield none_of(
        "breaches of the content security policy", screens.breaches(browser, address, site)
    )
    for name, found in screens.accessibility(browser, address, site):
        yield none_of(f"violations axe finds, {name}", found)


def none_of(name: str, found: list[str]) -> Measure:
    """A measure whose target is nothing; what was found is printed above it."""
    for each in found[:20]:
        print(f"    {each}")
    return Measure(name, "0", str(len(found)), not found)


@contextmanager
def launched() -> Iterator[Browser]:
    """The browser of the tests."""
    program = chromium.find()
    if program is None:
        sys.exit(chromium.WAY_OUT)
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=program, args=list(QUIET))
        yield browser
        browser.close()


if __name__ == "__main__":
    sys.exit(main())
