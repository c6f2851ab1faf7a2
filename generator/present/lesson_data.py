"""What lies beside a lesson's pages: figures to explore, chapters, captions set right, a draft of captions."""

from __future__ import annotations

from collections.abc import Iterator

from generator.compute.result import LessonResult
from generator.present.finish_file import FINISH_FILE, finish_json
from generator.present.output import Output
from generator.present.pages.page import Build, Surround
from generator.present.pictures.chart_file import chart_json
from generator.present.pictures.plums.files import NUMBERED_FILE, numbered
from generator.present.recording.chapters import chapters_file, chapters_track
from generator.present.recording.corrections import corrected_captions
from generator.present.recording.pack import FOLDER, draft, draft_name


def lesson_data(result: LessonResult, surround: Surround) -> Iterator[Output]:
    """The files of a lesson that are no pages, in one language."""
    source = result.lesson.places.file
    for path, text in _texts(result, surround):
        yield Output(path, text.encode(), source=source)


def _texts(result: LessonResult, surround: Surround) -> Iterator[tuple[str, str]]:
    lesson, say = result.lesson, surround.say
    folder = f"{surround.folder}{lesson.id}/"
    for comparison in result.comparisons.values():
        yield f"{folder}{comparison.stop.id}.chart.json", chart_json(comparison, say)
    yield folder + FINISH_FILE, finish_json(result, say)
    if told := numbered(result, say):
        yield folder + NUMBERED_FILE, told
    if name := chapters_file(result, say):
        yield folder + name, chapters_track(result, say)
    for name, text in corrected_captions(result, say, surround.site.languages).items():
        yield f"{lesson.id}/{name}", text  # in the place of the educator's, for all languages
    if Build.FILMING in surround.builds:
        yield f"{folder}{FOLDER}/{draft_name(result, say)}", draft(result)
