"""Ways between two poses as dotted paths with an arrowhead, drawn where the body leaves room."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise
from math import atan2, degrees, floor

from generator.model.pose import Pose, View
from generator.present.pictures.figures.point import Limb, Point, line
from generator.present.pictures.figures.skeleton import FLOOR, Skeleton, skeleton
from generator.present.pictures.figures.ways import Part, length, ways

ROOM: dict[Part, float] = {"hand": 8, "foot": 8, "head": 13.5, "hips": 12}
"""How far before a part its arrow ends, in drawing units."""

SHORT = 10.0
"""A way of which less than this would be seen is drawn beside what moves."""

HIDDEN = 6.5
"""What of a way is nearer than this to the body lies beneath it."""

COVERED = 4.5
"""An arrow beside a body, with its point nearer than this to a limb, is drawn only for want of another."""


def dotted_ways(first: Pose, second: Pose) -> str:
    """Return the ways from the first pose to the second, to lie beneath the near limbs of the second."""
    taken = tuple(_taken(second.view, skeleton(second)))
    seen = [_seen(part, way, taken) for part, way in ways(first, second)]
    drawn = [way for way in seen if _distance(way[-1], taken) > COVERED or len(way) > 2] or seen
    if not drawn:
        return ""
    dots = "".join(line(way) for way in drawn)
    heads = "".join(line(_arrowhead(way)) for way in drawn)
    return (
        '<g class="figure-way" stroke="currentColor" stroke-width="2.2">'
        f'<path stroke-dasharray=".1 4.4" d="{dots}"/><path d="{heads}"/></g>'
    )


def _taken(view: View, body: Skeleton) -> Iterator[Point]:
    """Yield places that a body takes up, but for far limbs, which are pale and lie beneath a way."""
    near = 1 if view is View.SIDE else 0
    limbs: tuple[Limb, ...] = (*body.arms[near:], *body.legs[near:], (*body.trunk, body.head))
    for limb in limbs:
        for start, end in pairwise(limb):
            yield from (start.on_the_way_to(end, share / 4) for share in range(5))


def _seen(part: Part, way: Limb, taken: Limb) -> Limb:
    """Return the part of a way that the body does not hide, or two points beside it."""
    room = ROOM[part]
    if way[0].far_from(way[-1]) < room + SHORT:
        return _beside(way, room, taken)
    kept = tuple(_shortened(way, room))
    free = [pair for pair in pairwise(kept) if all(_distance(at, taken) > HIDDEN for at in pair)]
    if sum(start.far_from(end) for start, end in free) < SHORT:
        return _beside(way, room, taken)
    return tuple(_shortened(kept[::-1], 2))[::-1]


def _shortened(way: Limb, by: float) -> Iterator[Point]:
    """Yield a way without its last drawing units."""
    rest = length(way) - by
    for start, end in pairwise(way):
        yield start
        step = start.far_from(end)
        if step >= rest:
            yield start.on_the_way_to(end, rest / step)
            return
        rest -= step


def _beside(way: Limb, room: float, taken: Limb) -> Limb:
    """Return a straight way as long as a short one, and long enough to be seen, where room is."""
    start, end = way[0], way[-1]
    turned = degrees(atan2(end.x - start.x, end.y - start.y))
    middle = start.on_the_way_to(end, 0.5)
    sides = [middle.toward(turned + side, room) for side in (-90, 90)]
    above = [at for at in sides if at.y < FLOOR - 3] or [middle]
    free = max(above, key=lambda at: floor(10 * _distance(at, taken) - 0.1 * at.y))
    half = max(start.far_from(end), 12) / 2
    return free.toward(turned + 180, half), free.toward(turned, half)


def _distance(at: Point, taken: Limb) -> float:
    return min(at.far_from(other) for other in taken)


def _arrowhead(way: Limb) -> Iterator[Point]:
    """Yield two short strokes that meet at the end of a way."""
    back, end = way[-2], way[-1]
    turned = degrees(atan2(back.x - end.x, back.y - end.y))
    yield end.toward(turned - 38, 5)
    yield end
    yield end.toward(turned + 38, 5)
