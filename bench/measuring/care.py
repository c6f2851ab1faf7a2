"""Whether the texts of care stand on the pages they belong to."""

from __future__ import annotations

from pathlib import Path

import yaml

from bench.measuring.files import lesson_pages
from tests.html_page import read_page, text

_ON_EVERY_LESSON = (
    "care_educational",
    "care_ask",
    "care_food",
    "care_young",
    "care_numbers",
    "care_local",
)
_WHERE_ONE_MOVES = tuple(f"before_moving_{number}" for number in range(1, 5))
WORDS = Path(__file__).parents[2] / "site_data/words"


def missing(site: Path) -> list[str]:
    """Each text of care that a lesson page does not show."""
    found = []
    for page in lesson_pages(site):
        tree = read_page(page)
        shown = _plain(text(tree))
        language = (tree.get("lang") or "en").split("-")[0]
        words = yaml.safe_load((WORDS / f"{language}.yaml").read_text("utf-8"))
        moves = 'class="stop stop-move"' in page.read_text("utf-8")
        wanted = _ON_EVERY_LESSON + (_WHERE_ONE_MOVES if moves else ())
        name = page.relative_to(site).as_posix()
        found += [f"{name}: {key}" for key in wanted if _plain(words[key]) not in shown]
    return found


def _plain(text: str) -> str:
    return " ".join(text.split())
