"""Where an address of the demo's papers leads in the built site."""

from __future__ import annotations

from pathlib import Path
from urllib.parse import urlsplit

from tests.html_page import read_page

ADDRESS = "https://kitchen.larkmead.example/"
"""Of the demo, as its ``site.yaml`` has it."""


def leads_somewhere(site: Path, address: str) -> bool:
    """Whether the page and the place on it are there."""
    assert address.startswith(ADDRESS), address
    path, mark = urlsplit(address.removeprefix(ADDRESS))[2::2]
    page = site / (f"{path}index.html" if path.endswith("/") or not path else path)
    return page.is_file() and (
        not mark or any(one.get("id") == mark for one in read_page(page).iter())
    )
