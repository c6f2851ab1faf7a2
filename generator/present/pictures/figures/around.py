"""What stands around a body: floor, wall, rug, and a firm chair with its back to the wall."""

from __future__ import annotations

from typing import assert_never

from generator.model.pose import Pose, Support, View
from generator.present.pictures.figures.point import Point, line, number
from generator.present.pictures.figures.skeleton import (
    FLOOR,
    LEG,
    MIDDLE,
    SEAT,
    SEAT_MIDDLE,
    WALL,
)

LINE = 2.0
"""How thick floor, wall and chair are drawn."""

GROUND = FLOOR + LINE / 2
LEFT, RIGHT, TOP = 4.0, 116.0, 8.0
CHAIR_BACK, CHAIR_FRONT = 17.0, 10.0
"""From the hips to the back of a seat and to its front, seen from the side."""

BEHIND_CHAIR = 4.0
"""From a chair's back to the wall behind it."""

HAND_TO_WALL = 4.5
"""From the middle of a hand to the wall it lies on."""


def around(pose: Pose) -> str:
    """Return the drawing of what holds a body up, and of what stands behind it."""
    seat, thick = "", ""
    match pose.support:
        case Support.FLOOR:
            lines = ""
        case Support.RUG:
            lines, thick = "", line((Point(9, GROUND), Point(111, GROUND)))
        case Support.WALL:
            lines = _wall(WALL + HAND_TO_WALL + pose.shift)
        case Support.CHAIR if pose.view is View.FRONT:
            lines, seat = _chair_front()
        case Support.CHAIR | Support.CHAIR_BEHIND:
            lines, seat = _chair_side(pose)
        case _:
            assert_never(pose.support)
    floor = line((Point(LEFT, GROUND), Point(RIGHT, GROUND)))
    return (
        f'<g class="figure-prop" stroke="currentColor"><path stroke-width="{number(LINE)}" d="{floor}{lines}"/>'
        + (f'<path stroke-width="3" d="{seat}"/>' if seat else "")
        + (f'<path stroke-width="4" d="{thick}"/>' if thick else "")
        + "</g>"
    )


def wall_behind(pose: Pose) -> float:
    """Where the wall stands behind a chair that is seen from the side."""
    return SEAT_MIDDLE + pose.shift - CHAIR_BACK - BEHIND_CHAIR


def _wall(at: float) -> str:
    return line((Point(at, TOP), Point(at, GROUND)))


def _chair_side(pose: Pose) -> tuple[str, str]:
    """Return the wall, and a chair whose back touches it."""
    middle = SEAT_MIDDLE + pose.shift
    back, front = middle - CHAIR_BACK, middle + CHAIR_FRONT
    seat = SEAT[View.SIDE] + LEG / 2 + 1.5
    chair = line((Point(back, seat - 33), Point(back, GROUND - 1))) + line(
        (Point(back, seat), Point(front, seat), Point(front, GROUND - 1))
    )
    return _wall(wall_behind(pose)), chair


def _chair_front() -> tuple[str, str]:
    """Return the foot of the wall, and a chair of which back and legs stand beside the body."""
    seat, left, right = SEAT[View.FRONT] + 5, MIDDLE - 17, MIDDLE + 17
    foot = GROUND - 12
    wall = line((Point(LEFT, foot), Point(left - 3, foot))) + line(
        (Point(right + 3, foot), Point(RIGHT, foot))
    )
    legs = line((Point(left, seat), Point(left, GROUND - 1))) + line(
        (Point(right, seat), Point(right, GROUND - 1))
    )
    rest = line(
        (
            Point(left + 3, seat),
            Point(left + 3, seat - 33),
            Point(right - 3, seat - 33),
            Point(right - 3, seat),
        )
    )
    return wall, legs + rest + line((Point(left, seat), Point(right, seat)))
