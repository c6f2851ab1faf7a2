"""Where every joint of a pose is on the drawing, from limb directions and limb lengths."""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, radians, sin
from typing import assert_never

from generator.model.pose import Pose, Support, View

THIGH, SHIN, TRUNK, NECK, UPPER_ARM, FOREARM = 23.0, 23.0, 30.0, 15.0, 15.5, 15.5
"""Limb lengths in drawing units; neck reaches from the shoulders to the middle of the head."""

FOOT = {View.SIDE: 8.0, View.FRONT: 4.5}
"""Length of a foot in drawing units; from the front it points mostly at the viewer."""

SHOULDER = {View.SIDE: 0.0, View.FRONT: 6.5}
HIP = {View.SIDE: 0.0, View.FRONT: 3.5}
"""Half the width between shoulders and between hips, in drawing units."""

THIGH_TOWARD_VIEWER = 10.0
"""Length of a thigh as seen from the front when the body sits, in drawing units."""

FLOOR, MIDDLE, SEAT_MIDDLE, WALL = 122.0, 60.0, 48.0, 101.0
"""Height of the floor; where a body stands, where it sits, and where hands meet the wall."""

SEAT = {View.SIDE: FLOOR - SHIN, View.FRONT: FLOOR - SHIN - 9}
"""Height of sitting hips: seen from the front a little from above, so the thighs show."""


@dataclass(frozen=True)
class Point:
    """A place on the drawing."""

    x: float
    """Drawing units from the left edge."""

    y: float
    """Drawing units from the top edge."""

    def toward(self, degrees: float, length: float) -> Point:
        """Return the point at a length in a direction (0 down, 90 to the right)."""
        return Point(
            self.x + length * sin(radians(degrees)), self.y + length * cos(radians(degrees))
        )

    def moved(self, x: float, y: float) -> Point:
        """Return the point moved right by x and down by y."""
        return Point(self.x + x, self.y + y)


Limb = tuple[Point, ...]


@dataclass(frozen=True)
class Skeleton:
    """All joints of one body."""

    trunk: Limb
    """Middle of the hips, middle of the shoulders."""

    head: Point
    """Middle of the head."""

    arms: tuple[Limb, Limb]
    """Shoulder, elbow and hand of each arm."""

    legs: tuple[Limb, Limb]
    """Hip, knee, ankle and toes of each leg."""

    def moved(self, x: float, y: float) -> Skeleton:
        """Return the whole body moved right by x and down by y."""

        def limb(points: Limb) -> Limb:
            return tuple(point.moved(x, y) for point in points)

        return Skeleton(
            trunk=limb(self.trunk),
            head=self.head.moved(x, y),
            arms=(limb(self.arms[0]), limb(self.arms[1])),
            legs=(limb(self.legs[0]), limb(self.legs[1])),
        )

    def joints(self) -> tuple[Point, ...]:
        """Return every joint but the head."""
        return (*self.trunk, *self.arms[0], *self.arms[1], *self.legs[0], *self.legs[1])


def skeleton(pose: Pose) -> Skeleton:
    """Place a pose on the drawing: standing on the floor, or sitting on the seat."""
    body = _unplaced(pose)
    if pose.support is Support.CHAIR:
        down = SEAT[pose.view] - body.trunk[0].y
    else:
        down = FLOOR - pose.lift - max(joint.y for joint in body.joints())
    match pose.support:
        case Support.CHAIR:
            across = (SEAT_MIDDLE if pose.view is View.SIDE else MIDDLE) - body.trunk[0].x
        case Support.WALL:
            across = WALL - max(arm[-1].x for arm in body.arms)
        case Support.CHAIR_BEHIND:
            across = SEAT_MIDDLE + THIGH - _standing_at(body)
        case Support.FLOOR:
            across = MIDDLE - _standing_at(body)
        case _:
            assert_never(pose.support)
    return body.moved(across + pose.shift, down)


def flat_feet(view: View) -> tuple[int, int]:
    """Return the directions of two feet flat on the floor, in degrees."""
    return (90, 90) if view is View.SIDE else (-80, 80)


def _unplaced(pose: Pose) -> Skeleton:
    hips = Point(0, 0)
    shoulders = hips.toward(180 - pose.lean, TRUNK)
    return Skeleton(
        trunk=(hips, shoulders),
        head=shoulders.toward(180 - pose.lean - pose.head, NECK),
        arms=(_arm(pose, 0, shoulders), _arm(pose, 1, shoulders)),
        legs=(_leg(pose, 0, hips), _leg(pose, 1, hips)),
    )


def _arm(pose: Pose, side: int, shoulders: Point) -> Limb:
    upper, fore = pose.arms[side]
    shoulder = shoulders.toward(_outward(side) - pose.lean, SHOULDER[pose.view])
    elbow = shoulder.toward(upper, UPPER_ARM)
    return shoulder, elbow, elbow.toward(fore, FOREARM)


def _leg(pose: Pose, side: int, hips: Point) -> Limb:
    thigh, shin = pose.legs[side]
    toward_viewer = pose.view is View.FRONT and pose.support is Support.CHAIR
    hip = hips.toward(_outward(side) - pose.lean * (not toward_viewer), HIP[pose.view])
    knee = hip.toward(thigh, THIGH_TOWARD_VIEWER if toward_viewer else THIGH)
    ankle = knee.toward(shin, SHIN)
    foot = (pose.feet or flat_feet(pose.view))[side]
    return hip, knee, ankle, ankle.toward(foot, FOOT[pose.view])


def _outward(side: int) -> int:
    return 90 if side else -90


def _standing_at(body: Skeleton) -> float:
    lowest = max(leg[-1].y for leg in body.legs)
    ankles = [leg[2].x for leg in body.legs if max(leg[2].y, leg[3].y) > lowest - 3]
    return sum(ankles) / len(ankles)
