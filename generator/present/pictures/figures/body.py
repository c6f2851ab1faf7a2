"""A body on the drawing: far limbs, legs, shirt, a plum for a head, and arms with what they hold."""

from __future__ import annotations

from itertools import pairwise
from math import atan2, degrees

from generator.model.pose import Pose, View
from generator.present.pictures.figures.point import Limb, Point, line, number
from generator.present.pictures.figures.skeleton import ARM, LEG, Skeleton
from generator.present.pictures.plums.plum import Plum

ROUND = 3.0
"""How thick the round edge of a shirt is."""

WIDTHS = {View.SIDE: (5.5, 5.0, 5.5), View.FRONT: (7.0, 7.5, 10.0)}
"""Half of a shirt's width at hips, waist and shoulders, without its edge."""

HAND = 3.4
"""Half the width of a hand."""

HEAD = Plum(0, -10, 2 / 3).path
"""A plum of a head's size, its middle at 0, 0."""
NOSE = "M8 .5h1.4"
"""Seen from the side: it says which way a body looks, also where it lies."""


def body(pose: Pose, joints: Skeleton, held: str, way: str) -> str:
    """Return the drawing of a body, from the far limbs to the hands in front of what they hold.

    The way it came lies before the far limbs, which are pale, and behind all the rest.
    """
    side = pose.view is View.SIDE
    far, near = ((0,), (1,)) if side else ((), (0, 1))
    return (
        (
            f'<g opacity=".45">{_legs(joints, far)}{_arms(joints, far)}{_hands(joints, far)}</g>'
            if far
            else ""
        )
        + way
        + _legs(joints, near)
        + _neck(joints)
        + _shirt(pose.view, joints.trunk)
        + _head(pose, joints.head)
        + _arms(joints, near)
        + held
        + _hands(joints, near)
    )


def _legs(joints: Skeleton, which: tuple[int, ...]) -> str:
    limbs = "".join(line(joints.legs[leg]) for leg in which)
    return f'<path stroke-width="{number(LEG)}" d="{limbs}"/>'


def _arms(joints: Skeleton, which: tuple[int, ...]) -> str:
    limbs = "".join(line(joints.arms[arm]) for arm in which)
    return f'<path stroke-width="{number(ARM)}" d="{limbs}"/>'


def _hands(joints: Skeleton, which: tuple[int, ...]) -> str:
    hands = "".join(line(joints.arms[arm][-1:]) for arm in which)
    return f'<path class="figure-head" stroke="currentColor" stroke-width="{number(2 * HAND)}" d="{hands}"/>'


def _shirt(view: View, trunk: Limb) -> str:
    """Return the shirt: as wide on both sides of the trunk's line as it is there."""
    edges = [
        (at.toward(across, width), at.toward(across + 180, width))
        for at, across, width in zip(trunk, _across(trunk), WIDTHS[view], strict=True)
    ]
    outline = [left for left, _ in edges] + [right for _, right in reversed(edges)]
    return (
        f'<path class="figure-shirt" fill="currentColor" stroke="currentColor"'
        f' stroke-width="{number(ROUND)}" d="{line(outline, closed=True)}"/>'
    )


def _across(trunk: Limb) -> list[float]:
    """Return the direction across the trunk at hips, waist and shoulders."""
    lower, upper = (
        degrees(atan2(to.x - start.x, to.y - start.y)) % 360 for start, to in pairwise(trunk)
    )
    return [lower - 90, (lower + upper) / 2 - 90, upper - 90]


def _neck(joints: Skeleton) -> str:
    return (
        f'<path class="figure-head" stroke="currentColor" stroke-width="5.5"'
        f' d="{line((joints.trunk[-1], joints.head))}"/>'
    )


def _head(pose: Pose, middle: Point) -> str:
    turn = pose.lean + pose.bend + pose.head
    place = f"translate({number(middle.x)} {number(middle.y)})" + (
        f"rotate({turn})" if turn else ""
    )
    nose = f'<path stroke-width="3.5" d="{NOSE}"/>' if pose.view is View.SIDE else ""
    return (
        f'<g class="figure-head" stroke="currentColor" transform="{place}"><path stroke="none" fill="currentColor"'
        f' d="{HEAD}"/>{nose}</g>'
    )
