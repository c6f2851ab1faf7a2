"""The place of a word inside a text of a lesson."""

from __future__ import annotations

from generator.model.lesson import Lesson
from generator.problems import Place


def place_inside(lesson: Lesson, place: Place, text: str, at: int) -> Place:
    """The place of a letter of a text written over several lines; of the text where it is on one."""
    if "\n" not in text.rstrip() or place.path != lesson.places.file:
        return place
    start = text.rfind("\n", 0, at) + 1
    written = text[start:].partition("\n")[0]
    for number, line in enumerate(lesson.places.lines[place.line :], place.line + 1):
        if (column := line.find(written)) >= 0:
            return Place(place.path, number, column + at - start + 1)
    return place
