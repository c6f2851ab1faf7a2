"""A share of the lessons made on one machine of several, and the shares put together on another."""

from __future__ import annotations

import json
import shutil
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from generator.engine.lock import alone
from generator.problems import LessonError, Place, Problem
from generator.steps.lessons import Recipe, bring_lessons, recipe_of, store_of
from generator.steps.run import Run, begin
from generator.write.swap import replaced

_LIST = "part.json"


@dataclass(frozen=True, slots=True)
class Part:
    """Which share of the lessons."""

    number: int
    """Counted from 1."""
    of: int
    """How many shares there are."""

    @property
    def folder(self) -> str:
        """What its folder is called: ``part-3-of-8``."""
        return f"part-{self.number}-of-{self.of}"

    def share(self, names: Sequence[str]) -> list[str]:
        """Its lessons, each of which is in one share."""
        return list(names[self.number - 1 :: self.of])


def build_part(root: Path, part: Part) -> tuple[Path, tuple[Problem, ...]]:
    """Make a share of the lessons; gives the folder it is in, and what is questionable.

    Raises:
        LessonError: another build is under way, or a lesson of the share must be put right.
    """
    with alone(root) as lock:
        run = begin(root, root / "site", keep_out=lock)
        recipe = recipe_of(root, run.inputs, preview=False)
        every = run.owns()
        owns = {name: every[name] for name in part.share(list(every))}
        lessons = bring_lessons(recipe, owns, run.uses, keep_out=lock)
        used = {name: run.uses.find(one.own, recipe.around) for name, one in owns.items()}
        target = root / part.folder
        with replaced(target) as folder:
            for lesson in lessons:
                shutil.copyfile(lesson.pack.file, folder / lesson.key)
            told = {"part": part.number, "of": part.of, "around": recipe.around, "used": used}
            (folder / _LIST).write_text(json.dumps(told), "utf-8")
        run.contents.remember()
        run.uses.remember()
    return target, tuple(one for lesson in lessons for one in lesson.facts.questions)


def take_in(root: Path, folders: Iterable[Path]) -> None:
    """Take the lessons of all shares into a site's store, where the next build finds them.

    Raises:
        LessonError: a share is missing, damaged or made of other files.
    """
    with alone(root):
        run = begin(root, root / "site")
        recipe = recipe_of(root, run.inputs, preview=False)
        told = {folder: _read(folder) for folder in folders}
        if missing := _missing([part for part, _, _ in told.values()]):
            raise LessonError([missing])
        problems = [
            problem
            for folder, (_, around, used) in told.items()
            for problem in _taken(run, recipe, folder, around, used)
        ]
        if problems:
            raise LessonError(problems)
        run.uses.remember()


def _taken(
    run: Run, recipe: Recipe, folder: Path, around: str, used: Mapping[str, list[str]]
) -> Iterable[Problem]:
    """Take in one share; gives the first thing that is wrong with it."""
    every = run.owns()
    for name, names in used.items():
        own = every[name].own if name in every else ""
        file = folder / recipe.key(own, names)
        if around != recipe.around or not own or not file.is_file():
            what = "this share was made of other files, or by another program"
            return [Problem(Place(folder.name), what, "make all shares anew of the same commit")]
        if not store_of(recipe).take_in(file):
            what = f"the lesson `{name}` in this share is damaged"
            return [Problem(Place(folder.name), what, "make the share anew")]
        run.uses.add(own, recipe.around, names)
    return []


def _read(folder: Path) -> tuple[Part, str, dict[str, list[str]]]:
    """Which share a folder holds, what it was made in, and what each lesson used."""
    try:
        told = json.loads((folder / _LIST).read_bytes())
        used = {str(name): [str(one) for one in names] for name, names in told["used"].items()}
        return Part(int(told["part"]), int(told["of"])), str(told["around"]), used
    except (OSError, ValueError, KeyError, TypeError, AttributeError):
        what, hint = "this folder holds no share of a site", "name those that build --part made"
        raise LessonError([Problem(Place(folder.name), what, hint)]) from None


def _missing(parts: Sequence[Part]) -> Problem | None:
    """What is wrong where the shares do not make a whole."""
    of = max((part.of for part in parts), default=1)
    numbers = sorted(part.number for part in parts if part.of == of)
    lacking = [str(number) for number in range(1, of + 1) if number not in numbers]
    if not lacking and len(numbers) == len(parts) == of:
        return None
    what = (
        f"of {of} shares these are not there: {', '.join(lacking)}"
        if lacking
        else ("the shares do not belong together")
    )
    return Problem(Place("site"), what, "name every share of one site once")
