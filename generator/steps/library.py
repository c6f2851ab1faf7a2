"""The library of a site, read and held to what can be."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from generator.check.food_figures import food_figures
from generator.model.library import Library
from generator.problems import LessonError, Weight
from generator.read.library import read_library


def checked_library(root: Path) -> Library:
    """Read all of ``site_data/``; what is questionable about its foods is noted in the library.

    Raises:
        LessonError: as ``read_library``, or with every figure that no food can have.
    """
    library = read_library(root)
    problems = tuple(food_figures(library))
    if any(problem.weight is Weight.MUST for problem in problems):
        raise LessonError(problems)
    return replace(library, questions=problems)
