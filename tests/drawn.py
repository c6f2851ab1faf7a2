"""Reads base-ten blocks and number lines as they are drawn, by their geometry and nothing else."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from decimal import Decimal
from xml.etree.ElementTree import Element

_PART = re.compile(r"([MmLlHhVvQqZz])([^A-Za-z]*)")
_NUMBER = re.compile(r"-?\d*\.?\d+")

SVG = "{http://www.w3.org/2000/svg}"
"""Before the name of each element of a picture, as the parser gives it."""
Point = tuple[float, float]
Polygon = list[Point]


def subpaths(path: str) -> Iterator[tuple[Polygon, bool]]:
    """Every part of a path, its curves as the lines to their ends, and whether it is closed (SVG 2, 9.3)."""
    at: Point = (0, 0)
    points: Polygon = []
    for letter, numbers in _PART.findall(path):
        values = [float(number) for number in _NUMBER.findall(numbers)]
        if letter in "Zz":
            yield points, True
            at, points = points[0], []
            continue
        if letter in "Mm" and points:
            yield points, False
            points = []
        for point in _points(letter, values, at):
            points = points or ([] if letter in "Mm" else [at])
            points.append(point)
            at = point
    if points:
        yield points, False


def _points(letter: str, values: list[float], at: Point) -> Iterator[Point]:
    x, y = at
    relative = letter.islower()
    if letter in "HhVv":
        for value in values:
            if letter in "Hh":
                x = value + x * relative
            else:
                y = value + y * relative
            yield x, y
        return
    size = 4 if letter in "Qq" else 2
    for start in range(0, len(values), size):
        right, down = values[start : start + size][-2:]
        x, y = right + x * relative, down + y * relative
        yield x, y


def area(points: Polygon) -> float:
    """Of a closed polygon, by the shoelace formula (Meister 1769; from memory)."""
    turned = zip(points, [*points[1:], points[0]], strict=True)
    return abs(sum(x * b - a * y for (x, y), (a, b) in turned)) / 2


class Drawing:
    """The pictures of one page."""

    def __init__(self, page: Element, one: float) -> None:
        """A page, and how long the side of a one is in the units of its symbols."""
        self._named: Mapping[str, Element] = {
            name: element for element in page.iter() if (name := element.get("id"))
        }
        self._one = one

    def blocks(self, svg: Element) -> list[Decimal]:
        """How much each closed shape is worth that an element draws, by its area in ones; those it refers to as well."""
        return [block for child in svg for block in self._drawn(child)]

    def _drawn(self, element: Element) -> Iterator[Decimal]:
        match element.tag.removeprefix(SVG):
            case "path":
                for points, closed in subpaths(element.get("d", "")):
                    if closed:
                        worth = Decimal(str(round(area(points) / self._one**2, 4)))
                        yield worth.normalize()
            case "g":
                yield from self.blocks(element)
            case "use":
                yield from self._used(element)

    def _used(self, use: Element) -> Iterator[Decimal]:
        yield from self.blocks(self._named[use.get("href", "").removeprefix("#")])
