"""The limb directions of a pose as fractions of degrees, also of a body between two poses."""

from __future__ import annotations

from dataclasses import dataclass

from generator.model.pose import Pose, View

Pair = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Directions:
    """Degrees as in a pose, which may be fractions."""

    lean: float
    """Of the trunk below the waist, from upright."""

    chest: float
    """Of the trunk above the waist, from upright."""

    head: float
    """Of neck and head, from the line of the chest."""

    arms: tuple[Pair, Pair]
    """Upper arm and forearm, of both arms."""

    legs: tuple[Pair, Pair]
    """Thigh and shin, of both legs."""

    feet: Pair
    """From heel to toes, of both feet."""


def directions(pose: Pose) -> Directions:
    """Return the directions of a pose, with those of feet that it leaves flat on the floor."""
    return Directions(
        lean=pose.lean,
        chest=pose.lean + pose.bend,
        head=pose.head,
        arms=pose.arms,
        legs=pose.legs,
        feet=pose.feet or flat_feet(pose.view),
    )


def flat_feet(view: View) -> tuple[int, int]:
    """Return the directions of two feet flat on the floor, in degrees."""
    return (90, 90) if view is View.SIDE else (-80, 80)


def mixed(first: Directions, second: Directions, share: float) -> Directions:
    """Return the directions at a share of the way from the first to the second."""

    def of(start: float, end: float) -> float:
        return start + (end - start) * share

    def pair(start: Pair, end: Pair) -> Pair:
        return of(start[0], end[0]), of(start[1], end[1])

    return Directions(
        lean=of(first.lean, second.lean),
        chest=of(first.chest, second.chest),
        head=of(first.head, second.head),
        arms=(pair(first.arms[0], second.arms[0]), pair(first.arms[1], second.arms[1])),
        legs=(pair(first.legs[0], second.legs[0]), pair(first.legs[1], second.legs[1])),
        feet=pair(first.feet, second.feet),
    )
