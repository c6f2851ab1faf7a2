"""Rules over a whole lesson, one in a file, all in one list."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from generator.check.address import address_is_somebodys
from generator.check.amounts import amounts_said
from generator.check.answers import answers_can_be_said
from generator.check.braces import braces_known
from generator.check.caps import counts_of_a_stop_within_its_cap, counts_within_caps
from generator.check.captions import CAPTION_RULES
from generator.check.claims import captions_against_numbers, words_against_numbers
from generator.check.curly_quotes import no_curly_quotes
from generator.check.cut_off import nothing_cut_off
from generator.check.film import FILM_RULES
from generator.check.grade_fit import numbers_fit_the_grades
from generator.check.interface_words import interface_translated
from generator.check.kind_words import kind_captions, kind_words
from generator.check.languages import checked_less
from generator.check.links import safe_links
from generator.check.listed import Listed, listed_apart
from generator.check.looked_at import foods_looked_at
from generator.check.names import names_complete
from generator.check.nothing_changed import something_changed
from generator.check.nothing_to_move import something_to_move
from generator.check.plausible_values import plausible_values
from generator.check.reading import easy_to_read, sentences_easy_to_read
from generator.check.recorded import numbers_as_filmed
from generator.check.replaced import replaced_entries
from generator.check.reviewed import read_as_it_stands, readings_of_this_lesson
from generator.check.rule import Rule
from generator.check.same_food import foods_differ
from generator.check.spoken_numbers import spoken_numbers, untranslated_numbers
from generator.check.standards import standards_known, standards_translated
from generator.check.translations import translations_complete
from generator.check.unlike_script import unlike_script
from generator.check.whole_day import days_are_whole
from generator.compute.lacking_names import LackingName
from generator.compute.result import LessonResult
from generator.model.library import Library
from generator.problems import Problem

RULES: tuple[Rule, ...] = (
    answers_can_be_said,
    counts_within_caps,
    counts_of_a_stop_within_its_cap,
    something_to_move,
    foods_differ,
    something_changed,
    days_are_whole,
    standards_known,
    standards_translated,
    numbers_fit_the_grades,
    plausible_values,
    amounts_said,
    foods_looked_at,
    words_against_numbers,
    captions_against_numbers,
    kind_words,
    kind_captions,
    safe_links,
    nothing_cut_off,
    no_curly_quotes,
    easy_to_read,
    sentences_easy_to_read,
    translations_complete,
    numbers_as_filmed,
    readings_of_this_lesson,
    read_as_it_stands,
    *FILM_RULES,
    *CAPTION_RULES,
    unlike_script,
    spoken_numbers,
    untranslated_numbers,
    braces_known,
)
"""Every rule, in the order of their reports for one place; each says itself what it is about."""


def check_words(result: LessonResult) -> Iterator[Problem]:
    """What the rules about words have to say of a lesson in another language."""
    for rule in RULES:
        if rule.of_words:
            yield from rule(result)


def check_site(
    library: Library, lacking: Iterable[LackingName], lessons: Iterable[Listed]
) -> Iterator[Problem]:
    """What is to be said once for a whole site, whatever the number of its lessons.

    Args:
        library: what stands in ``site_data/``.
        lacking: names that lessons lack, in every language they have.
        lessons: what their lists ask of each, in the order of their folders.
    """
    yield from address_is_somebodys(library)
    yield from checked_less(library)
    yield from replaced_entries(library)
    yield from library.questions
    yield from interface_translated(library)
    yield from names_complete(lacking, library.places)
    yield from listed_apart(lessons)


def check_lesson(result: LessonResult) -> Iterator[Problem]:
    """All that the rules have to say of a lesson."""
    for rule in RULES:
        yield from rule(result)
