"""Prints how many bytes the first view of every lesson needs, beside the limit of one first flight."""

from __future__ import annotations

import argparse
import gzip
import re
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).parents[1]
sys.path.insert(0, str(ROOT))

from tests.site_project import build_project, copy_project  # noqa: E402  # run as a file, beside tests/

LIMIT = 14_600
"""Bytes: ten segments of 1,460, what a server may send before it hears back (RFC 6928)."""
NEEDED = re.compile(r'<(?:link rel="stylesheet"|script defer)[^>]*?(?:href|src)="([^"]+)"')


def main() -> int:
    """Build the demo, or look at a site that is built, and print one line for each lesson."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--site", type=Path, help="a built site; otherwise the demo is built")
    site = parser.parse_args().site
    if site is None:
        with tempfile.TemporaryDirectory() as folder:
            return show(build_project(copy_project(Path(folder))))
    return show(site)


def show(site: Path) -> int:
    """One line for each lesson page; 1 when one of them is over the limit."""
    print(f"{'lesson':<24}{'HTML':>8}{'CSS':>8}{'JS':>8}{'all':>8}   of {LIMIT:,}")
    over = False
    for page in sorted(site.rglob("index.html")):
        html = page.read_text("utf-8")
        if "<lesson-thread" not in html:
            continue
        head = html.partition("</head>")[0]  # a style linked further down holds up nothing above it
        files = [(page.parent / path).resolve() for path in NEEDED.findall(head)]
        css = sum(packed(file.read_bytes()) for file in files if file.suffix == ".css")
        js = sum(packed(file.read_bytes()) for file in files if file.suffix == ".js")
        text = packed(html.encode())
        whole = text + css + js
        over |= whole > LIMIT
        print(
            f"{page.parent.relative_to(site).as_posix():<24}{text:>8,}{css:>8,}{js:>8,}{whole:>8,}   {whole / LIMIT:.2f}"
        )
    return int(over)


def packed(content: bytes) -> int:
    """Bytes after gzip at the level most servers use."""
    return len(gzip.compress(content, 6, mtime=0))


if __name__ == "__main__":
    sys.exit(main())
