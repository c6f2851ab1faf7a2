"""The addresses a lesson is said to have are the pages that are made of it."""

from __future__ import annotations

from generator.making import make_lesson
from generator.present.pages.addresses import lesson_addresses
from generator.present.policy import FRAMED
from generator.read.library import read_library
from generator.steps.surroundings import surroundings
from generator.steps.work import lesson_files, work_lesson
from tests.site_project import ROOT


def test_addresses_are_the_pages_that_are_made() -> None:
    library = read_library(ROOT)
    around = surroundings(ROOT, library)
    for path in lesson_files(ROOT):
        for result in work_lesson(ROOT, path, library).results.values():
            made = {
                output.path.rpartition("/")[2]
                for output in make_lesson({result.lesson.language: result}, around)
                if output.path.endswith(".html") and not output.path.startswith(FRAMED)
            }
            assert made == lesson_addresses(result).keys()
