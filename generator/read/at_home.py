"""What lies in ``lessons/`` and is not published, because no lesson and no page names it."""

from __future__ import annotations

import os
from collections.abc import Collection, Iterator, Mapping
from pathlib import Path

from generator.problems import Place, Problem, Weight
from generator.read.unseen import LESSON

_GUIDE = "guide"
_MOST = 3
"""Names in a sentence; of more, their number."""
_WAY_OUT = "name it in lesson.yaml or link to it from a page if it should go out"


def linked_folders(root: Path) -> list[Problem]:
    """Folders that are links to another place: whoever follows one may read the whole disk."""
    lessons = root / "lessons"
    return [
        Problem(
            Place((Path(above) / name).relative_to(root).as_posix()),
            f"the folder `{name}` is a link to another place, and no link is followed",
            "put the folder itself here",
        )
        for above, folders, _ in os.walk(lessons)  # which follows none
        for name in folders
        if (Path(above) / name).is_symlink()
    ]


def at_home(
    root: Path,
    published: Collection[str],
    languages_off: Mapping[str, str],
    unmade: Collection[str] = (),
) -> Iterator[Problem]:
    """A question for each folder with files that stay at home.

    Args:
        root: folder of the site.
        published: files that go out, below ``lessons/``.
        languages_off: by name of a folder with pages of a language the site does not have, what to do.
        unmade: folders of lessons of which is told elsewhere that they are not published, and why.
    """
    lessons = root / "lessons"
    named = {f"{name.rpartition('/')[0]}/" for name in published}
    yield from _files(lessons, "", published)
    for folder in _visible(lessons):
        if not folder.is_dir() or folder.is_symlink() or folder.name in {_GUIDE, *unmade}:
            continue
        if folder.name in languages_off:
            what = f"the pages in lessons/{folder.name}/ are not published"
            yield _question(folder.name, what, languages_off[folder.name])
        elif not any(name.startswith(f"{folder.name}/") for name in named | _lesson(folder)):
            yield _folder(folder)
        else:
            yield from _inside(folder, folder.name, published, named)


def _inside(
    folder: Path, path: str, published: Collection[str], named: Collection[str]
) -> Iterator[Problem]:
    """The files of one folder, and folders in it that hold nothing that goes out."""
    yield from _files(folder, path, published)
    for inner in _visible(folder):
        if inner.is_dir() and not inner.is_symlink():
            below = f"{path}/{inner.name}"
            if any(name.startswith(f"{below}/") for name in named):
                yield from _inside(inner, below, published, named)
            else:
                what = f"the folder `{inner.name}` stays here and is not published"
                yield _question(below, what, "link to its files from a page if they should go out")


def _files(folder: Path, path: str, published: Collection[str]) -> Iterator[Problem]:
    """The files of one folder that stay, in one sentence."""
    names = [
        file.name
        for file in _visible(folder)
        if (file.is_symlink() or not file.is_dir())
        and f"{path}/{file.name}".lstrip("/") not in published
        and not _is_lessons_own(file.name)
    ]
    if not names:
        return
    links = [name for name in names if (folder / name).is_symlink()]
    shown = [f"`{name}`" for name in names[:_MOST]]
    rest = [f"{len(names) - _MOST} more"] if len(names) > _MOST else []
    *most, last = [*shown, *rest]
    listed = f"{', '.join(most)} and {last}" if most else last
    stay = "stay here and are" if len(names) > 1 else "stays here and is"
    hint = "put the file itself here; no link is followed" if links == names else _WAY_OUT
    spot = f"{path}/{names[0]}".lstrip("/") if len(names) == 1 else path
    yield _question(spot, f"{listed} {stay} not published", hint)


def _folder(folder: Path) -> Problem:
    """A folder that is no lesson and holds nothing that goes out."""
    what = f"the folder `{folder.name}` holds no {LESSON} and is not published"
    return _question(folder.name, what, f"put a {LESSON} into it if it is a lesson")


def _lesson(folder: Path) -> set[str]:
    """The folder itself where it is that of a lesson."""
    return {f"{folder.name}/"} if (folder / LESSON) in set(folder.iterdir()) else set()


def _is_lessons_own(name: str) -> bool:
    """Whether a file is one the program reads and never publishes."""
    return name in {LESSON, "recorded.yaml", "reviewed.yaml"} or (
        name.startswith("lesson.") and name.endswith(".yaml")
    )


def _visible(folder: Path) -> list[Path]:
    """What a folder holds, in order; hidden files are a machine's own business."""
    return sorted(path for path in folder.iterdir() if not path.name.startswith("."))


def _question(path: str, what: str, hint: str) -> Problem:
    return Problem(Place(f"lessons/{path}".rstrip("/")), what, hint, Weight.QUESTION)
