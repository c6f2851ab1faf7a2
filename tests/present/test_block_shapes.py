"""A page brings the shapes of the blocks it draws, and no others."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

import pytest

from generator.present.pictures.block_shapes import block_shapes
from generator.present.views.amounts import BlocksView
from tests.html_page import read_html
from tests.made import page_outputs
from tests.project import ROOT


@pytest.mark.parametrize(
    ("pile", "shapes"),
    [
        (BlocksView("", 0, 0, 0, 0), set()),
        (BlocksView("", 2, 0, 0, 0), {"hundred", "tens"}),
        (BlocksView("", 0, 3, 1, 5), {"ten", "one", "half"}),
        (BlocksView("", 0, 0, 0, 4), {"tenth"}),
    ],
)
def test_shapes_of_a_pile(pile: BlocksView, shapes: set[str]) -> None:
    @dataclass
    class Around:
        piles: tuple[object, ...]

    assert block_shapes("text", (Around((None, pile)),)) == shapes


def test_every_picture_of_the_demo_has_its_shape() -> None:
    pages = {one.path: one for one in page_outputs(ROOT) if Path(one.path).name == "index.html"}
    for path, page in pages.items():
        drawn = read_html(page.content.decode())
        uses = {
            element.get("href", "").removeprefix("#")
            for element in drawn.iter()
            if str(element.tag).endswith("}use")
        }
        brought = {
            element.get("id", "")
            for element in drawn.iter()
            if str(element.tag).endswith("}symbol")
        }
        assert uses <= brought | {element.get("id", "") for element in drawn.iter()}, path
        assert brought <= uses | {"tens", "hundred"}, path
