"""Codes of standards that the site's list does not have, such as one with a letter left out."""

from __future__ import annotations

from collections.abc import Iterator
from difflib import get_close_matches

from generator.check.rule import rule
from generator.compute.result import LessonResult
from generator.problems import Problem, Weight


@rule
def standards_known(result: LessonResult) -> Iterator[Problem]:
    """A question for each code that has no words in ``site_data/site.yaml``, for teachers read those."""
    known = result.lesson.standards
    for number, code in enumerate(result.lesson.file.standards):
        if code not in known:
            near = get_close_matches(code.upper(), sorted(known), n=1, cutoff=0.8)
            meant = f"did you mean `{near[0]}`? If not, " if near else ""
            hint = f"{meant}add it with its words to `standards:` in site_data/site.yaml"
            place = result.lesson.places.at("standards", number)
            what = f"the site's list has no standard `{code}`"
            yield Problem(place, what, hint, Weight.QUESTION)


@rule
def standards_translated(result: LessonResult) -> Iterator[Problem]:
    """A question for each code that lacks words in a language the lesson is translated into."""
    known = result.lesson.standards
    for number, code in enumerate(result.lesson.file.standards):
        for language in result.lesson.translations:
            if code in known and not {language, language.partition("-")[0]} & known[code]:
                place = result.lesson.places.at("standards", number)
                what = f"the standard `{code}` has no words in {language}"
                hint = f"write `says: {{…, {language}: …}}` below it in site_data/site.yaml; until then the notes show it marked"
                yield Problem(place, what, hint, Weight.QUESTION)
