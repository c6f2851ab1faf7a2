"""What changed in a site since a revision, or since it was published last."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from pathlib import Path

from generator import __version__
from generator.engine.lock import alone
from generator.model.published import SITE_RECORD, Publication, Published
from generator.model.words import Words
from generator.present.state import KeptState
from generator.problems import LessonError, Weight
from generator.publish.compare import SiteChanges, compare
from generator.publish.revision import NoStateError, Revision, laid_out, last_change, revision
from generator.publish.site_state import (
    HeldLesson,
    MadeSite,
    SiteState,
    WriteByHand,
    made_site,
    recorded_state,
    site_state,
    state_of,
    states_of_both,
)
from generator.read.published import read_published
from generator.read.site_folder import folder_problems

_LAST_COMMIT = "HEAD"


@dataclass(frozen=True, slots=True)
class Compared:
    """A comparison, and with what."""

    against: str
    """``the last publication, 2026-11-26 17:03``; ``HEAD~1 (3f2a91c0, 2026-11-20)``."""
    changes: SiteChanges
    notes: tuple[str, ...]
    """What is not known, a sentence each."""
    words: Words
    """English ones, which commands speak."""


@dataclass(frozen=True, slots=True)
class _Before:
    against: str
    state: SiteState
    notes: tuple[str, ...] = ()


def changes_since(root: Path, name: str | None, write_by_hand: WriteByHand) -> Compared:
    """What changed; the work tree, git's index and the built site stay as they are.

    Args:
        root: folder of the site.
        name: a revision as git calls it; without one the last publication, and the last commit of a site
            that was never published.
        write_by_hand: makes the pages of a site that are written by hand.

    Raises:
        NoStateError: there is nothing to compare with.
        LessonError: something must be put right in the site first.
    """
    if problems := folder_problems(root):
        raise LessonError(problems)
    with alone(root) as lock:
        published = Published() if name else read_published(root)
        if published.publications:
            before = _last_published(root, published, write_by_hand, lock)
            now = site_state(root, write_by_hand, keep_out=lock)
            changes = compare(before.state, now)
            return Compared(before.against, changes, before.notes, now.words)
        found = revision(root, name or _LAST_COMMIT)
        made = _made_at(root, found, write_by_hand, lock)
        old, new = states_of_both(made, made_site(root, write_by_hand, keep_out=lock))
    against = str(found) if name else f"the last commit, {found.commit[:8]} of {found.at[:10]}"
    return Compared(against, compare(old, new), (), new.words)


def _made_at(root: Path, of: Revision, write_by_hand: WriteByHand, lock: int) -> MadeSite:
    """The site in a revision, made by today's program.

    Raises:
        NoStateError: today's program can make no site of it.
    """
    folder = laid_out(root, of)
    what = f"today's program can make no site of {of}"
    try:
        return made_site(folder, write_by_hand, keep_out=lock)
    except LessonError as error:
        first, *more = (one for one in error.problems if one.weight is Weight.MUST)
        rest = f", and {len(more)} more" if more else ""
        raise NoStateError(f"{what}: {first}{rest}; name another revision") from None
    except (ValueError, LookupError, AttributeError) as error:
        if not (folder / "theme").is_dir():
            raise
        # A theme of her own goes with the program it was made for; of then it may lack anything.
        why = f"its theme/ was made for another program ({error})"
        raise NoStateError(f"{what}: {why}; name another revision") from None


def _last_published(
    root: Path, published: Published, write_by_hand: WriteByHand, lock: int
) -> _Before:
    """What the record says of the last publication; texts and files out of the commit that it went out with."""
    last = published.publications[-1]
    against, record = f"the last publication, {_when(last)}", recorded_state(published)
    try:
        commit = last_change(root, SITE_RECORD)
        made = _made_at(root, revision(root, commit), write_by_hand, lock) if commit else None
    except NoStateError:
        made = None
    if made is None:
        note = (
            "The record of publications keeps numbers, stamps, names, times and addresses. Which text differs, "
            "and whether a page looks otherwise, is told against a revision: python3 generator changes HEAD"
        )
        return _Before(against, record, (note,))
    notes = () if last.program == __version__ else (_by_another(last.program),)
    return _Before(against, _with_record(state_of(made), record), notes)


def _with_record(made: SiteState, record: SiteState) -> SiteState:
    """What was published, as the record has it, with the texts and files that only the commit has."""
    lessons = {
        lesson: _recorded(held, made.lessons.get(lesson)) for lesson, held in record.lessons.items()
    }
    return replace(made, lessons=lessons)


def _recorded(held: HeldLesson, made: HeldLesson | None) -> HeldLesson:
    if made is None:
        return held
    states: Mapping[str, KeptState] = made.states
    return replace(
        made,
        states={
            language: KeptState(one.state, states[language].texts, states[language].film)
            if language in states and states[language].state.texts == one.state.texts
            else one
            for language, one in held.states.items()
        },
    )


def _when(publication: Publication) -> str:
    return f"{publication.at[:10]} {publication.at[11:16]} UTC"


def _by_another(version: str) -> str:
    return (
        f"It went out with program {version}, and this is {__version__}: what the program itself draws "
        "otherwise since is not told, but for numbers and stamps"
    )
