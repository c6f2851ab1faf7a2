"""What was published about the energy cost of a move, with where it was read."""

from __future__ import annotations

from decimal import Decimal
from typing import Annotated, Literal

from pydantic import Field

from generator.model.base import Frozen

Cost = Annotated[Decimal, Field(gt=0, le=100, decimal_places=8)]
Status = Literal["R", "S", "M", "C"]
"""How the figure was read: at its source, in a transcription, from memory, or computed."""


class EnergySource(Frozen):
    """A publication that energy values come from."""

    name: str
    """Title, authors and year."""

    url: str
    """A lasting address."""


class Mety(Frozen):
    """Energy cost as a multiple of a child's own resting energy, by age."""

    y6_9: Cost = Field(alias="6-9")
    """METy, 6 to 9 years."""

    y10_12: Cost = Field(alias="10-12")
    """METy, 10 to 12 years."""

    y13_15: Cost = Field(alias="13-15")
    """METy, 13 to 15 years."""

    y16_18: Cost = Field(alias="16-18")
    """METy, 16 to 18 years."""

    def at(self, age_years: int) -> Decimal:
        """Return METy at an age in years; ValueError outside 6 to 18.

        Source: Butte and others 2018, Med Sci Sports Exerc 50(2):246-256, age groups.
        """
        for youngest, cost in (
            (16, self.y16_18),
            (13, self.y13_15),
            (10, self.y10_12),
            (6, self.y6_9),
        ):
            if youngest <= age_years <= 18:
                return cost
        raise ValueError(f"no METy is published for {age_years} years")


class YouthEnergy(Frozen):
    """One row of the Youth Compendium."""

    source: str
    """Id of the source in the same file."""

    code: str
    """The row's code, as printed."""

    activity: str
    """The activity as the source names it, which may be wider than the move."""

    mety: Mety
    """Energy cost by age group, METy."""

    status: Status
    """How the figure was read."""


class AdultEnergy(Frozen):
    """One row of the Adult Compendium; holds for adults of 19 to 59 years only."""

    source: str
    """Id of the source in the same file; it names the edition, as codes were reused."""

    code: str
    """The row's code, as printed in that edition."""

    activity: str
    """The activity as the source names it, which may be wider than the move."""

    met: Cost
    """Energy cost, MET."""

    status: Status
    """How the figure was read."""
