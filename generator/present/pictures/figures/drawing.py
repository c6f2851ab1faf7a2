"""A pose as an SVG figure of round-ended strokes with a plum for a head."""

from __future__ import annotations

from functools import lru_cache
from typing import assert_never

from generator.model.pose import Hold, Pose, Support, View
from generator.present.pictures.figures.skeleton import (
    FLOOR,
    MIDDLE,
    SEAT,
    SEAT_MIDDLE,
    WALL,
    Limb,
    Point,
    Skeleton,
    skeleton,
)

VIEW_BOX = "0 0 120 128"
STROKE = 6
GROUND = FLOOR + STROKE / 2 + 1
"""Height of the floor line, just under the round ends of the strokes."""

PLUM = "M-1-10C5-10.5 9-6.5 8.5-.5 8 6 4.5 10 .5 10-4.5 10-8.5 6-8.5 0-8.5-6-5.5-9.5-1-10z"
STEM = "M-.5-9l1.5-4.5"


@lru_cache(maxsize=512)  # most lessons ask for the same moves
def figure(pose: Pose) -> str:
    """Return one figure as SVG, hidden from assistive technology: the text beside it says it all."""
    body = skeleton(pose)
    far, near = _strokes(pose.view, body)
    if pose.hold is Hold.BOTTLES:
        near += _bottles(body)
    return (
        f'<svg class="figure" viewBox="{VIEW_BOX}" aria-hidden="true" fill="none" stroke="currentColor"'
        f' stroke-width="{STROKE}" stroke-linecap="round" stroke-linejoin="round">'
        f'<path class="figure-prop" stroke-width="2" d="{_prop(pose, body)}"/>'
        + (f'<path class="figure-far" opacity=".5" d="{far}"/>' if far else "")
        + f'<path d="{near}"/>{_head(pose, body.head)}</svg>'
    )


def _strokes(view: View, body: Skeleton) -> tuple[str, str]:
    """Return the far limbs, drawn paler from the side, and all the rest."""
    hips, shoulders = body.trunk
    if view is View.SIDE:
        far = _line(body.arms[0]) + _line(body.legs[0])
        return far, _line((*reversed(body.arms[1]), *body.legs[1]))
    arms = _line((*reversed(body.arms[0]), shoulders, *body.arms[1]))
    legs = _line((*reversed(body.legs[0]), hips, *body.legs[1]))
    return "", arms + legs + _line(body.trunk)


def _bottles(body: Skeleton) -> str:
    """Return two short bars across the hands, each at a right angle to its forearm."""
    bars = []
    for _, elbow, hand in body.arms:
        across, down = (hand.y - elbow.y) / 3, (elbow.x - hand.x) / 3
        bars.append(_line((hand.moved(-across, -down), hand.moved(across, down))))
    return "".join(dict.fromkeys(bars))


def _head(pose: Pose, middle: Point) -> str:
    turn = pose.lean + pose.head
    place = f"translate({_number(middle.x)} {_number(middle.y)})" + (
        f"rotate({turn})" if turn else ""
    )
    return (
        f'<g class="figure-head" transform="{place}"><path stroke="none" fill="currentColor" d="{PLUM}"/>'
        f'<path stroke-width="2.5" d="{STEM}"/></g>'
    )


def _prop(pose: Pose, body: Skeleton) -> str:
    floor = _line((Point(4, GROUND), Point(116, GROUND)))
    match pose.support:
        case Support.FLOOR:
            return floor
        case Support.WALL:
            wall = WALL + STROKE / 2 + 1 + pose.shift
            return floor + _line((Point(wall, 8), Point(wall, GROUND)))
        case Support.CHAIR if pose.view is View.FRONT:
            return floor + _chair_front(body.trunk[0].y + STROKE / 2 + 1)
        case Support.CHAIR:
            return floor + _chair_side(SEAT_MIDDLE + pose.shift, body.trunk[0].y + STROKE / 2 + 1)
        case Support.CHAIR_BEHIND:
            return floor + _chair_side(SEAT_MIDDLE + pose.shift, SEAT[View.SIDE] + STROKE / 2 + 1)
        case _:
            assert_never(pose.support)


def _chair_side(middle: float, seat: float) -> str:
    back, front = middle - 11, middle + 13
    return _line((Point(back - 2, seat - 30), Point(back, seat), Point(back, GROUND))) + _line(
        (Point(back, seat), Point(front, seat), Point(front, GROUND))
    )


def _chair_front(seat: float) -> str:
    left, right = MIDDLE - 15, MIDDLE + 15
    return _line(
        (Point(left, GROUND), Point(left, seat - 30), Point(right, seat - 30), Point(right, GROUND))
    ) + _line((Point(left, seat), Point(right, seat)))


def _line(points: Limb) -> str:
    """Return a path through points, leaving out those that repeat."""
    places = [f"{_number(point.x)} {_number(point.y)}" for point in points]
    kept = [place for i, place in enumerate(places) if i == 0 or place != places[i - 1]]
    return "M" + kept[0] + "L" + " ".join(kept[1:])


def _number(value: float) -> str:
    """Return at most one decimal, without a trailing zero: the bytes of a page count."""
    return f"{value:.1f}".removesuffix(".0")
