"""One run of the program over a site: what there is, what is known already, and how to make the rest."""

from __future__ import annotations

import json
import os
from dataclasses import dataclass, field
from pathlib import Path

from generator.engine.contents import Contents, combined
from generator.engine.inputs import Inputs, inputs_of
from generator.engine.store import Store, keeps_of
from generator.engine.uses import Uses
from generator.model.published import PUBLISHED
from generator.problems import LessonError, Problem, Weight
from generator.read.unseen import unseen_lessons
from generator.steps.by_hand import ByHand, keep_by_hand, kept_by_hand
from generator.steps.drafts import of_draft
from generator.steps.lessons import (
    KeptLesson,
    Recipe,
    bring_lessons,
    find_lessons,
    recipe_of,
    store_of,
)
from generator.steps.neighbours import Placed, placed
from generator.steps.past import published_of
from generator.steps.site import Site, Unmade, site_of
from generator.steps.standing import former_problems
from generator.write.fill import OldSite
from generator.write.fresh import Marks, around, mark_fresh, recorded, sources
from generator.write.swap import remove


@dataclass(slots=True)
class Run:
    """What a run knows; it writes nothing but what is kept."""

    root: Path
    target: Path
    """Folder of the finished site."""
    preview: bool
    keep_out: int | None
    """The lock, which no other process may hold open."""
    marks: Marks = field(repr=False)
    """Of every file the site is made from, as they were when the run began."""
    contents: Contents
    inputs: Inputs
    uses: Uses
    keys: dict[str, str] = field(default_factory=dict)
    """Of the lessons of the site that this run made, by id."""
    last: dict[str, KeptLesson] = field(default_factory=dict, repr=False)
    """For a preview: each lesson as it was when nothing in it had to be put right."""
    faults: tuple[Problem, ...] = ()
    """For a preview: what must be put right in lessons that it shows as they were, or not at all."""

    def site(self) -> Site:
        """The site with its lessons, made now or before.

        Raises:
            LessonError: with every problem of every lesson, when at least one must be put right; in a
                preview only when the site's data must be.
        """
        recipe = self._recipe()
        library = recipe.known().library
        unseen = tuple(unseen_lessons(self.root, library.site.languages))
        published, unread = published_of(self.root)
        lessons = self._lessons(recipe, unseen, unread)
        self.keys = {lesson.id: lesson.key for lesson in lessons}
        broken = self.inputs.lessons.keys() - self.keys
        unmade = Unmade(self.inputs.drafts, frozenset(broken), unseen)
        site = site_of(library, recipe.surroundings(), lessons, unmade, published)
        listed = [one.facts.listed for one in lessons]
        self._tell(tuple(former_problems(library, listed, unmade.folders, site.pages)))
        return site

    def _lessons(
        self, recipe: Recipe, unseen: tuple[Problem, ...], unread: tuple[Problem, ...]
    ) -> list[KeptLesson]:
        """Every lesson; in a preview one with a mistake is as it was before, and stops no other."""
        owns = self.owns()
        lost = unread + tuple(problem for problem in unseen if problem.weight is Weight.MUST)
        if not self.preview:
            try:
                lessons = bring_lessons(recipe, owns, self.uses, keep_out=self.keep_out)
            except LessonError as error:
                raise LessonError((*lost, *error.problems)) from None
            if lost:
                raise LessonError(lost)
            return lessons
        found = find_lessons(recipe, owns, self.uses, keep_out=self.keep_out, to_the_end=True)
        self.last.update((lesson.id, lesson) for lesson in found.lessons)
        self.faults = lost + tuple(
            problem
            for name, problems in found.faults.items()
            for problem in (of_draft(problems) if name in self.inputs.drafts else problems)
        )
        return [self.last[name] for name in owns if name in self.last]

    def _tell(self, problems: tuple[Problem, ...]) -> None:
        """What must be put right between lessons ends a build; a preview tells it beside its pages."""
        if problems and not self.preview:
            raise LessonError(problems)
        self.faults += problems

    def make_again(self, names: list[str]) -> list[KeptLesson]:
        """Make lessons anew whose packs are damaged."""
        recipe = self._recipe()
        for name in names:
            store_of(recipe).drop(self.keys[name])
        every = self.owns()
        return bring_lessons(recipe, {name: every[name] for name in names}, self.uses)

    def owns(self) -> dict[str, Placed]:
        """The lessons of the site among their neighbours.

        Raises:
            LessonError: the site's data must be put right.
        """
        return placed(self.inputs, self._recipe().known().library.site.languages)

    def kept_by_hand(self, site: Site) -> ByHand | None:
        """What is written by hand, made before; nothing where anything of it has changed."""
        return kept_by_hand(self._by_hand_store(), self._by_hand_key(site))

    def keep_by_hand(self, site: Site, made: ByHand) -> ByHand:
        """Keep what was made of it."""
        keep_by_hand(self._by_hand_store(), self._by_hand_key(site), made)
        return made

    def old_site(self) -> OldSite:
        """The site as the last build left it."""
        marks, note = recorded(str(self.root)) if self._is_own() else ({}, "")
        keys = json.loads(note) if note else {}
        return OldSite(os.path.abspath(self.target), marks, keys)  # noqa: PTH100  # as the marks have it

    def remember(self) -> None:
        """Write down what the next run can go by; what nobody wants any more goes."""
        self.remember_made()
        store_of(self._recipe()).sweep(self.keys.values())
        if self._is_own():
            mark_fresh(str(self.root), self.marks, json.dumps(self.keys))

    def remember_made(self) -> None:
        """Write down what was read and made, also where a mistake elsewhere ended the run."""
        self.contents.remember()
        self.uses.remember()

    def others_key(self, site: Site) -> str:
        """All that the files are made of which belong to no lesson: what lessons are, what is written by hand, the record."""
        record = str(Path(os.path.abspath(self.root), *PUBLISHED.split("/")))  # noqa: PTH100  # as the marks have it
        told = {
            path: self.contents[path]
            for path in self.marks
            if path.startswith(record) and not path.endswith("/")
        }
        return combined(
            {
                "by hand": self._by_hand_key(site),
                "library": self.inputs.library,
                "lessons": combined(self.keys),
                "record": combined(told),
            }
        )

    def _is_own(self) -> bool:
        return self.target == self.root / "site"

    def _by_hand_store(self) -> Store:
        return Store(self.root / ".cache" / "by-hand")

    def _recipe(self) -> Recipe:
        return recipe_of(self.root, self.inputs, preview=self.preview)

    def _by_hand_key(self, site: Site) -> str:
        """All that hand-written pages are made of, and all that they may lead to."""
        lessons = {path: ",".join(sorted(stops or ())) for path, stops in site.map.lessons.items()}
        names = [path for path in self.marks if not path.endswith(".yaml")]
        return combined(
            {
                "around": around(str(self.root)).decode("utf-8", "surrogateescape"),
                "program": self.inputs.program,
                "theme": self.inputs.theme,
                "words": self.inputs.words,
                "settings": self.inputs.settings,
                "files": combined(self.inputs.by_hand),
                "names": "\n".join(names),
                "lessons": combined(lessons),
                "preview": str(self.preview),
            }
        )


def begin(
    root: Path,
    target: Path,
    *,
    preview: bool = False,
    keep_out: int | None = None,
    last: dict[str, KeptLesson] | None = None,
) -> Run:
    """Look at everything a site is made from.

    Args:
        root: folder of the site.
        target: folder of the finished site.
        preview: whether it is for the educator's own eyes.
        keep_out: the lock, which no other process may hold open.
        last: for a preview, its lessons as they were; those that are right now are written there.
    """
    marks = sources(str(root))
    contents = Contents(root, marks)
    return Run(
        root=root,
        target=target,
        preview=preview,
        keep_out=keep_out,
        marks=marks,
        contents=contents,
        inputs=inputs_of(root, contents, preview=preview),
        uses=Uses(keeps_of(root) / f"uses{'-preview' if preview else ''}.json"),
        last={} if last is None else last,
    )


def forget(root: Path) -> None:
    """Trust nothing that was made before."""
    for name in ("built", "contents.json", "uses.json"):
        (root / ".cache" / name).unlink(missing_ok=True)
    for name in ("lessons", "library", "by-hand", "others", "templates", "papers"):
        remove(root / ".cache" / name)
