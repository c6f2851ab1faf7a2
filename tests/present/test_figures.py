"""Figures are people: limbs keep their length, joints bend the right way, bodies are held up."""

from __future__ import annotations

import re
from itertools import pairwise
from math import dist
from xml.etree import ElementTree as ET

import pytest

from generator.model.pose import Pose, Support, View
from generator.present.pictures.figures import figure
from generator.present.pictures.figures.around import GROUND
from generator.present.pictures.figures.directions import flat_feet
from generator.present.pictures.figures.point import Limb, Point
from generator.present.pictures.figures.skeleton import (
    ARM,
    FLOOR,
    SHIRT,
    skeleton,
)
from tests.present.figure_poses import (
    FOOT,
    MOVES,
    SVG,
    drawn,
    each_pose,
    place,
)


def lengths(limb: Limb) -> list[float]:
    return [round(dist((a.x, a.y), (b.x, b.y)), 6) for a, b in pairwise(limb)]


def bend(upper: int, lower: int) -> int:
    """Degrees from one direction to another, the short way round."""
    return (lower - upper + 180) % 360 - 180


@each_pose
def test_limbs_keep_their_length(pose: Pose) -> None:
    body = skeleton(pose)
    thigh = 10 if (pose.view, pose.support) == (View.FRONT, Support.CHAIR) else 23
    foot = 9 if pose.view is View.SIDE else 5
    assert [lengths(arm) for arm in body.arms] == [[15.5, 15.5]] * 2
    assert [lengths(leg) for leg in body.legs] == [[thigh, 23, foot]] * 2
    assert lengths((*body.trunk, body.head)) == [15, 15, 15]


def march() -> str:
    """The march without its far limbs."""
    return figure(MOVES["march"].poses[0]).partition('opacity=".45"')[2].partition("</g>")[2]


def sizes(path: str) -> list[float]:
    [line] = drawn(path)
    return [dist(a, b) for a, b in pairwise(line)]


def test_the_drawing_keeps_the_lengths_too() -> None:
    """Near leg and near arm of a march, to the rounding of one decimal."""
    paths = dict(re.findall(r'stroke-width="(7|5.5)" d="([^"]*)"', march()))
    assert sizes(paths["7"]) == pytest.approx([23, 23, 9], abs=0.15)
    assert sizes(paths["5.5"]) == pytest.approx([15.5, 15.5], abs=0.15)


@each_pose
def test_the_head_is_joined(pose: Pose) -> None:
    """The neck goes from the shoulders, inside of the shirt, to the middle of the head."""
    body = skeleton(pose)
    neck = f"M{place(body.trunk[-1])}L{place(body.head)}"
    assert neck in figure(pose)
    assert f'transform="translate({place(body.head)})' in figure(pose)
    assert dist((body.head.x, body.head.y), (body.trunk[-1].x, body.trunk[-1].y)) == pytest.approx(
        15
    )


@each_pose
def test_something_holds_the_body(pose: Pose) -> None:
    body = skeleton(pose)
    feet = [max(leg[2].y, leg[3].y) for leg in body.legs]
    if pose.support is Support.CHAIR:
        seat = 97.5 if pose.view is View.SIDE else 88.5
        assert body.trunk[0].y == pytest.approx(seat), "the seat is under the hips"
        assert max(feet) == pytest.approx(FOOT, abs=4), "a foot is on the floor"
    else:
        assert max(feet) == pytest.approx(FOOT - pose.lift, abs=2.5), (
            "a foot is on the floor, or both are in the air"
        )


@each_pose
def test_nothing_sinks_into_the_floor(pose: Pose) -> None:
    body = skeleton(pose)
    assert max(joint.y for leg in body.legs for joint in leg) <= FOOT + 1.5
    assert max(joint.y for arm in body.arms for joint in arm) <= FLOOR - ARM / 2 + 1.5
    assert max(point.y for point in body.trunk) <= FLOOR - SHIRT / 2 + 1.5
    assert body.head.y + 8.5 <= GROUND + 2


