"""The moves of `site_data/moves.yaml` against published values and the rules of care."""

from __future__ import annotations

import json
import re
from decimal import Decimal
from pathlib import Path

import pytest
import yaml

from generator.model.move import Move, Moves, MoveText, Noise, Room

FILE = Path(__file__).parents[2] / "site_data" / "moves.yaml"
MOVES = Moves.model_validate_json(
    json.dumps(
        {
            key: value
            for key, value in yaml.safe_load(FILE.read_text(encoding="utf-8")).items()
            if key != "whole"
        }
    )
).moves

each_move = pytest.mark.parametrize(
    "move", [pytest.param(move, id=name) for name, move in MOVES.items()]
)
each_text = pytest.mark.parametrize(
    ("language", "text"),
    [
        pytest.param(lang, text, id=f"{name} {lang}")
        for name, move in MOVES.items()
        for lang, text in move.texts.items()
    ],
)

YOUTH = {
    "10260X": ("6.9", "7.1", "7.2", "7.4"),
    "85100X": ("3.0", "3.0", "2.9", "2.9"),
    "30300X": ("3.9", "4.0", "4.0", "4.1"),
}
"""Butte and others 2018, Med Sci Sports Exerc 50(2):246-256, smoothed METy: references.md 1.3,
status S; only rows whose activity name was read or agrees in a second transcription."""

ADULT = {
    "02340": "2.8",
    "02056": "3.0",
    "02101": "2.3",
    "02020": "7.5",
    "12025": "4.8",
    "02024": "2.8",
}
"""Herrmann and others 2024, J Sport Health Sci 13(1):6-12, MET for 19 to 59 years: references.md
1.4, status S."""

UNMEASURED = {"march", "half-squat", "side-bend", "one-leg-hop", "star-jump"}
"""Marching in place, squats, stretching and hopping have no METy for 6 to 12 years, and those of
jumping jacks were not read: references.md 1.3."""

NEVER = {
    "en": r"good|bad|guilt\w*|cheat\w*|burn\w*|earn\w*|pay\w*|weigh\w*|calori\w*|fat|fit|slim|thin|must",
    "es": r"buen[oa]s?|mal[oa]s?|culpa\w*|trampa\w*|quem\w*|gan\w*|pag\w*|pes[oa]\w*|calor[ií]a\w*|gord\w*|delgad\w*|ligero",
}
"""Words that make movement a payment or a judgement: references.md 4.4 and Golden and others 2016,
Pediatrics 138(3):e20161649."""


def words(text: MoveText) -> list[str]:
    return [text.name, text.count_is, *text.steps, text.seated, text.care]


def test_there_is_a_move_for_every_home() -> None:
    assert len(MOVES) >= 24
    assert {"march", "side-step", "wall-push"} <= MOVES.keys()
    assert sum(move.noise is Noise.QUIET for move in MOVES.values()) >= 12
    assert {move.noise for move in MOVES.values()} == set(Noise)
    assert {move.room for move in MOVES.values()} == set(Room)


@each_move
def test_every_move_speaks_english_and_spanish(move: Move) -> None:
    assert {"en", "es"} <= move.texts.keys()
    assert not set(words(move.text("en").words)) & set(words(move.text("es").words))


@each_text
def test_texts_are_kind(language: str, text: MoveText) -> None:
    said = re.findall(rf"\b(?:{NEVER[language]})\b", " ".join(words(text)), re.IGNORECASE)
    assert said == []


@each_text
def test_sentences_are_short_and_whole(language: str, text: MoveText) -> None:
    """At most 16 words a sentence; a step is one, the rest two at most: common practice, no source."""
    for told, most in (*((step, 1) for step in text.steps), (text.seated, 2), (text.care, 2)):
        assert told.endswith("."), (language, told)
        sentences = re.split(r"(?<=\.)\s+", told)
        assert len(sentences) <= most, (language, told)
        for sentence in sentences:
            assert sentence.count(".") == 1, (language, sentence)
            assert len(sentence.split()) <= 16, sentence


@each_text
def test_spanish_speaks_to_one_child(language: str, text: MoveText) -> None:
    if language == "es":
        assert (
            re.findall(
                r"\b(?:usted|ustedes|vosotros|vuestr\w+|vos)\b",
                " ".join(words(text)),
                re.IGNORECASE,
            )
            == []
        )


def test_names_are_not_shared() -> None:
    for language in ("en", "es"):
        assert len({move.text(language).words.name for move in MOVES.values()}) == len(MOVES)


@each_move
def test_childrens_energy_is_as_published(move: Move) -> None:
    energy = move.youth_energy
    if energy is not None:
        cost = energy.mety
        assert (cost.y6_9, cost.y10_12, cost.y13_15, cost.y16_18) == tuple(
            map(Decimal, YOUTH[energy.code])
        )
        assert (energy.source, energy.status) == ("youth-compendium-2018", "S")


@each_move
def test_adult_energy_is_as_published(move: Move) -> None:
    energy = move.adult_energy
    if energy is not None:
        assert energy.met == Decimal(ADULT[energy.code])
        assert (energy.source, energy.status) == ("adult-compendium-2024", "S")


def test_nothing_is_guessed_for_children() -> None:
    assert {name for name, move in MOVES.items() if move.youth_energy} == {
        "rope-jump",
        "bottle-lift",
        "floor-push",
    }
    assert all(MOVES[name].energy == "none published" for name in UNMEASURED)


def test_chair_stand_keeps_the_pace_of_its_published_row() -> None:
    """Row 02340 is 6 to 12 a minute: references.md 1.4, status S."""
    assert 6 <= MOVES["chair-stand"].pace <= 12


def test_strenuous_moves_stay_below_fitness_test_counts() -> None:
    """1985 School Population Fitness Survey, references.md 1.5, status S.

    Curl-ups in a minute, 50th percentile, girls of 6, 8 and 11: 23, 29, 32. Push-ups, 85th
    percentile, girls of 6, 8 and 11: 9, 17, 19, at one in three seconds.
    """
    curl_up, push = MOVES["curl-up"], MOVES["floor-push"]
    assert (curl_up.caps.k_2 < 23, curl_up.caps.g3_5 < 29, curl_up.caps.g6_8 < 32) == (
        True,
        True,
        True,
    )
    assert (push.caps.k_2 < 9, push.caps.g3_5 < 17, push.caps.g6_8 < 19) == (True, True, True)
    assert max(curl_up.pace, push.pace) <= 20


@each_move
def test_one_go_stays_under_four_minutes(move: Move) -> None:
    """At its own pace and the highest cap: common practice, no source."""
    assert move.caps.g6_8 <= 4 * move.pace
