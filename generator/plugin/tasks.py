"""What MkDocs runs for: our own command, a whole site of its own, or a preview."""

from __future__ import annotations

from contextlib import ExitStack
from pathlib import Path
from typing import Protocol

from generator.build import building
from generator.problems import Problem, Weight
from generator.steps.by_hand import ByHand
from generator.steps.filling import Served, fill, show
from generator.steps.lessons import KeptLesson
from generator.steps.run import begin
from generator.steps.scratch import scratch
from generator.steps.site import Site


class Task(Protocol):
    """Gives what MkDocs needs before it renders, and takes what it rendered."""

    site: Site
    """The site with its lessons made."""
    folder: Path
    """Where MkDocs writes what it renders."""
    by_hand: ByHand | None
    """What is written by hand where it need not be rendered, or once it was."""
    faults: tuple[Problem, ...]
    """What must be put right in lessons; only a preview goes on with it."""

    def finish(self, made: ByHand) -> None:
        """Take what was rendered."""

    def fail(self, error: Exception) -> None:
        """Leave everything as it was."""


class OwnTask:
    """Our own command wants nothing but what is written by hand."""

    def __init__(self, site: Site, folder: Path) -> None:
        self.site = site
        self.folder = folder
        self.by_hand: ByHand | None = None
        self.faults: tuple[Problem, ...] = ()

    def finish(self, made: ByHand) -> None:
        """Hold it until our command takes it."""
        self.by_hand = made

    def fail(self, error: Exception) -> None:
        """Nothing was begun."""


class WholeSiteTask:
    """``mkdocs build`` wants a site in its folder: the same as our own command makes."""

    def __init__(self, root: Path, target: Path) -> None:
        self.by_hand: ByHand | None = None
        self.faults: tuple[Problem, ...] = ()
        with ExitStack() as begun:
            self._run, self._new = begun.enter_context(building(root, target))
            self.site = self._run.site()
            self.folder = begun.enter_context(scratch(root))
            self._begun = begun.pop_all()

    def finish(self, made: ByHand) -> None:
        """Put the site in its place."""
        with self._begun:
            fill(self._run, self.site, self._run.keep_by_hand(self.site, made), self._new)

    def fail(self, error: Exception) -> None:
        """The old site stays."""
        self._begun.__exit__(type(error), error, error.__traceback__)


class Showing:
    """What a preview shows from its beginning to its end."""

    def __init__(self) -> None:
        self._served: Served | None = None
        self._rendered: Path | None = None
        self._begun = ExitStack()
        self._last: dict[str, KeptLesson] = {}
        """Every lesson as it was when nothing in it had to be put right."""

    def task(self, root: Path, target: Path) -> PreviewTask:
        """What MkDocs runs for after a change.

        Raises:
            LessonError: the site's data must be put right.
        """
        self._served = self._served or Served(target)
        self._rendered = self._rendered or self._begun.enter_context(scratch(root))
        return PreviewTask(root, self._served, self._rendered, self._last)

    def end(self) -> None:
        """Clear away what was rendered."""
        self._begun.close()


class PreviewTask:
    """``mkdocs serve`` shows a folder, again and again; only what has changed is made anew."""

    def __init__(
        self, root: Path, served: Served, folder: Path, last: dict[str, KeptLesson]
    ) -> None:
        self._run = begin(root, served.folder, preview=True, last=last)
        self._served = served
        self.folder = folder
        self.site = self._run.site()
        self.faults = self._run.faults
        self.by_hand = self._run.kept_by_hand(self.site)

    def finish(self, made: ByHand) -> None:
        """Show it."""
        if self.by_hand is None and not any(one.weight is Weight.MUST for one in made.questions):
            self._run.keep_by_hand(self.site, made)
        show(self._run, self.site, made, self._served)
        self._run.remember()

    def fail(self, error: Exception) -> None:
        """The pages stay as they were."""
