"""A move: one exercise that fits a living room, with its texts, bounds and poses."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum
from typing import Annotated, Literal, Self, assert_never

from pydantic import Field, field_validator, model_validator

from generator.model.base import Frozen
from generator.model.grades import GradeBand
from generator.model.move_energy import AdultEnergy, EnergySource, YouthEnergy
from generator.model.pose import Pose
from generator.model.wording import FALLBACK, Wording, wording

Text = Annotated[str, Field(min_length=1)]


class Room(StrEnum):
    """How much clear floor a move needs, from least to most."""

    ONE_SPOT = "one spot"
    ARMS_WIDE = "arms wide"
    TWO_STEPS = "two steps"
    FLOOR_SPACE = "floor space"


class Noise(StrEnum):
    """How much a move is heard in the room below."""

    QUIET = "quiet"
    SOFT = "soft"
    LOUD = "loud"


class MoveText(Frozen):
    """What a family reads about a move, in one language."""

    name: Text
    """The move's name, as on its card."""

    count_is: Text
    """What one count is, in a few words."""

    steps: tuple[Text, Text, Text]
    """How to do it, in three short sentences."""

    seated: Text
    """How to do it sitting on a chair."""

    care: Text
    """The one caution that belongs to this move."""


class Caps(Frozen):
    """The most counts of a move in one go, by grade band."""

    k_2: int = Field(alias="K-2", gt=0)
    """Counts, kindergarten to grade 2."""

    g3_5: int = Field(alias="3-5", gt=0)
    """Counts, grades 3 to 5."""

    g6_8: int = Field(alias="6-8", gt=0)
    """Counts, grades 6 to 8."""

    @model_validator(mode="after")
    def _rise(self) -> Self:
        if not self.k_2 <= self.g3_5 <= self.g6_8:
            raise ValueError(
                "fall from one grade band to the next: let each be at least the one before"
            )
        return self

    def for_band(self, band: GradeBand) -> int:
        """Return the most counts in one go for a grade band."""
        match band:
            case GradeBand.K_2:
                return self.k_2
            case GradeBand.G3_5:
                return self.g3_5
            case GradeBand.G6_8:
                return self.g6_8
            case _:
                assert_never(band)


class Move(Frozen):
    """One exercise that fits a living room."""

    texts: Mapping[str, MoveText]
    """What a family reads, by language code."""

    room: Room
    """The clear floor it needs."""

    noise: Noise
    """How much it is heard."""

    pace: int = Field(gt=0)
    """Counts a minute, an easy pace a child can keep."""

    caps: Caps
    """The most counts in one go, by grade band."""

    energy: YouthEnergy | Literal["none published"]
    """What was published for children of 6 to 18 years, or that nothing was."""

    adult_energy: AdultEnergy | None = None
    """What was published for adults, for the adult in the room; never for a child."""

    poses: tuple[Pose, Pose]
    """Two moments of the move."""

    seated_poses: Annotated[tuple[Pose, ...], Field(min_length=1, max_length=2)]
    """One or two moments of the seated version."""

    @field_validator("texts")
    @classmethod
    def _in_english(cls, texts: Mapping[str, MoveText]) -> Mapping[str, MoveText]:
        if FALLBACK not in texts:
            raise ValueError("lack English: write them below `en:`")
        return texts

    @property
    def youth_energy(self) -> YouthEnergy | None:
        """The published value for children, or None where there is none."""
        return None if self.energy == "none published" else self.energy

    def text(self, language: str) -> Wording[MoveText]:
        """What a family reads about the move in a language."""
        return wording(self.texts, language)


class Moves(Frozen):
    """All of `site_data/moves.yaml`."""

    sources: Mapping[str, EnergySource]
    """Where published energy values come from, by source id."""

    moves: Mapping[str, Move]
    """The moves, by id."""

    @model_validator(mode="after")
    def _sources_exist(self) -> Self:
        for move_id, move in self.moves.items():
            for energy in (move.youth_energy, move.adult_energy):
                if energy is not None and energy.source not in self.sources:
                    raise ValueError(
                        f"lacks the source `{energy.source}`, which `{move_id}` names: add it under `sources:`"
                    )
        return self
