"""One lesson file into a lesson: shape first, then everything it names."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path

from generator.model.ids import lesson_ids
from generator.model.lesson import Lesson, LessonFile, LessonHead
from generator.model.library import Library
from generator.model.places import Places
from generator.model.site import SiteFile
from generator.model.stops import STOP_KINDS, Stop
from generator.problems import Place, Problem
from generator.read.captions import read_captions
from generator.read.counting import counting_problems
from generator.read.explain import validate
from generator.read.files import LARGEST_LESSON, read_text
from generator.read.formerly import former_lesson_problems, former_stop_problems
from generator.read.ids import id_problems
from generator.read.language_tags import caption_languages
from generator.read.media import read_video, video_problems, video_seconds
from generator.read.raw_stops import RawStop, places_inside, raw_stops
from generator.read.recorded import read_recorded
from generator.read.references import reference_problems
from generator.read.reviewed import read_reviewed
from generator.read.source import Data, Source, read_source
from generator.read.timeline import timeline_problems
from generator.read.translation import read_translations

_FOLDER = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*")
_LONGEST = 300
"""Signs of a sentence, however long the word in it that the educator wrote."""
RESERVED = frozenset({"assets", "components", "embed"})
"""Folders of the site that hold no lesson; nor does the folder of a language."""


def read_lesson(
    root: Path, path: str, library: Library, *, filmed: bool = True
) -> Lesson | list[Problem]:
    """Read ``lessons/<id>/lesson.yaml``; every mistake in it is found in one go.

    What a lesson names is looked up in the plain data, before any model is made of it,
    so that a mistake in one stop never hides an unknown food in the same stop.

    Args:
        root: folder of the site.
        path: the lesson file below it.
        library: foods, moves and words that it may name.
        filmed: whether the video it names must be there and be long enough; not while one is made.
    """
    text = read_text(root, path, LARGEST_LESSON)
    if isinstance(text, Problem):
        return [text]
    source = read_source(path, text)
    if not isinstance(source.data, dict):
        return source.problems or [
            Problem(source.places.at(), "this is not a lesson", "begin it with `title:`")
        ]
    return _made_of(source.data, source, root, library, filmed=filmed)


def _made_of(
    data: dict[str, Data], source: Source, root: Path, library: Library, *, filmed: bool
) -> Lesson | list[Problem]:
    folder = (root / source.path).parent
    problems = [*source.problems, *_folder_problems(folder, source.path, library)]
    raw = raw_stops(data.pop("stops", None), source.places, problems)
    places = places_inside(source.places, raw)
    head = validate(LessonHead, data, places, also=("stops",))
    problems += head if isinstance(head, list) else []
    problems += reference_problems(raw, places, library)
    problems += video_problems(data.get("video"), places, folder, filmed=filmed)
    problems += caption_languages(data.get("video"), places)
    video = data.get("video") if filmed else None
    seconds = video_seconds(video, folder)
    films, left_out = read_video(video, folder)
    captions = read_captions(root, folder, video, problems)
    stops = _stops(raw, places, problems)
    problems += timeline_problems(stops, places, seconds)
    problems += id_problems(stops, places)
    problems += former_stop_problems(stops, places)
    if not isinstance(head, list):
        reserved = RESERVED.union(library.site.languages[1:])
        problems += former_lesson_problems(head.formerly, folder.name, places, reserved)
    problems += counting_problems(stops, places)
    if problems or isinstance(head, list):
        return _once(problems)
    lesson = Lesson(
        folder.name,
        _file(head, stops),
        places,
        lesson_ids(tuple(stops.values())),
        seconds,
        language=library.site.languages[0],
        captions=captions,
        caption_limits=library.site.captions,
        films=films,
        left_out=left_out,
        standards=_standards(library.site),
    )
    return _with_neighbors(root, lesson, library, problems, filmed=filmed)


def _standards(site: SiteFile) -> Mapping[str, frozenset[str]]:
    first = site.languages[0]
    return {code: frozenset(one.in_languages(first)) for code, one in site.standards.items()}


def _file(head: LessonHead, stops: Mapping[int, Stop]) -> LessonFile:
    """Both parts as one; each was validated by itself."""
    parts = {name: getattr(head, name) for name in LessonHead.model_fields}
    return LessonFile.model_construct(**parts, stops=tuple(stops.values()))


def _with_neighbors(
    root: Path, lesson: Lesson, library: Library, problems: list[Problem], *, filmed: bool
) -> Lesson | list[Problem]:
    """The lesson with what lies beside its file: who read it, the record of its film, and translations."""
    folder = Path(lesson.places.file).parent.as_posix()
    lesson = replace(lesson, reviewed=read_reviewed(root, folder, problems))
    if filmed:
        recorded = read_recorded(root, folder, lesson.file.video, problems)
        lesson = replace(lesson, recorded=recorded)
    translations = read_translations(root, lesson, library.site.languages[1:], problems)
    return _once(problems) if problems else replace(lesson, translations=translations)


def _stops(raw: dict[int, RawStop], places: Places, problems: list[Problem]) -> dict[int, Stop]:
    """The stops that have a right shape, by their number; what is wrong with the others is added."""
    made: dict[int, Stop] = {}
    for index, stop in raw.items():
        one = validate(STOP_KINDS[stop.kind], stop.data, places, ("stops", index, stop.kind))
        if isinstance(one, list):
            problems += one
        else:
            made[index] = one
    return made


def _folder_problems(folder: Path, path: str, library: Library) -> list[Problem]:
    """A lesson's folder is its address on the site."""
    if folder.name in RESERVED.union(library.site.languages[1:]):
        what = f"the folder `{folder.name}` is one the site keeps for itself"
        return [Problem(Place(path), what, "give the folder another name")]
    if not _FOLDER.fullmatch(folder.name):
        what = f"the folder `{folder.name}` makes no good address"
        return [Problem(Place(path), what, "name it in small letters, digits and single hyphens")]
    return []


def _once(problems: list[Problem]) -> list[Problem]:
    """The problems in the order of the file, each place and sentence once and of readable length."""
    short = {
        replace(problem, what=f"{problem.what[:160]} … {problem.what[-60:]}")
        if len(problem.what) > _LONGEST
        else problem
        for problem in problems
    }
    return sorted(short, key=lambda problem: (problem.place, problem.what))
