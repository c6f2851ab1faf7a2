"""Rings hold their blocks where they are seen: on a small phone, on a wide screen and on paper."""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Page

from tests.browser.watched import OPEN_ALL
from tests.made import page_outputs, write_files
from tests.project import put, site

STEPS = [("energy", "20", 90, 410, 16), ("sugars", "4", 7, 30, 5), ("energy", "25", 90, 395, 12)]
STEPS += [("saturated_fat", "0.5", 2, 6, 8), ("sodium", "150", 40, 700, 4)]
"""What is compared, how much of it is one count, both sides, and how many rings there are."""
BOXES = """piles => piles.map(pile => {
  const box = (e) => (({ left, top, right, bottom }) => ({ left, top, right, bottom }))(e.getBoundingClientRect());
  const rings = [...pile.querySelectorAll('.ring')].map(ring => ({ ring: box(ring), blocks: [...ring.querySelectorAll('svg')].map(box) }));
  return { pile: box(pile), rings, rest: [...pile.querySelectorAll(':scope > svg')].map(box) };
})"""

Box = dict[str, float]


def stop(number: int, measure: str, per: str, first: int, second: int) -> str:
    foods = f"[{{name: Red, value: {first}, source: card}}, {{name: Blue, value: {second}, source: card}}]"
    return (
        f"  - compare:\n      id: c{number}\n      measure: {measure}\n      sides: [Red, Blue]\n"
        f"      rows:\n        - {foods}\n      solve: [gap, count]\n"
        f"  - move: {{for: c{number}, one_move_per: {per}, moves: [march]}}\n"
    )


@pytest.fixture(scope="module")
def lesson(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder of a built lesson with a ring of every kind."""
    root = site(tmp_path_factory.mktemp("rings"))
    (root / "theme").symlink_to(Path(__file__).parents[2] / "theme")
    stops = "".join(stop(at, *step[:4]) for at, step in enumerate(STEPS))
    head = "title: Rings\nsummary: S.\ngrades: 3-5\nminutes: 10\ngoals: [Look.]\nstops:\n"
    put(root, head + stops, "rings")
    write_files(page_outputs(root), root / "site")
    return root / "site/rings"


def inside(inner: Box, outer: Box) -> bool:
    return (
        inner["left"] >= outer["left"] - 0.5
        and inner["top"] >= outer["top"] - 0.5
        and inner["right"] <= outer["right"] + 0.5
        and inner["bottom"] <= outer["bottom"] + 0.5
    )


def apart(one: Box, other: Box) -> bool:
    return (
        one["right"] <= other["left"] + 0.5
        or other["right"] <= one["left"] + 0.5
        or one["bottom"] <= other["top"] + 0.5
        or other["bottom"] <= one["top"] + 0.5
    )


@pytest.mark.parametrize(
    ("file", "piles", "width"),
    [
        ("index.html", "figure.left .blocks", 320),
        ("index.html", "figure.left .blocks", 1280),
    ],
)
def test_every_ring_is_seen_around_its_blocks(
    page: Page, lesson: Path, file: str, piles: str, width: int
) -> None:
    page.set_viewport_size({"width": width, "height": 900})
    page.goto((lesson / file).as_uri())
    page.evaluate(OPEN_ALL)
    found = page.locator(piles).evaluate_all(BOXES)
    assert [len(pile["rings"]) for pile in found] == [step[-1] for step in STEPS]
    for pile in found:
        rings = [one["ring"] for one in pile["rings"]]
        for one in pile["rings"]:
            assert inside(one["ring"], pile["pile"])
            assert all(inside(block, one["ring"]) for block in one["blocks"])
            assert all(block["right"] - block["left"] > 1 for block in one["blocks"])
        for block in pile["rest"]:
            assert inside(block, pile["pile"])
            assert all(apart(block, ring) for ring in rings)
        for at, ring in enumerate(rings):
            assert all(apart(ring, other) for other in rings[:at])
