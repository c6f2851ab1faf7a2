"""Takes pictures as a real Chromium shows a page, writes them as WebP, and tells whether one has changed."""

from __future__ import annotations

from base64 import b64decode, b64encode
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager
from typing import Literal

from playwright.sync_api import Browser, Page

from bench.picturing.picture import SIZES, Picture
from tests.browser.watched import wait_for_all

Host = Callable[[], AbstractContextManager[str]]
"""Serves a site while it is held, at an address of its own or at one that is there."""
QUALITY = 0.3
"""Of the WebP, between 0 and 1; letters stay sharp at it."""
_DRAWN = """async () => {
  const seen = [...document.images].filter((each) => {
    const {top, bottom, width} = each.getBoundingClientRect();
    return each.checkVisibility() && width && bottom > 0 && top < innerHeight;
  });
  for (let turn = 0; turn < 500 && !seen.every(({complete}) => complete); turn++) await new Promise((go) => setTimeout(go, 10));
  await new Promise((go) => requestAnimationFrame(() => requestAnimationFrame(go)));
}"""
# Chromium's own controls wear a wheel while a film loads, and a bar of how far it is: never twice the same.
_STILL = "() => document.querySelectorAll('video').forEach((each) => { each.controls = false; })"
_TOOLS = """() => {
  const drawn = async (url) => {
    const picture = await createImageBitmap(await (await fetch(url)).blob());
    const canvas = new OffscreenCanvas(picture.width, picture.height);
    canvas.getContext('2d').drawImage(picture, 0, 0);
    return canvas;
  };
  window.packed = async (url, quality) => {
    const blob = await (await drawn(url)).convertToBlob({type: 'image/webp', quality});
    const reader = new FileReader();
    await new Promise((done) => { reader.onload = done; reader.readAsDataURL(blob); });
    return reader.result.split(',')[1];
  };
  // As many as of a thousand points are another colour, by more than an eye minds.
  window.changed = async (one, other) => {
    const [first, second] = [await drawn(one), await drawn(other)];
    if (first.width !== second.width || first.height !== second.height) return 1000;
    const [old, now] = [first, second].map((each) => each.getContext('2d').getImageData(0, 0, each.width, each.height).data);
    let points = 0;
    for (let at = 0; at < old.length; at += 4) points += [0, 1, 2].some((n) => Math.abs(old[at + n] - now[at + n]) > 100);
    return 1000 * points / (old.length / 4);
  };
}"""
_MINDED = 0.2
"""Points of a thousand: fewer is how letters are smoothed, and no change of the page."""


def shots(
    browser: Browser, host: Host, picture: Picture, scheme: Literal["light", "dark"]
) -> Iterator[tuple[int, bytes]]:
    """The page in one scheme, on each screen: its width, and the picture as PNG."""
    for width, height in SIZES.items():
        context = browser.new_context(
            viewport={"width": width, "height": height},
            color_scheme=scheme,
            reduced_motion="reduce",
            locale="en-US",
        )
        if picture.preview:  # with a route, a page's worker is not asked
            context.route("**/livereload/**", lambda route: route.abort())
        page = context.new_page()
        with host() as address:
            page.goto(address + picture.path)
            _wait(page)
            picture.before(page)
            _wait(page)
            if not picture.without_host:
                yield width, _drawn(page)
        if picture.without_host:
            picture.without_host(page)
            yield width, _drawn(page)
        context.close()


def _drawn(page: Page) -> bytes:
    """The page as PNG, its film without the browser's controls."""
    page.evaluate(_STILL)
    _wait(page)
    page.wait_for_timeout(300)  # a film's still has no event of its own
    return page.screenshot(animations="disabled")


def _wait(page: Page) -> None:
    """Until what comes later is there, and what is in sight is drawn."""
    wait_for_all(page)
    page.evaluate(_DRAWN)


class Packer:
    """Makes WebP of pictures and compares what they show, in a page of its own."""

    def __init__(self, browser: Browser) -> None:
        self._page = browser.new_page()
        self._page.evaluate(_TOOLS)

    def packed(self, png: bytes) -> bytes:
        """A picture as WebP."""
        made = self._page.evaluate(
            "([url, quality]) => packed(url, quality)", [_url(png, "png"), QUALITY]
        )
        return b64decode(made)

    def changed(self, old: bytes, now: bytes) -> bool:
        """Whether two WebP pictures show something different."""
        points = self._page.evaluate(
            "urls => changed(...urls)", [_url(one, "webp") for one in (old, now)]
        )
        return float(points) > _MINDED


def _url(picture: bytes, kind: str) -> str:
    return f"data:image/{kind};base64,{b64encode(picture).decode()}"
