"""Every lesson of a site, made once, and found again while nothing it depends on has changed."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import closing
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

from generator.engine.contents import combined
from generator.engine.inputs import Inputs
from generator.engine.library import KnownLibrary, known_library
from generator.engine.pack import Pack
from generator.engine.side_by_side import each_made
from generator.engine.store import Store, keeps_of
from generator.engine.uses import Uses
from generator.making import Surroundings, make_lesson
from generator.present.languages import folder_of
from generator.problems import LessonError, Problem, Weight
from generator.read.handwritten import handwritten_pages
from generator.steps.facts import LessonFacts, facts_of, from_facts, to_facts
from generator.steps.library import checked_library
from generator.steps.neighbours import Placed
from generator.steps.past import past_of, stamps_in
from generator.steps.surroundings import surroundings
from generator.steps.work import work_lesson


@dataclass(frozen=True, slots=True)
class KeptLesson:
    """A lesson with its files made."""

    id: str
    key: str
    """All that its files depend on, as one word."""
    pack: Pack
    facts: LessonFacts


@dataclass(frozen=True, slots=True)
class Recipe:
    """What every lesson of a site is made with; small enough to be sent to other processes."""

    root: Path
    preview: bool
    library: str
    """Key of the library."""
    around: str
    """Key of all else that stands around a lesson."""

    def known(self) -> KnownLibrary:
        """The library, read once in every process.

        Raises:
            LessonError: it must be put right.
        """
        return _known(self.root, self.library)

    def surroundings(self) -> Surroundings:
        """What stands around the lessons, made once in every process."""
        return _surroundings(self)

    def key(self, own: str, used: Iterable[str]) -> str:
        """The key of a lesson by what lies in its folder and the entries of the library it uses."""
        sums = self.known().sums_of(sorted(used))
        return combined({"own": own, "around": self.around, **sums})


def recipe_of(root: Path, inputs: Inputs, *, preview: bool) -> Recipe:
    """The recipe of a site.

    Raises:
        LessonError: the library must be put right.
    """
    library = combined({"program": inputs.program, "files": inputs.library})
    site = _known(root, library).library.site
    pages = {one: handwritten_pages(root, folder_of(one, site)) for one in site.languages}
    around = {
        "program": inputs.program,
        "theme": inputs.theme,
        "words": inputs.words,
        "pages": json.dumps(pages),
        "preview": str(preview),
    }
    return Recipe(root, preview, library, combined(around))


@dataclass(frozen=True, slots=True)
class Made:
    """What became of a lesson."""

    id: str
    problems: tuple[Problem, ...]
    """Among them one that must be put right, where nothing was made."""
    key: str = ""
    used: tuple[str, ...] = ()
    """Names of the entries of the library that it uses."""


@dataclass(frozen=True, slots=True)
class Maker:
    """Makes one lesson after the other and keeps each."""

    recipe: Recipe
    only_read: bool = False
    """Whether lessons are only read and checked, for the site will not be built."""

    def __call__(self, task: tuple[str, Placed]) -> Made:
        """Make a lesson by its folder's name, among its neighbours."""
        name, place = task
        recipe = self.recipe
        library, asked = recipe.known().watched()
        worked = work_lesson(recipe.root, f"lessons/{name}/lesson.yaml", library)
        if self.only_read or not worked.results:
            return Made(name, worked.problems)
        past = past_of(recipe.root, name, next(iter(worked.results.values())).lesson.file.formerly)
        outputs = make_lesson(worked.results, recipe.surroundings(), place.beside, past)
        key, used = recipe.key(place.own, asked), tuple(sorted(asked))
        facts = to_facts(facts_of(worked, stamps_in(outputs)))
        kept = ((output.path, output.held) for output in outputs)
        store_of(recipe).keep(key, facts, kept)
        return Made(name, worked.problems, key, used)


def store_of(recipe: Recipe) -> Store:
    """Where the lessons of a site are kept; those of a preview stay out of their way."""
    return Store(keeps_of(recipe.root) / ("preview" if recipe.preview else "lessons"))


