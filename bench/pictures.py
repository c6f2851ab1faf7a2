"""Makes the pictures of README.md and of the guide: the demo's main states, as a real Chromium shows them."""

from __future__ import annotations

import argparse
import sys
import tempfile
from collections.abc import Callable
from dataclasses import dataclass, field
from io import BytesIO
from pathlib import Path

from playwright.sync_api import Browser, Page

ROOT = Path(__file__).parents[1]
sys.path.insert(0, str(ROOT))

from bench.measuring.browser import launched  # noqa: E402  # run as a file, beside tests/
from tests.local_server import serving  # noqa: E402
from tests.site_project import build_demo  # noqa: E402

FOLDER = ROOT / "lessons/guide/pictures"
LARGEST = 250_000
"""Bytes of a picture: the guide is read over thin lines too."""
LESSON = "river-walk"


def _nothing(_: Page) -> None:
    """The page as it comes."""


@dataclass(frozen=True, slots=True)
class Picture:
    """One picture, and what to do before it is taken."""

    name: str
    path: str
    width: int = 1280
    height: int = 900
    options: dict[str, str] = field(default_factory=dict)
    media: str = "screen"
    before: Callable[[Page], None] = _nothing


def main() -> None:
    """Build the demo, or look at a site that is built, and write every picture."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--site", type=Path, help="a built site; otherwise the demo is built")
    site = parser.parse_args().site
    FOLDER.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory() as folder:
        built = site or build_demo(Path(folder, "demo"))
        with serving(built) as address, launched() as browser:
            for picture in PICTURES:
                taken = small(take(browser, address, picture))
                (FOLDER / f"{picture.name}.png").write_bytes(taken)
                over = "  too large" if len(taken) > LARGEST else ""
                print(f"{picture.name + '.png':<20}{len(taken):>9,}{over}")


def take(browser: Browser, address: str, picture: Picture) -> bytes:
    """The picture as PNG."""
    size = {"width": picture.width, "height": picture.height}
    context = browser.new_context(viewport=size, reduced_motion="reduce", **picture.options)
    page = context.new_page()
    page.goto(address + picture.path)
    page.wait_for_load_state("networkidle")
    page.emulate_media(media=picture.media)
    if picture.media == "print":
        page.evaluate("document.body.style.padding = '0.5in'")  # the margin that a printer adds
    # The browser turns a wheel over the video until its first picture stands.
    page.wait_for_timeout(1000)
    picture.before(page)
    taken = page.screenshot(animations="disabled")
    context.close()
    return taken


def small(picture: bytes) -> bytes:
    """The picture in 64 colours, where Pillow is there to do it."""
    try:
        from PIL import Image  # noqa: PLC0415  # needed here only, and not everywhere
    except ImportError:
        return picture
    out = BytesIO()
    Image.open(BytesIO(picture)).convert("RGB").quantize(64).save(out, "PNG", optimize=True)
    return out.getvalue()


def at_the_gap(page: Page) -> None:
    """The first row, one gap found and one not yet."""
    rows = page.locator("form[data-gap]")
    first, second = rows.nth(0), rows.nth(1)
    first.locator("[name=gap]").fill(first.get_attribute("data-gap") or "")
    if first.locator("[name=count]").count():
        first.locator("[name=count]").fill(first.get_attribute("data-count") or "")
    first.locator("[data-check]").click()
    added = int(second.get_attribute("data-first") or 0) + int(
        second.get_attribute("data-second") or 0
    )
    second.locator("[name=gap]").fill(str(added))
    second.locator("[data-check]").click()
    page.locator(".stop-compare").first.evaluate("each => each.scrollIntoView()")


def at_the_moves(page: Page) -> None:
    """The movement cards on the page."""
    page.locator(".stop-move").first.evaluate("each => each.scrollIntoView()")


def at_who(page: Page) -> None:
    """The row in which a learner picks a thing of Larkmead."""
    page.locator(".who").click()


PICTURES = (
    Picture("lesson", f"{LESSON}/index.html", before=at_the_gap),
    Picture("phone", f"{LESSON}/index.html", 390, 844, before=at_the_gap),
    Picture("beginning", f"{LESSON}/index.html", 390, 844),
    Picture(
        "dark", f"{LESSON}/index.html", 390, 844, {"color_scheme": "dark"}, before=at_the_moves
    ),
    Picture("who", f"{LESSON}/index.html", 390, 844, before=at_who),
    Picture("spanish", f"es/{LESSON}/index.html", 390, 844, before=at_the_gap),
    Picture("cards", f"{LESSON}/cards.html", 816, 1056, media="print"),
    Picture("worksheet", f"{LESSON}/worksheet.html", 816, 1056, media="print"),
    Picture("notes", f"{LESSON}/notes.html"),
    Picture("home", "index.html"),
)


if __name__ == "__main__":
    main()