@each_pose
def test_joints_bend_as_joints_do(pose: Pose) -> None:
    """Normal ranges of motion, American Academy of Orthopaedic Surgeons 1965 (status M, from memory).

    Knee 0 to 135, elbow 0 to 150, hip -30 to 120, spine forward 80 and to a side 35 (our trunk
    bends at the waist alone, so hip and spine share it: at most 150), neck 45 each way, shoulder
    -60 to 180, ankle up 20 and down 50 degrees; 5 more for a child. A foot on its toes bends in
    the toes as well, which are one stroke with it here: 20 more. From the front only the size of
    a bend can be told.
    """
    assert abs(pose.bend) <= (35 if pose.view is View.FRONT else 80)
    assert abs(pose.head) <= 50
    feet = pose.feet or flat_feet(pose.view)
    for (upper, fore), (thigh, shin), foot in zip(pose.arms, pose.legs, feet, strict=True):
        elbow, knee = bend(upper, fore), -bend(thigh, shin)
        if pose.view is View.FRONT:
            assert abs(elbow) <= 155
            assert abs(knee) <= 140
            continue
        assert -5 <= elbow <= 155
        assert -5 <= knee <= 140
        assert -35 <= bend(-pose.lean, thigh) <= 150
        assert -65 <= (upper + pose.lean + pose.bend + 65) % 360 - 65 <= 185
        assert 90 - 75 <= bend(shin, foot) <= 90 + 25


@pytest.mark.parametrize("name", ["wall-push", "floor-push"])
def test_hands_and_feet_stay_while_the_elbows_bend(name: str) -> None:
    first, second = (skeleton(pose) for pose in MOVES[name].poses)
    for a, b in ((first.arms[1][-1], second.arms[1][-1]), (first.legs[1][2], second.legs[1][2])):
        assert dist((a.x, a.y), (b.x, b.y)) <= 2


@pytest.mark.parametrize("name", ["floor-push", "table-reach"])
def test_hands_carry_the_body_on_the_floor(name: str) -> None:
    for pose in MOVES[name].poses:
        assert skeleton(pose).arms[1][-1].y == pytest.approx(FLOOR - ARM / 2, abs=1.5)


@pytest.mark.parametrize("name", ["curl-up", "bridge"])
def test_lying_moves_rest_on_feet_and_back(name: str) -> None:
    for pose in MOVES[name].poses:
        body = skeleton(pose)
        assert max(point.y for point in body.trunk) == pytest.approx(FLOOR - SHIRT / 2, abs=1.5)
        assert body.legs[1][2].y == pytest.approx(FOOT, abs=2.5)


@each_pose
def test_a_figure_stays_in_its_box(pose: Pose) -> None:
    body = skeleton(pose)
    for point in (
        *body.joints(),
        Point(body.head.x - 6, body.head.y - 6),
        Point(body.head.x + 6, body.head.y),
    ):
        assert 3 <= point.x <= 117
        assert 3 <= point.y <= 125
    turned = pose.lean + pose.bend + pose.head
    stem = body.head.toward(180 - turned, 13.5)
    assert stem.y - 1.25 >= 1
    assert 1 <= stem.x - 1.25 <= stem.x + 1.25 <= 119


@each_pose
def test_a_figure_is_plain_svg_without_style(pose: Pose) -> None:
    svg = figure(pose)
    root = ET.fromstring(svg.replace("<svg ", f'<svg xmlns="{SVG[1:-1]}" ', 1))  # noqa: S314 - our own text
    assert root.get("aria-hidden") == "true"
    assert [node for node in root.iter() if node.get("style")] == []
    assert len(root.findall(f"{SVG}g[@class='figure-head']")) == 1
    assert len(root.findall(f"{SVG}path[@class='figure-shirt']")) == 1
    assert re.search(r"\d\.\d\d", "".join(re.findall(r' d="M\d[^"]*"', svg))) is None