@dataclass(frozen=True, slots=True)
class FoundLessons:
    """Lessons kept or made now, and what became of the others."""

    lessons: list[KeptLesson]
    questions: list[Problem]
    """What is questionable about any of them."""
    faults: Mapping[str, tuple[Problem, ...]]
    """By name of a lesson that could not be made: what must be put right in it."""


def bring_lessons(
    recipe: Recipe, owns: Mapping[str, Placed], known: Uses, *, keep_out: int | None = None
) -> list[KeptLesson]:
    """Every lesson, kept or made now, in the order given; arguments as of ``find_lessons``.

    Raises:
        LessonError: with every problem of every lesson, when at least one must be put right.
    """
    found = find_lessons(recipe, owns, known, keep_out=keep_out)
    if found.faults:
        faults = (problem for problems in found.faults.values() for problem in problems)
        raise LessonError((*faults, *found.questions))
    return found.lessons


def find_lessons(
    recipe: Recipe,
    owns: Mapping[str, Placed],
    known: Uses,
    *,
    keep_out: int | None = None,
    to_the_end: bool = False,
) -> FoundLessons:
    """Every lesson that can be made, kept or made now, in the order given.

    Args:
        recipe: what they are made with.
        owns: the lessons among their neighbours, by their folders' names.
        known: which entries of the library lessons used; what is found out now is added.
        keep_out: a file that no other process may hold open.
        to_the_end: whether the rest is made as well once a lesson cannot be; else it is only read.
    """
    found = {name: _find(recipe, name, one.own, known) for name, one in owns.items()}
    missing = [(name, owns[name]) for name, kept in found.items() if kept is None]
    problems = [one for kept in found.values() if kept for one in kept.facts.questions]
    faults: dict[str, tuple[Problem, ...]] = {}
    for made in _make(recipe, missing, keep_out, to_the_end=to_the_end):
        musts = tuple(one for one in made.problems if one.weight is Weight.MUST)
        problems += (one for one in made.problems if one.weight is not Weight.MUST)
        if musts:
            faults[made.id] = musts
        if made.key:
            known.add(owns[made.id].own, recipe.around, made.used)
            found[made.id] = _kept(recipe, made.id, made.key)
    return FoundLessons([kept for kept in found.values() if kept], problems, faults)


def _make(
    recipe: Recipe, tasks: Sequence[tuple[str, Placed]], keep_out: int | None, *, to_the_end: bool
) -> Iterator[Made]:
    """Make lessons; from the first that cannot be made, the others are only read, unless told otherwise."""
    if not tasks:
        return
    recipe.known(), recipe.surroundings()  # once, before processes begin as copies of this one
    done = 0
    with closing(each_made(Maker(recipe), tasks, keep_out=keep_out)) as making:
        for made in making:
            yield made
            done += 1
            if not (made.key or to_the_end):
                break
    with closing(each_made(Maker(recipe, only_read=True), tasks[done:], keep_out=keep_out)) as read:
        yield from read


def _find(recipe: Recipe, name: str, own: str, known: Uses) -> KeptLesson | None:
    used = known.find(own, recipe.around)
    return None if used is None else _kept(recipe, name, recipe.key(own, used))


def _kept(recipe: Recipe, name: str, key: str) -> KeptLesson | None:
    """A lesson that is kept under a key; nothing where it is not, or is damaged."""
    pack = store_of(recipe).find(key)
    if pack is None:
        return None
    try:
        return KeptLesson(name, key, pack, from_facts(pack.facts))
    except ValueError:
        return None


@lru_cache(maxsize=1)
def _known(root: Path, key: str) -> KnownLibrary:
    store = Store(keeps_of(root) / "library")
    return known_library(store, key, lambda: checked_library(root))


@lru_cache(maxsize=1)
def _surroundings(recipe: Recipe) -> Surroundings:
    return surroundings(recipe.root, recipe.known().library, preview=recipe.preview)
