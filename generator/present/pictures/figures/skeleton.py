"""Where every joint of a pose is on the drawing, from limb directions and limb lengths."""

from __future__ import annotations

from dataclasses import dataclass
from typing import assert_never

from generator.model.pose import Pose, Support, View
from generator.present.pictures.figures.directions import Directions, directions, mixed
from generator.present.pictures.figures.point import Limb, Point

THIGH, SHIN, TRUNK, NECK, UPPER_ARM, FOREARM = 23.0, 23.0, 30.0, 15.0, 15.5, 15.5
"""Limb lengths in drawing units; neck reaches from the shoulders to the middle of the head."""

FOOT = {View.SIDE: 9.0, View.FRONT: 5.0}
"""Length of a foot in drawing units; from the front it points mostly at the viewer."""

SHOULDER = {View.SIDE: 0.0, View.FRONT: 8.0}
HIP = {View.SIDE: 0.0, View.FRONT: 4.5}
"""Half the width between shoulders and between hips, in drawing units."""

THIGH_TOWARD_VIEWER = 10.0
"""Length of a thigh as seen from the front when the body sits, in drawing units."""

LEG, ARM, SHIRT = 7.0, 5.5, 12.0
"""How thick a leg, an arm and a shirt from the side are drawn."""

FLOOR, MIDDLE, SEAT_MIDDLE, WALL = 124.0, 60.0, 50.0, 101.0
"""Top of the floor; where a body stands, where it sits, and where hands meet the wall."""

SEAT = {View.SIDE: FLOOR - LEG / 2 - SHIN, View.FRONT: FLOOR - LEG / 2 - SHIN - 9}
"""Height of sitting hips: seen from the front a little from above, so the thighs show."""


@dataclass(frozen=True, slots=True)
class Skeleton:
    """All joints of one body."""

    trunk: Limb
    """Middle of the hips, waist, middle of the shoulders."""

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

    def lowest(self) -> float:
        """Return how far down the body reaches, limbs and shirt as thick as they are drawn."""
        arms = [joint.y + ARM / 2 for arm in self.arms for joint in arm]
        legs = [joint.y + LEG / 2 for leg in self.legs for joint in leg]
        return max(*arms, *legs, *(joint.y + SHIRT / 2 for joint in self.trunk))


def skeleton(pose: Pose) -> Skeleton:
    """Place a pose on the drawing: standing on the floor, or sitting on the seat."""
    body = _unplaced(pose, directions(pose))
    return body.moved(*_place(pose, body))


def between(first: Pose, second: Pose, share: float) -> Skeleton:
    """Return the body on its way from one pose to another: 0 is the first, 1 the second.

    Limbs turn by the numbers of their directions, so 170 goes to -170 by way of 0, and to
    190 by way of 180: who writes a pose says in this way which way round a limb goes.
    """
    body = _unplaced(second, mixed(directions(first), directions(second), share))
    start = Point(*_place(first, _unplaced(first, directions(first))))
    end = Point(*_place(second, _unplaced(second, directions(second))))
    place = start.on_the_way_to(end, share)
    return body.moved(place.x, place.y)


def _place(pose: Pose, body: Skeleton) -> tuple[float, float]:
    """Return how far to the right and down a body goes to where its pose is held up."""
    if pose.support is Support.CHAIR:
        down = SEAT[pose.view] - pose.lift - body.trunk[0].y
    else:
        down = FLOOR - pose.lift - body.lowest()
    return _across(pose, body) + pose.shift, down


def _across(pose: Pose, body: Skeleton) -> float:
    match pose.support:
        case Support.CHAIR:
            return (SEAT_MIDDLE if pose.view is View.SIDE else MIDDLE) - body.trunk[0].x
        case Support.WALL:
            return WALL - max(arm[-1].x for arm in body.arms)
        case Support.CHAIR_BEHIND:
            return SEAT_MIDDLE + THIGH - _standing_at(body)
        case Support.FLOOR | Support.RUG:
            return MIDDLE - _standing_at(body)
        case _:
            assert_never(pose.support)


def _unplaced(pose: Pose, turned: Directions) -> Skeleton:
    hips = Point(0, 0)
    waist = hips.toward(180 - turned.lean, TRUNK / 2)
    shoulders = waist.toward(180 - turned.chest, TRUNK / 2)
    return Skeleton(
        trunk=(hips, waist, shoulders),
        head=shoulders.toward(180 - turned.chest - turned.head, NECK),
        arms=(_arm(pose, turned, 0, shoulders), _arm(pose, turned, 1, shoulders)),
        legs=(_leg(pose, turned, 0, hips), _leg(pose, turned, 1, hips)),
    )


def _arm(pose: Pose, turned: Directions, side: int, shoulders: Point) -> Limb:
    upper, fore = turned.arms[side]
    shoulder = shoulders.toward(_outward(side) - turned.chest, SHOULDER[pose.view])
    elbow = shoulder.toward(upper, UPPER_ARM)
    return shoulder, elbow, elbow.toward(fore, FOREARM)


def _leg(pose: Pose, turned: Directions, side: int, hips: Point) -> Limb:
    thigh, shin = turned.legs[side]
    toward_viewer = pose.view is View.FRONT and pose.support is Support.CHAIR
    hip = hips.toward(_outward(side) - turned.lean * (not toward_viewer), HIP[pose.view])
    knee = hip.toward(thigh, THIGH_TOWARD_VIEWER if toward_viewer else THIGH)
    ankle = knee.toward(shin, SHIN)
    return hip, knee, ankle, ankle.toward(turned.feet[side], FOOT[pose.view])


def _outward(side: int) -> int:
    return 90 if side else -90


def _standing_at(body: Skeleton) -> float:
    lowest = max(leg[-1].y for leg in body.legs)
    ankles = [leg[2].x for leg in body.legs if max(leg[2].y, leg[3].y) > lowest - 3]
    return sum(ankles) / len(ankles)
