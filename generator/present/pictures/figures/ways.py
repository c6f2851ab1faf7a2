"""Which hands, feet and heads move between two poses, and the way each goes."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise
from typing import Literal

from generator.model.pose import Pose, View
from generator.present.pictures.figures.point import Limb, Point
from generator.present.pictures.figures.skeleton import MIDDLE, Skeleton, between, skeleton

Part = Literal["hand", "foot", "head", "hips"]
Way = tuple[Part, Limb]
"""What moves, and the places it passes."""

STEPS = 16
"""A way is drawn through so many bodies between the two poses."""

MOVES = 5.0
"""A part that goes less far than this, in drawing units, stays where it is."""

PLAIN = 0.4
"""Hands and head that go less than this share of the longest way only go along with it."""

SAME = 4.0
"""Two places nearer than this are one."""

ALIKE = 10.0
"""Two ways nearer than this all along are drawn as one: both limbs of a body seen from the side."""

PARTS: tuple[tuple[Part, Callable[[Skeleton], Point]], ...] = (
    ("hand", lambda body: body.arms[1][-1]),
    ("hand", lambda body: body.arms[0][-1]),
    ("foot", lambda body: body.legs[1][2]),
    ("foot", lambda body: body.legs[0][2]),
    ("head", lambda body: body.head),
    ("hips", lambda body: body.trunk[0]),
)
"""Near limbs first: where both go the same way, theirs is drawn; hips where nothing else moves."""


def ways(first: Pose, second: Pose) -> tuple[Way, ...]:
    """Return each part that moves, and its way; nothing where the sides just change places."""
    if first.view is not second.view or changed_places(first, second):
        return ()
    bodies = [between(first, second, step / STEPS) for step in range(STEPS + 1)]
    through = [(part, tuple(place(body) for body in bodies)) for part, place in PARTS]
    far = [(part, way) for part, way in through if way[0].far_from(way[-1]) >= MOVES]
    return _told([way for way in far if way[0] == "foot"] if _as_one(far) else far)


def length(way: Limb) -> float:
    """Return how long a way is, in drawing units."""
    return sum(a.far_from(b) for a, b in pairwise(way))


def _told(moving: list[Way]) -> tuple[Way, ...]:
    """Return the ways that tell a move, without those that another one tells."""
    longest = max((length(way) for part, way in moving if part != "hips"), default=0)
    kept: list[Way] = []
    for part, way in moving:
        plain = part == "foot" or length(way) >= longest * PLAIN
        again = any(_alike(way, other) for _, other in kept) or (part == "hips" and kept)
        if plain and not again:
            kept.append((part, way))
    return tuple(kept)


def _as_one(moving: list[Way]) -> bool:
    """Tell whether the whole body goes about one way, as in a jump: then its feet tell it."""
    goes = [Point(way[-1].x - way[0].x, way[-1].y - way[0].y) for _, way in moving]
    return len(moving) == len(PARTS) and all(one.far_from(goes[0]) < ALIKE for one in goes)


def _alike(way: Limb, other: Limb) -> bool:
    return all(a.far_from(b) < ALIKE for a, b in zip(way, other, strict=True))


def changed_places(first: Pose, second: Pose) -> bool:
    """Tell whether the second pose is the first with limbs of its two sides exchanged.

    From the side arms may change alone, or legs; from the front the whole body is mirrored.
    """
    one, other = skeleton(first), skeleton(second)
    front = first.view is View.FRONT
    seen = _mirrored(other) if front else other
    pairs = ((one.arms, seen.arms), (one.legs, seen.legs))
    exchanged = [_same(a, b[::-1]) for a, b in pairs]
    stay = [_same(a, b) for a, b in ((one.arms, other.arms), (one.legs, other.legs))]
    if all(stay) or not _same([(*one.trunk, one.head)], [(*seen.trunk, seen.head)]):
        return False
    return all(e or (s and not front) for e, s in zip(exchanged, stay, strict=True))


def _mirrored(body: Skeleton) -> Skeleton:
    def limb(points: Limb) -> Limb:
        return tuple(Point(2 * MIDDLE - at.x, at.y) for at in points)

    (head,) = limb((body.head,))
    arms, legs = [limb(arm) for arm in body.arms], [limb(leg) for leg in body.legs]
    return Skeleton(limb(body.trunk), head, (arms[0], arms[1]), (legs[0], legs[1]))


def _same(limbs: tuple[Limb, ...] | list[Limb], others: tuple[Limb, ...] | list[Limb]) -> bool:
    return all(
        a.far_from(b) < SAME
        for limb, other in zip(limbs, others, strict=True)
        for a, b in zip(limb, other, strict=True)
    )
