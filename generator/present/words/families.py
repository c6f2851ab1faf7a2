"""Texts whose keys begin alike and end in one of a closed list of words; every other key is written out where it is said.

A test holds the keys of ``site_data/words/`` against these and against every key that is written
in the program, its templates and its scripts, in both directions.
"""

from __future__ import annotations

from dataclasses import dataclass

from generator.compute.brings import Level
from generator.compute.day import Lean
from generator.compute.learned import Verdict
from generator.compute.likely import LIKELY, SumSlip
from generator.compute.what_if import Reason, Way
from generator.model.figure import FigureKind
from generator.model.film import FILM_KEYS
from generator.model.food import Allergen
from generator.model.measure import Measure
from generator.model.move import Noise, Room
from generator.model.stops import STOP_KINDS
from generator.model.stops.day import ActivityLevel, Sex


@dataclass(frozen=True, slots=True)
class Family:
    """The keys of one family."""

    begins: str
    members: tuple[str, ...]

    def key(self, member: str) -> str:
        """The key of a member.

        Raises:
            KeyError: it is no member; a bug of ours.
        """
        if member not in self.members:
            raise KeyError(f"{self.begins}… has no {member}")
        return self.begins + member.replace(" ", "_")

    @property
    def keys(self) -> tuple[str, ...]:
        """Every key, in the order of the members."""
        return tuple(map(self.key, self.members))


STOP = Family("stop_", tuple(STOP_KINDS))
BESIDE = Family("beside_", tuple(STOP_KINDS))
MEASURE = Family("measure_", tuple(map(str, Measure)))
ABOUT = Family("about_", tuple(map(str, Measure)))
ALLERGEN = Family("allergen_", tuple(map(str, Allergen)))
ROOM = Family("room_", tuple(map(str, Room)))
NOISE = Family("noise_", tuple(map(str, Noise)))
MISTAKE = Family("mistake_", tuple(map(str, LIKELY)))
NOT_YET = Family("not_yet_", tuple(map(str, LIKELY)))
SLIP = Family("sum_", tuple(map(str, SumSlip)))
SLIP_NEXT = Family("not_yet_sum_", tuple(map(str, SumSlip)))
PERSON = Family("day_person_", tuple(map(str, Sex)))
CHOICE = Family("day_choice_", tuple(map(str, Lean)))
ANSWER = Family("day_answer_", tuple(map(str, Lean)))
NEED = Family("day_need_", tuple(map(str, Sex)))
LEVEL_OF_DAY = Family("day_level_", tuple(map(str, ActivityLevel)))
HANGS = Family("day_hangs_", tuple(map(str, Lean)))
WAY = Family("what_if_way_", tuple(map(str, Way)))
WAY_SHORT = Family("what_if_short_", tuple(map(str, Way)))
GUESS = Family("guess_", tuple(map(str, Reason)))
LEVEL = Family("brings_", tuple(map(str, Level)))
COUNT_OF = Family(
    "count_of_",
    ("ones", "twos", "fours", "fives", "tens", "twenties", "fifties", "hundreds", "groups"),
)
COUNT_HINT = Family("count_hint_", ("ones", "twos", "fours", "tens", "twenties", "groups"))
DOING = Family("minutes_to_", ("watch", "work_out", "move", "talk"))
FILM = Family("film_", FILM_KEYS)
PAPER_SIZE = Family("paper_size_", ("a4", "letter"))
VERDICT = Family("report_verdict_", tuple(map(str, Verdict)))
_EIGHT = tuple(map(str, range(1, 9)))
GAPS = Family("gaps_", _EIGHT)
WHICH_GAP = Family("which_gap_", _EIGHT)
NUMBER = Family("number_", tuple(map(str, FigureKind)))
FAMILIES = (
    STOP,
    BESIDE,
    MEASURE,
    ABOUT,
    ALLERGEN,
    ROOM,
    NOISE,
    MISTAKE,
    NOT_YET,
    SLIP,
    SLIP_NEXT,
    PERSON,
    CHOICE,
    ANSWER,
    NEED,
    LEVEL_OF_DAY,
    HANGS,
    WAY,
    WAY_SHORT,
    GUESS,
    LEVEL,
    COUNT_OF,
    COUNT_HINT,
    DOING,
    FILM,
    PAPER_SIZE,
    VERDICT,
    GAPS,
    WHICH_GAP,
    NUMBER,
)
