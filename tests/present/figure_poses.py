"""Every pose of the library's moves, and what tests of their figures look at."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from pathlib import Path

import yaml

from generator.model.move import Moves
from generator.model.pose import Pose, View
from generator.present.pictures.figures.dotted import dotted_ways
from generator.present.pictures.figures.point import Point, number
from generator.present.pictures.figures.skeleton import (
    FLOOR,
    LEG,
    Skeleton,
)

FILE = Path(__file__).parents[2] / "site_data" / "moves.yaml"
HELD = yaml.safe_load(FILE.read_text(encoding="utf-8"))
MOVES = Moves.model_validate_json(
    json.dumps({key: HELD[key] for key in ("sources", "moves")})
).moves
POSES = {
    f"{name}-{number}": pose
    for name, move in MOVES.items()
    for number, pose in enumerate(move.poses + move.seated_poses)
}
PAIRS = {
    f"{name}{which}": poses
    for name, move in MOVES.items()
    for which, poses in (("", move.poses), (", seated", move.seated_poses))
}
FOOT = FLOOR - LEG / 2
"""Height of the middle of a foot that stands on the floor."""
SVG = "{http://www.w3.org/2000/svg}"


def each_pose(rule: Callable[[Pose], None]) -> Callable[[], None]:
    """One test of a rule over all poses, which names every pose that breaks it."""

    def of_every_pose() -> None:
        broken = {}
        for name, pose in POSES.items():
            try:
                rule(pose)
            except AssertionError as error:
                broken[name] = str(error)
        assert broken == {}

    of_every_pose.__name__, of_every_pose.__doc__ = rule.__name__, rule.__doc__
    return of_every_pose


def drawn(path: str) -> list[list[tuple[float, float]]]:
    """The polylines of a path."""
    return [
        [(float(x), float(y)) for x, y in re.findall(r"(-?[\d.]+) (-?[\d.]+)", line)]
        for line in path.split("M")[1:]
    ]


def place(point: Point) -> str:
    """A point as it stands in a path."""
    return " ".join(number(value) for value in (point.x, point.y))


def parts(body: Skeleton) -> dict[str, list[Point]]:
    """Where what can have a way is."""
    return {
        "hand": [arm[-1] for arm in body.arms],
        "foot": [leg[2] for leg in body.legs],
        "head": [body.head],
        "hips": [body.trunk[0]],
    }


def dotted(first: Pose, second: Pose) -> str:
    """The path of the dots; nothing where there are none."""
    return "".join(re.findall(r'stroke-dasharray="[^"]*" d="([^"]*)"', dotted_ways(first, second)))


def exchanged(first: Pose, second: Pose) -> bool:
    """Whether the sides have just changed places: the numbers of the poses say so too."""
    sign = -1 if first.view is View.FRONT else 1
    arms, legs = ([(sign * a, sign * b) for a, b in pair] for pair in (second.arms, second.legs))
    trunk = tuple(sign * angle for angle in (second.lean, second.bend, second.head))
    if trunk != (first.lean, first.bend, first.head) or first.lift != second.lift:
        return False
    crossed = (arms == [*first.arms[::-1]], legs == [*first.legs[::-1]])
    stay = (second.arms == first.arms, second.legs == first.legs)
    from_the_side = first.view is View.SIDE
    return not all(stay) and all(
        cross or (same and from_the_side) for cross, same in zip(crossed, stay, strict=True)
    )
