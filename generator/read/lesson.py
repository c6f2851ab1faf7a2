"""One lesson file into a lesson: shape first, then everything it names."""

from __future__ import annotations

from pathlib import Path

from generator.model.lesson import Lesson, LessonFile, LessonHead
from generator.model.library import Library
from generator.model.places import Places
from generator.model.stops import STOP_KINDS, Stop
from generator.problems import Problem
from generator.read.explain import did_you_mean, validate
from generator.read.files import read_text
from generator.read.media import video_problems, video_seconds
from generator.read.references import reference_problems
from generator.read.source import Data, Source, read_source
from generator.read.timeline import timeline_problems


def read_lesson(root: Path, path: str, library: Library) -> Lesson | list[Problem]:
    """Read ``lessons/<id>/lesson.yaml``; every mistake in it is found in one go.

    What a lesson names is looked up in the plain data, before any model is made of it,
    so that a mistake in one stop never hides an unknown food in the same stop.
    """
    text = read_text(root, path)
    if isinstance(text, Problem):
        return [text]
    source = read_source(path, text)
    if not isinstance(source.data, dict):
        return source.problems or [
            Problem(source.places.at(), "this is not a lesson", "begin it with `title:`")
        ]
    stops = source.data.pop("stops", None)
    head = validate(LessonHead, source.data, source.places)
    folder = (root / path).parent
    problems = [*source.problems, *(head if isinstance(head, list) else [])]
    problems += reference_problems(stops, source.places, library)
    problems += video_problems(source.data.get("video"), source.places, folder)
    read = _stops(source, stops, problems)
    problems += timeline_problems(
        read, source.places, video_seconds(source.data.get("video"), folder)
    )
    if problems or isinstance(head, list):
        return _once(problems)
    file = LessonFile.model_construct(
        **{name: getattr(head, name) for name in LessonHead.model_fields},
        stops=tuple(read.values()),
    )
    return Lesson(folder.name, file, source.places, video_seconds(source.data.get("video"), folder))


def _stops(source: Source, stops: Data, problems: list[Problem]) -> dict[int, Stop]:
    """The stops that have a right shape, by their number; what is wrong with the others is added."""
    if stops is None:
        problems.append(
            Problem(
                source.places.at(),
                "`stops:` is missing",
                "add `stops:` and begin each stop with `- watch:`, `- ask:` …",
            )
        )
        return {}
    if not isinstance(stops, list) or not stops:
        problems.append(
            Problem(
                source.places.at("stops"),
                "`stops` must be a list",
                "begin each stop with `- watch:`, `- ask:` …",
            )
        )
        return {}
    read: dict[int, Stop] = {}
    for index, data in enumerate(stops):
        stop = _stop(source, index, data)
        if isinstance(stop, list):
            problems += stop
        else:
            read[index] = stop
    return read


def _stop(source: Source, index: int, data: Data) -> Stop | list[Problem]:
    base = ("stops", index)
    kinds = [key for key in data if key in STOP_KINDS] if isinstance(data, dict) else []
    if not isinstance(data, dict) or not kinds:
        word = next(iter(data), "") if isinstance(data, dict) else str(data)
        return [
            Problem(
                source.places.at(*base),
                f"`{word}` begins no kind of stop",
                did_you_mean(word, list(STOP_KINDS)),
            )
        ]
    if len(kinds) > 1:
        return [
            Problem(
                source.places.key(*base, kinds[1]),
                f"one stop cannot be both `{kinds[0]}` and `{kinds[1]}`",
                "put `- ` before the second",
            )
        ]
    kind = kinds[0]
    inner = data[kind]
    if not isinstance(inner, dict):
        return [
            Problem(
                source.places.at(*base, kind),
                f"`{kind}:` holds no keys",
                "indent what belongs to it by two more spaces",
            )
        ]
    beside = {key: value for key, value in data.items() if key != kind}
    both = [key for key in beside if key in inner]
    if both:
        return [
            Problem(
                source.places.key(*base, both[0]),
                f"`{both[0]}` is written beside `{kind}:` and inside it",
                "keep one",
            )
        ]
    places = _with_beside(source.places, (*base, kind), base, list(beside))
    return validate(STOP_KINDS[kind], {**inner, **beside}, places, (*base, kind))


def _with_beside(
    places: Places, inside: tuple[str | int, ...], beside: tuple[str | int, ...], keys: list[str]
) -> Places:
    """The same places, where the keys written beside a kind are found inside it as well."""
    if not keys:
        return places
    values, names = dict(places.values), dict(places.keys)
    for key in keys:
        values[(*inside, key)] = places.at(*beside, key)
        names[(*inside, key)] = places.key(*beside, key)
    return Places(places.file, values, names, places.lines)


def _once(problems: list[Problem]) -> list[Problem]:
    """The problems in the order of the file, each place and sentence once."""
    return sorted(set(problems), key=lambda problem: (problem.place, problem.what))
