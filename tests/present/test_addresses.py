"""The addresses a lesson is said to have are the pages that are made of it."""

from __future__ import annotations

from generator.build import build
from generator.present.pages.addresses import lesson_addresses
from tests.site_project import ROOT


def test_addresses_are_the_pages_that_are_made() -> None:
    built = build(ROOT)
    for result in built.worked.results:
        made = {
            output.path.partition("/")[2]
            for output in built.outputs
            if output.path.startswith(f"{result.lesson.id}/") and output.path.endswith(".html")
        }
        assert made == lesson_addresses(result).keys()
