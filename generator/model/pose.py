"""One moment of a move, told as the directions of a body's limbs."""

from __future__ import annotations

from enum import StrEnum

from generator.model.base import Frozen

Arm = tuple[int, int]
"""Directions of upper arm and forearm, in degrees."""

Leg = tuple[int, int]
"""Directions of thigh and shin, in degrees."""


class View(StrEnum):
    """Where the viewer stands."""

    FRONT = "front"
    SIDE = "side"


class Support(StrEnum):
    """What holds the body, and what is drawn beside it."""

    FLOOR = "floor"
    CHAIR = "chair"
    CHAIR_BEHIND = "chair behind"
    RUG = "rug"
    WALL = "wall"


class Hold(StrEnum):
    """What the hands hold."""

    NOTHING = "nothing"
    BOTTLES = "bottles"
    ROPE_OVERHEAD = "rope overhead"
    ROPE_BELOW = "rope below"


class Pose(Frozen):
    """Limb directions in degrees: 0 hangs straight down, 90 points to the viewer's right.

    Then 180 points up and -90 to the viewer's left. From the side the body faces
    the viewer's right, so a knee bends with its shin at a smaller angle than its
    thigh and an elbow with its forearm at a larger angle than its upper arm.
    In each pair the first limb is the far one (from the front: the viewer's left).
    """

    view: View
    """Where the viewer stands."""

    support: Support = Support.FLOOR
    """What holds the body: the floor, a rug on it, a chair, or the floor and a wall."""

    hold: Hold = Hold.NOTHING
    """What both hands hold; a rope is make-believe, and drawn so that its turning shows."""

    lean: int = 0
    """Degrees of the trunk from upright, positive to the viewer's right."""

    bend: int = 0
    """Degrees that the trunk above the waist leans more than below it, positive to the viewer's right."""

    head: int = 0
    """Degrees of neck and head from the line of the upper trunk, positive to the viewer's right."""

    arms: tuple[Arm, Arm]
    """Directions of upper arm and forearm, in degrees, for both arms."""

    legs: tuple[Leg, Leg]
    """Directions of thigh and shin, in degrees, for both legs."""

    feet: tuple[int, int] | None = None
    """Directions from heel to toes, in degrees; left out: flat on the floor."""

    shift: int = 0
    """Drawing units to the viewer's right of where the body would otherwise stand."""

    lift: int = 0
    """Drawing units above the floor, for the top of a jump."""
