"""Makes the pictures of README.md and of the guide: every page of the demo, as a real Chromium shows it."""

from __future__ import annotations

import argparse
import sys
import tempfile
from collections.abc import Iterator, Sequence
from contextlib import ExitStack, nullcontext
from functools import partial
from pathlib import Path

from playwright.sync_api import Browser

ROOT = Path(__file__).parents[1]
sys.path.insert(0, str(ROOT))

from bench.measuring.browser import launched  # noqa: E402  # run as a file, beside tests/
from bench.picturing.picture import FOLDER, SCHEMES, Picture  # noqa: E402
from bench.picturing.shown import PAGE, page  # noqa: E402
from bench.picturing.table import PICTURES  # noqa: E402
from bench.picturing.taking import Host, Packer, shots  # noqa: E402
from tests.local_server import serving  # noqa: E402
from tests.running_preview import previewing  # noqa: E402
from tests.site_project import build_demo, copy_project  # noqa: E402

MOST = 3_400_000
"""Bytes of all pictures together: the guide is read over thin lines too."""


def main(words: Sequence[str] | None = None) -> int:
    """Take the pictures, write those that changed, and the page that shows them; 1 where they are too large."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--site", type=Path, help="a built site; otherwise the demo is built")
    parser.add_argument(
        "--only", nargs="+", default=[], metavar="NAME", help="pictures of these names alone"
    )
    asked = parser.parse_args(words)
    chosen = [one for one in PICTURES if not asked.only or one.name in asked.only]
    FOLDER.mkdir(parents=True, exist_ok=True)
    written = [name for name, new in _take(chosen, asked.site) if new]
    (ROOT / PAGE).write_text(page(), "utf-8")
    known = {name for one in PICTURES for name in one.files()}
    for file in FOLDER.iterdir():
        if file.name not in known:
            file.unlink()
    size = sum(file.stat().st_size for file in FOLDER.iterdir())
    print(
        f"{len(written)} of {len(chosen) * 4} pictures are new; all take {size:,} bytes of {MOST:,}."
    )
    return int(size > MOST)


def _take(chosen: Sequence[Picture], built: Path | None) -> Iterator[tuple[str, bool]]:
    """Each file's name, and whether it was written anew."""
    with ExitStack() as held:
        folder = Path(held.enter_context(tempfile.TemporaryDirectory()))
        browser = held.enter_context(launched())
        packer = Packer(browser)
        site = built or build_demo(folder / "demo")
        published = held.enter_context(serving(site))
        preview = ""
        if any(one.preview for one in chosen):
            preview = held.enter_context(previewing(_project(folder / "preview"))).address
        for picture in chosen:
            address = preview if picture.preview else published
            host = partial(serving, site) if picture.without_host else partial(nullcontext, address)
            yield from _written(browser, packer, picture, host)


def _project(folder: Path) -> Path:
    """The demo, but for the page of pictures: one that is not there yet would be told above every page."""
    project = copy_project(folder)
    (project / PAGE).write_text("# What it looks like\n", "utf-8")
    return project


def _written(
    browser: Browser, packer: Packer, picture: Picture, host: Host
) -> Iterator[tuple[str, bool]]:
    """The four files of a picture; one that shows what it showed is left as it is."""
    for scheme in SCHEMES:
        for width, png in shots(browser, host, picture, scheme):
            file, taken = FOLDER / picture.file(width, scheme), packer.packed(png)
            new = not file.exists() or packer.changed(file.read_bytes(), taken)
            if new:
                file.write_bytes(taken)
                print(f"{file.name:<32}{len(taken):>9,}")
            yield file.name, new


if __name__ == "__main__":
    sys.exit(main())
