"""What a teacher of movement asked of each move stands in its texts and caps; common practice, no source."""

from __future__ import annotations

import re

import pytest

from generator.model.move import Move, Noise
from tests.project import library

MOVES = library().moves

CAPS = {
    "heel-raise": (15, 25, 30),  # heels hurt easily at 8 to 12, from memory
    "reach-down": (8, 10, 12),  # the head comes below the heart
    "side-bend": (12, 20, 24),  # one side, again and again
    "skater-step": (12, 20, 24),  # one foot sweeps behind the other
}
"""The most counts in one go, for grades K to 2, 3 to 5 and 6 to 8."""

SAYS = {
    "heel-raise": ("care", "Stop if your heels hurt.", "Detente si te duelen los talones."),
    "reach-down": ("care", "If you get dizzy easily, choose another", "Si te mareas con facilidad"),
    "skater-step": ("care", "in shoes or bare feet", "con zapatos o con los pies descalzos"),
    "half-squat": ("care", "Hold a chair back if you wobble.", "Sujeta el respaldo de una silla"),
    "back-lunge": ("care", "Hold a chair back if you wobble.", "Sujeta el respaldo de una silla"),
    "bottle-lift": ("care", "half a liter (16 oz) or smaller", "de medio litro (16 oz) o menos"),
    "floor-push": ("steps", "come down halfway, or less", "baja hasta la mitad, o menos"),
    "table-reach": ("steps", "the opposite leg back", "la pierna contraria atrás"),
}
"""Where a move says it, in English and in Spanish."""

AT_THE_FRONT = re.compile(r"\b(front|edge) of (the|a)( firm)? chair\b|\bal borde\b")
HOLDS = re.compile(r"\bhold the seat\b|\bsujeta el asiento\b")
SIDEWAYS = re.compile(r"\bsideways\b|\bde lado en la silla\b")
QUIET_WAY = re.compile(r"The quiet way is the seated one\.|Para no hacer ruido, hazlo en silla\.")

each_move = pytest.mark.parametrize(
    "move", [pytest.param(move, id=name) for name, move in MOVES.items()]
)


@pytest.mark.parametrize(("name", "caps"), CAPS.items())
def test_caps_of_what_tires_one_place(name: str, caps: tuple[int, int, int]) -> None:
    held = MOVES[name].caps
    ours = (held.k_2, held.g3_5, held.g6_8)
    assert all(one <= most for one, most in zip(ours, caps, strict=True))


@pytest.mark.parametrize(("name", "said"), SAYS.items())
def test_a_caution_stands_with_its_move(name: str, said: tuple[str, str, str]) -> None:
    for language, words in zip(("en", "es"), said[1:], strict=True):
        told = getattr(MOVES[name].texts[language], said[0])
        assert words in (told if isinstance(told, str) else " ".join(told))


@each_move
def test_who_sits_at_the_front_of_a_chair_holds_it(move: Move) -> None:
    for language in ("en", "es"):
        seated = move.texts[language].seated
        assert not SIDEWAYS.search(seated)
        assert bool(AT_THE_FRONT.search(seated)) <= bool(HOLDS.search(seated)), seated


@each_move
def test_what_can_be_heard_below_names_its_quiet_way(move: Move) -> None:
    if move.noise is Noise.LOUD:
        assert all(QUIET_WAY.search(move.texts[one].care) for one in ("en", "es"))


@each_move
def test_a_seated_way_is_seen_to_move(move: Move) -> None:
    assert len(move.seated_poses) == 2
    assert move.seated_poses[0] != move.seated_poses[1]


@pytest.mark.parametrize(
    ("name", "english"), [("toe-tap", "Heel tap"), ("air-punch", "Slow air push")]
)
def test_a_move_is_called_what_it_is(name: str, english: str) -> None:
    assert MOVES[name].texts["en"].name == english
