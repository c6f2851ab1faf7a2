"""25 made-up learners of the lesson *Soup night in the hall*: how each works, and what her code must tell.

The right answers are worked out here from what the lesson's script says of the soups, in mg of sodium a cup: vegetable
broth 650, chicken broth 920, canned black bean soup 1,200, that of the restaurant 770; one count is 20, the pot holds
four cups, and the last question asks for half a cup.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

_VEGETABLE, _CHICKEN, _CANNED, _RESTAURANT, _PER = 650, 920, 1200, 770, 20
_BROTH, _BEANS = _CHICKEN - _VEGETABLE, _CANNED - _RESTAURANT
RIGHT = {
    "broth": f"{_BROTH}/{_BROTH // _PER}",
    "beans": f"{_BEANS}/{_BEANS // _PER}",
    "total": str(_VEGETABLE + _CANNED - _CHICKEN - _RESTAURANT),
    "again": "yes",
    "pot": str(4 * _CHICKEN),
    "end": str(_CHICKEN // 2),
}
"""The right answer at each place; a row has its gap and its count."""
PLACES = tuple(RIGHT)
STOPS = {
    "broth": "soups",
    "beans": "soups",
    "total": "soups",
    "again": "the-most-again",
    "pot": "whole-pot",
    "end": "parting",
}
"""Id of the stop of each place."""


class Way(StrEnum):
    """How she works at the page."""

    TOUCH = "touch"
    KEYS = "keys"
    BLOCKS = "blocks"
    """She leaves numbers out: a question for a number is not there for her."""
    SPANISH = "spanish"
    RELOAD = "reload"
    """The page is opened anew after the rows."""
    LOOKS = "looks"
    """She opens the working of the first row before she writes anything."""


@dataclass(frozen=True, slots=True)
class Learner:
    """What one learner writes: tries at each place, one after another; "" where she never comes."""

    name: str
    before: str
    """Her answers to the question that is asked twice, the first time: yes for the right one."""
    broth: str
    beans: str
    total: str
    again: str
    pot: str
    end: str
    talks: bool = False
    way: Way = Way.TOUCH

    def tries(self, place: str) -> list[str]:
        """What she writes at a place, in order."""
        return str(getattr(self, place)).split()

    def found(self) -> dict[str, str]:
        """By answer: first, later or no, where she came there."""
        told: dict[str, str] = {}
        for place in PLACES:
            names = (f"{place}.gap", f"{place}.count") if "/" in RIGHT[place] else (place,)
            tries = zip(*(one.split("/") for one in self.tries(place)), strict=True)
            for name, own, right in zip(names, tries, RIGHT[place].split("/"), strict=False):
                looked = self.way is Way.LOOKS and place == "broth"
                if how := _how([one for one in own if _is_answer(one)], right, looked=looked):
                    told[name] = how
        return told

    def done(self) -> list[str]:
        """Ids of the stops that are done in the end, in the order of the page."""
        whole = {place for place in PLACES if self.tries(place)[-1:] == [RIGHT[place]]}
        whole |= {"broth"} if self.way is Way.LOOKS else set()
        whole |= {"total"} if self.way is Way.BLOCKS else set()  # it is all numbers, and left out
        stops = {STOPS[place] for place in PLACES}
        done = {stop for stop in stops if {one for one in PLACES if STOPS[one] == stop} <= whole}
        done |= {"the-most"} if self.before else set()
        done |= {"table-talk"} if self.talks else set()
        order = ("the-most", "soups", "the-most-again", "whole-pot", "table-talk", "parting")
        return [stop for stop in order if stop in done]

    def twice(self) -> tuple[str, str]:
        """Right, wrong or none: before, where her last answer counts, and after, where the first one does."""
        first, last = self.tries("before")[-1:], self.tries("again")[:1]
        return _told(first), _told(last)


def _told(tries: list[str]) -> str:
    return {"yes": "right", "no": "wrong"}[tries[0]] if tries else "none"


def _is_answer(written: str) -> bool:
    """What is left empty, is no number or counts tens is asked for once more, and is no try."""
    return written in ("yes", "no") or written.isdigit()


def _how(tries: list[str], right: str, *, looked: bool) -> str:
    if right not in tries:
        return "no" if tries or looked else ""
    return "first" if tries[0] == right and not looked else "later"


_ALL = ("270/13", "430/21", "160", "yes", "3680", "460")
CLASS = (
    # right before and after
    Learner("Ada", "yes", *_ALL, talks=True),
    Learner("Ben", "yes", *_ALL, way=Way.KEYS),
    Learner("Cy", "no yes", "270/14 270/13", "430/21", "160", "yes", "3680", "", talks=True),
    Learner("Dot", "yes", "270/13", "570/28 430/21", "160", "yes", "920 3680", "460", talks=True),
    Learner("Eli", "yes", "270/13", "430/21", "260 160", "yes", "", "", way=Way.RELOAD),
    Learner("Fay", "yes", "27_tens/13 270/13", "430/21", "160", "yes", "3680", "460"),
    # wrong before, right after
    Learner("Gus", "no", *_ALL, talks=True),
    Learner("Hana", "no", "270/13", "430/21", "", "yes", "", "", talks=True, way=Way.BLOCKS),
    Learner("Ida", "no", *_ALL, way=Way.SPANISH),
    Learner("Jo", "no", "330/16 270/13", "430/22 430/21", "150 160", "yes", "3480 3680", "450 460"),
    Learner("Kit", "yes no", "1570/78 270/13", "430/21", "", "yes", "", "", talks=True),
    Learner("Lea", "no", "270/13", "430/21", "160", "yes", "3680", "920", way=Way.LOOKS),
    Learner("Max", "no", "/ 270/lots 270/13", "430/21", "160", "yes", "3680", "460", talks=True),
    Learner("Nia", "no", "270/13", "430/", "", "yes", "", "", way=Way.SPANISH),
    # right before, wrong after
    Learner("Oz", "yes", "270/13", "430/21", "160", "no yes", "3680", "460", talks=True),
    Learner("Pia", "yes", "270/", "", "", "no", "", ""),
    Learner("Quin", "yes", "270/27 270/13", "430/43 430/21", "160", "no yes", "3680", "460"),
    Learner("Rae", "yes", "270/13", "430/21", "3540 160", "no", "3680", "460", way=Way.KEYS),
    Learner("Sol", "yes", "270/13", "430/21", "160", "no no yes", "368 3680", "", way=Way.RELOAD),
    # wrong both times
    Learner("Tia", "no", "270/13", "430/21", "160", "no", "3680", "460", talks=True),
    Learner("Uma", "no", "350/17", "", "", "no", "", "", talks=True),
    Learner("Vic", "no", "270/13", "530/26 430/21", "", "no yes", "", "", way=Way.BLOCKS),
    Learner("Wren", "no", "270/13", "430/21", "160", "no no", "", "", way=Way.SPANISH),
    Learner("Xan", "no", "270/12 270/14 270/13", "430/21", "160", "no yes", "3680", "240 460"),
    # gives up half-way
    Learner("Yui", "no", "270/13", "", "", "", "", "", way=Way.LOOKS),
)
"""Nobody is real."""
