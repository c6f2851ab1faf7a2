"""The front page on paper: ink on white, and no more sheets than its lessons need."""

from __future__ import annotations

from base64 import b64encode
from pathlib import Path

import pytest
from playwright.sync_api import Page

from tests.printed_sheets import printed_sheets

PAPERS = ("A4", "Letter")
COLOURED = """async (picture) => {
  const image = new Image();
  image.src = `data:image/png;base64,${picture}`;
  await image.decode();
  const canvas = new OffscreenCanvas(image.width, image.height), on = canvas.getContext("2d");
  on.drawImage(image, 0, 0);
  const { data } = on.getImageData(0, 0, image.width, image.height);
  let coloured = 0, ground = 0;
  for (let at = 0; at < data.length; at += 4) {
    const [red, green, blue] = data.subarray(at, at + 3);
    if (Math.max(red, green, blue) - Math.min(red, green, blue) > 8) coloured += 1;
    if (red > 250) ground += 1;
  }
  return [coloured, ground / (data.length / 4)];
}"""


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("front", ["index.html", "es/index.html"])
def test_six_lessons_take_one_sheet(page: Page, built_site: Path, front: str, paper: str) -> None:
    page.goto((built_site / front).as_uri())
    sheets = printed_sheets(page.pdf(format=paper))
    assert len(sheets) == 1
    assert min(ink.letters for ink in sheets[0].inks if ink.letters) >= 12
    for ink in sheets[0].inks:
        assert not ink.colour or max(ink.colour) - min(ink.colour) < 0.03, ink


def test_covers_are_ink_on_white(page: Page, built_site: Path) -> None:
    """Pictures in files see nothing of the paper; the page takes their colors out."""
    page.goto((built_site / "index.html").as_uri())
    page.emulate_media(media="print", color_scheme="light")
    cover = page.locator(".cover img").first
    cover.scroll_into_view_if_needed()
    cover.evaluate("image => image.decode()")
    coloured, ground = page.evaluate(COLOURED, b64encode(cover.screenshot()).decode())
    assert coloured == 0
    assert ground > 0.7
