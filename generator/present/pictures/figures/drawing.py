"""A pose as an SVG figure: a body with a shirt and a plum for a head, and the way it came."""

from __future__ import annotations

from functools import lru_cache

from generator.model.pose import Pose
from generator.present.pictures.figures.around import around
from generator.present.pictures.figures.body import body
from generator.present.pictures.figures.dotted import dotted_ways
from generator.present.pictures.figures.held import held
from generator.present.pictures.figures.skeleton import skeleton

VIEW_BOX = "0 0 120 128"


@lru_cache(maxsize=512)  # most lessons ask for the same moves
def figure(pose: Pose, before: Pose | None = None) -> str:
    """Return one figure as SVG, hidden from assistive technology: the text beside it says it all.

    With the pose ``before`` it, what moved from there to here is drawn as dotted ways.
    """
    joints = skeleton(pose)
    way = dotted_ways(before, pose) if before else ""
    return (
        f'<svg class="figure" viewBox="{VIEW_BOX}" aria-hidden="true" fill="none" stroke="currentColor"'
        ' stroke-linecap="round" stroke-linejoin="round">'
        + around(pose)
        + body(pose, joints, held(pose, joints), way)
        + "</svg>"
    )


def figures(poses: tuple[Pose, ...]) -> tuple[str, ...]:
    """Return the figures of a move's moments, the second with the ways from the first."""
    return tuple(figure(pose, poses[i - 1] if i else None) for i, pose in enumerate(poses))
