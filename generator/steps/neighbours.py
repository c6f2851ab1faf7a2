"""Which lessons come before and after each: by their grades, within the same ones as the lists have them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from generator.engine.contents import combined
from generator.engine.inputs import OWN_HEAD, Inputs
from generator.present.entry import in_lists
from generator.present.pages.neighbours import ALONE, Neighbour, Neighbours
from generator.read.lesson_head import former_names_from, head_from

Beside = Mapping[str, Neighbours]
"""By language."""


@dataclass(frozen=True, slots=True)
class Placed:
    """What a lesson is made of besides the library and the site."""

    own: str
    """Its folder, its neighbours and its records under older names, as one checksum: it is made anew when a neighbour has another title."""
    beside: Beside


def placed(inputs: Inputs, languages: Sequence[str]) -> dict[str, Placed]:
    """Every lesson among its neighbours, in the order of the inputs.

    Args:
        inputs: of the site.
        languages: of the site, the one that lessons are written in first.
    """
    found = {language: _in_language(inputs, language, languages[0]) for language in languages}
    return {
        name: _placed(
            own,
            {one: lessons.get(name, ALONE) for one, lessons in found.items()},
            _records_of_before(inputs, name),
        )
        for name, own in inputs.lessons.items()
    }


def _placed(own: str, beside: Beside, records: Mapping[str, str]) -> Placed:
    told = {language: repr(one) for language, one in beside.items()}
    return Placed(combined({"own": own, **told, **records}), beside)


def _records_of_before(inputs: Inputs, lesson: str) -> dict[str, str]:
    """What was published of a lesson under the names it had, which its pages tell of too."""
    names = former_names_from(inputs.heads[lesson].get(OWN_HEAD, ""))
    return {f"../{name}": inputs.records[name] for name in names if name in inputs.records}


def _in_language(inputs: Inputs, language: str, first: str) -> dict[str, Neighbours]:
    """The neighbours of each lesson that a language has."""
    line = [one for _, one in sorted(_heads(inputs, language, first), key=lambda one: one[0])]
    around = zip([None, *line], line, [*line[1:], None], strict=False)
    return {one.id: Neighbours(before, after) for before, one, after in around}


def _heads(
    inputs: Inputs, language: str, first: str
) -> Iterator[tuple[tuple[int, int, bool, int, str], Neighbour]]:
    """Each lesson that can be named in a language, with its place in the line.

    Younger grades come first; then what the lists go by: a chosen order, and the folder's name.
    """
    for name, heads in inputs.heads.items():
        own = head_from(heads.get(OWN_HEAD, ""))
        told = own if language == first else head_from(heads.get(language, ""))
        if own and own.grades and told:
            place = (own.grades.first, own.grades.last, *in_lists(own.order), name)
            yield place, Neighbour(name, told.title, told.arithmetic)
