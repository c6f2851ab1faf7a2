"""What a device keeps of a lesson that it kept while the lesson had another name."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Mapping
from contextlib import suppress

from generator.engine.pack import DamagedPackError
from generator.present.addresses import seen_from
from generator.present.languages import folder_of
from generator.present.output import Output
from generator.present.pages.take_home import KEEP_LIST
from generator.steps.lessons import KeptLesson
from generator.steps.site import FRONT, Site
from generator.write.keep_list import file_hash

_SHARED = ("assets/formerly.js", "assets/reading.css")
"""What the page at an old address loads and a lesson may not."""
_Listed = dict[str, str | int]


def kept_lists(site: Site, pages: Mapping[str, Output]) -> Iterator[Output]:
    """The list of what to keep, at each older name of a lesson: all of the lesson as it is now.

    A device that kept it then finds a newer version there, and keeps that: the page of the old address,
    which leads on, and the lesson at its new one, which opens without a network too.

    Args:
        site: of the lessons.
        pages: those at addresses of before, by their paths.
    """
    for lesson in site.lessons:
        for name in lesson.facts.standing.formerly:
            for language in lesson.facts.addresses:
                folder = folder_of(language, site.library.site)
                led = pages.get(f"{folder}{name}/{FRONT}")
                shared = (site.around.assets[path] for path in _SHARED)
                with suppress(DamagedPackError):  # it is made anew; the next build has the list
                    if led and site.library.site.keep_lessons:
                        yield _list(lesson, folder, name, (led, *shared))


def _list(lesson: KeptLesson, folder: str, name: str, own: Iterable[Output]) -> Output:
    """The list at one older name.

    Raises:
        DamagedPackError: what is kept of the lesson must be made anew; a preview has no such list.
    """
    now = json.loads(lesson.pack.held(f"{folder}{lesson.id}/{KEEP_LIST}"))
    listed: list[_Listed] = [_listed(one, f"{folder}{name}") for one in own]
    paths = {one["path"] for one in listed}
    files = [one for one in _from_there(now["files"], lesson.id) if one["path"] not in paths]
    told = {
        "title": now["title"],
        "version": file_hash(f"{now['version']} {name}".encode()),
        "files": listed + files,
        "extra": _from_there(now["extra"], lesson.id),
    }
    content = json.dumps(told, ensure_ascii=False, separators=(",", ":")).encode()
    return Output(f"{folder}{name}/{KEEP_LIST}", content)


def _listed(one: Output, folder: str) -> _Listed:
    path = seen_from(one.path, folder)
    return {"path": path, "bytes": len(one.content), "hash": file_hash(one.content)}


def _from_there(files: Iterable[_Listed], lesson: str) -> list[_Listed]:
    """The files of a lesson as seen from the folder beside its own."""
    return [
        one if str(one["path"]).startswith("../") else {**one, "path": f"../{lesson}/{one['path']}"}
        for one in files
    ]
