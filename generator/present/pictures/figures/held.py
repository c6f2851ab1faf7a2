"""What hands hold: a bottle in each, or the two ends of one rope."""

from __future__ import annotations

from typing import assert_never

from generator.model.pose import Hold, Pose
from generator.present.pictures.figures.point import Point, number
from generator.present.pictures.figures.skeleton import FLOOR, Skeleton

BOTTLE = "m4-3v10.5h-8v-10.5q0-3 2.5-4.5v-2h3v2q2.5 1.5 2.5 4.5zm-5.6-9.7h3.2"
"""A small bottle from the middle of a hand: body, shoulders, neck, and a cap apart from it."""

ROPE_OVER_HEAD = 26.0
"""How far above the middle of the head a rope swings."""

ROPE_LOW = FLOOR - 1
"""How far down a rope swings that passes below the feet."""


def held(pose: Pose, joints: Skeleton) -> str:
    """Return the drawing of what both hands hold."""
    hands = tuple(arm[-1] for arm in joints.arms)
    match pose.hold:
        case Hold.NOTHING:
            return ""
        case Hold.BOTTLES:
            shapes = "".join(dict.fromkeys(_bottle(hand) for hand in hands))
            return (
                '<path class="figure-prop" fill="currentColor" stroke="currentColor" stroke-width="1.5"'
                f' d="{shapes}"/>'
            )
        case Hold.ROPE_OVERHEAD | Hold.ROPE_BELOW:
            turn = joints.head.y - ROPE_OVER_HEAD if pose.hold is Hold.ROPE_OVERHEAD else ROPE_LOW
            return (
                f'<path class="figure-prop" stroke="currentColor" stroke-width="1.8"'
                f' d="{_rope(hands[0], hands[1], turn)}"/>'
            )
        case _:
            assert_never(pose.hold)


def _bottle(hand: Point) -> str:
    return f"M{number(hand.x)} {number(hand.y)}{BOTTLE}"


def _rope(left: Point, right: Point, turn: float) -> str:
    """Return a curve from hand to hand whose middle is at a height.

    A cubic whose two inner points are at one height passes a quarter of the way from there
    to its ends (Bernstein polynomials at one half: 1/8, 3/8, 3/8, 1/8).
    """
    ends = (left.y + right.y) / 2
    inner = ends + (turn - ends) * 4 / 3
    return (
        f"M{number(left.x)} {number(left.y)}C{number(left.x - 16)} {number(inner)}"
        f" {number(right.x + 16)} {number(inner)} {number(right.x)} {number(right.y)}"
    )
