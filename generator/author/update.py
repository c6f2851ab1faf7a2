"""A site moved to a newer program, tried out beside it first, and back again."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
import sysconfig
from collections.abc import Callable, Iterator, Mapping
from pathlib import Path

from generator.author.changes import changes_since
from generator.author.newer_program import NewerProgram, newer_program, version_in
from generator.author.program_file import FOLDER, LOCK, SET_UP, pinned
from generator.author.reference_files import SCHEMA
from generator.author.starter_pages import GUIDE, guide_pages
from generator.problems import LessonError, Place, Problem
from generator.write.swap import remove, replaced
from generator.write.whole import write_whole

Said = Callable[[str], None]
"""Where a sentence goes while it works."""
_BEFORE = "before"
"""In the program's folder: the program that was there before, and what it had of the lessons."""
_REWRITTEN = "rewritten.json"
_SITE = ("lessons", "site_data", "theme", "mkdocs.yml")
_TEXTS = {".yaml", ".yml", ".md", ".json", ".vtt"}
_STEPS = (("carry-over",), ("check",), ("build",))
"""What the newer program is asked to do with a copy of the site."""


def update(root: Path, given: Path, tell: Said) -> None:
    """Move a site to a newer program, once that has checked and built a copy of it.

    Args:
        root: folder of the site.
        given: the newer program, one file or a folder with its repository.
        tell: is told what changes and what is being done.

    Raises:
        LessonError: the site is as it was.
    """
    now = _version(root)
    beside = root / ".cache" / "update"
    remove(beside)
    (beside / "site").mkdir(parents=True)
    try:
        newer = newer_program(given, beside, now)
        tell(f"From {now} to {newer.version}. What changes:\n\n{_told(newer, now)}\n")
        trial = _trial(root, beside / "site", newer)
        tell("Setting it up beside the program you have: a minute or two.")
        _try_out(install(trial), trial, now)
        changed = dict(_changed(root, trial))
        _put_in_place(root, trial, {path: new for path, (_, new) in changed.items()})
        _remember(root, {path: both for path, both in changed.items() if both[0] is not None})
    finally:
        remove(beside)
    tell(f"The program is {newer.version} now, and it has checked and built your site.")
    for path in changed:
        tell(f"  {path} is in its new shape.")


def go_back(root: Path, tell: Said) -> None:
    """Give a site the program it had before; a second time, the newer one again.

    Raises:
        LessonError: there is none; the site is as it was.
    """
    now = _version(root)
    before = root / FOLDER / _BEFORE
    old = version_in(before)
    if not old:
        hint = "what was committed is in git: `git log generator` names the days"
        raise LessonError(
            [Problem(Place(f"{FOLDER}/{_BEFORE}"), "no earlier program is here", hint)]
        )
    texts: dict[str, list[str]] = json.loads((before / _REWRITTEN).read_text("utf-8"))
    with replaced(root / FOLDER) as fresh:
        _copy_program(before, fresh)
        _copy_program(root / FOLDER, fresh / _BEFORE)
        turned = {path: [new, was] for path, (was, new) in texts.items()}
        (fresh / _BEFORE / _REWRITTEN).write_text(json.dumps(turned), "utf-8")
    tell(f"The program is {old} again; it was {now}.")
    for path, (was, new) in texts.items():
        file = root / path
        if file.is_file() and file.read_bytes().decode("utf-8") == new:
            write_whole(file, was, newline="")
            tell(f"  {path} is as it was.")
        else:
            tell(f"  {path} was changed since and is left so; `check` says whether it fits.")


def install(trial: Path) -> tuple[str, ...]:
    """Set up the program of a folder in a place of its own; returns what starts it.

    Raises:
        LessonError: it cannot be set up.
    """
    venv = trial.parent / "venv"
    scripts = Path(sysconfig.get_path("scripts", "venv", {"base": str(venv)}))
    make = (sys.executable, "-m", "venv", str(venv))
    pip = (str(scripts / "python"), "-m", "pip", "install", "--quiet", "--no-input")
    for command in (make, (*pip, "--require-hashes", "-r", LOCK)):
        if subprocess.run(command, cwd=trial, check=False).returncode:
            what = "the newer program could not be set up, see above; nothing was changed"
            raise LessonError(
                [Problem(Place(LOCK), what, "is the internet reachable? Try once more")]
            )
    return (str(shutil.which("plumline", path=scripts) or scripts / "plumline"),)


def _version(root: Path) -> str:
    now = version_in(root / FOLDER)
    if not now:
        what = "this site has no program of its own that could be exchanged"
        hint = "the program's own repository is updated by `git pull`; a site is begun by `start`"
        raise LessonError([Problem(Place(FOLDER), what, hint)])
    return now


def _told(newer: NewerProgram, now: str) -> str:
    return changes_since(newer.changelog, now) or "Its list of changes names nothing."


def _trial(root: Path, trial: Path, newer: NewerProgram) -> Path:
    """A copy of the site with the newer program in it; films are only linked, for they may be large."""
    for name in _SITE:
        if (root / name).is_dir():
            shutil.copytree(root / name, trial / name, symlinks=True, copy_function=_copy)
        elif (root / name).is_file():
            shutil.copy2(root / name, trial / name)
    (trial / FOLDER).mkdir()
    wheel = shutil.copy2(newer.file, trial / FOLDER)
    (trial / LOCK).write_text(pinned(newer.lock, Path(wheel)), "utf-8", newline="\n")
    (trial / SET_UP).write_text(newer.set_up, "utf-8", newline="\n")
    return trial


def _copy(source: str, target: str) -> str:
    if Path(source).suffix.lower() not in _TEXTS:
        try:
            os.link(source, target)
        except OSError:
            pass  # another disk, or one without links
        else:
            return target
    return str(shutil.copy2(source, target))


def _try_out(program: tuple[str, ...], trial: Path, now: str) -> None:
    """Let the newer program rewrite, check and build the copy.

    Raises:
        LessonError: it does not like it; what it says is in the problem.
    """
    for step in _STEPS:
        words = [*program, *step, *(("--since", now) if step == ("carry-over",) else ())]
        done = subprocess.run(
            words, cwd=trial, check=False, capture_output=True, text=True, encoding="utf-8"
        )
        if done.returncode:
            what = f"the newer program stops at `{step[0]}`, and nothing was changed. It says:\n{done.stderr or done.stdout}"
            hint = "put that right with the program you have, or leave the update for later"
            raise LessonError([Problem(Place("lessons"), what, hint)])


def _changed(root: Path, trial: Path) -> Iterator[tuple[str, tuple[str | None, str]]]:
    """What the newer program wrote otherwise: by path, the text of before, if any, and its own.

    A page of the guide that somebody changed is left alone.
    """
    guide = dict(guide_pages())
    for name in ("lessons", "site_data"):
        for file in sorted((trial / name).rglob("*")):
            path = file.relative_to(trial).as_posix()
            if not file.is_file() or file.is_symlink() or file.suffix not in _TEXTS:
                continue
            old = (root / path).read_bytes() if (root / path).is_file() else None
            own = path.startswith(f"{GUIDE}/") and old not in {None, guide.get(path)}
            schema = path == SCHEMA and old is None
            if old != file.read_bytes() and not own and not schema:
                yield (
                    path,
                    (
                        None if old is None else old.decode("utf-8"),
                        file.read_bytes().decode("utf-8"),
                    ),
                )


def _put_in_place(root: Path, trial: Path, texts: Mapping[str, str]) -> None:
    with replaced(root / FOLDER) as fresh:
        _copy_program(trial / FOLDER, fresh)
        _copy_program(root / FOLDER, fresh / _BEFORE)
        (fresh / _BEFORE / _REWRITTEN).write_text("{}", "utf-8")
    for path, text in texts.items():
        (root / path).parent.mkdir(parents=True, exist_ok=True)
        write_whole(root / path, text, newline="")


def _remember(root: Path, texts: Mapping[str, tuple[str | None, str]]) -> None:
    write_whole(root / FOLDER / _BEFORE / _REWRITTEN, json.dumps(texts))


def _copy_program(source: Path, target: Path) -> None:
    """The three files of a program."""
    target.mkdir(exist_ok=True)
    for file in (*source.glob("*.whl"), source / Path(LOCK).name, source / Path(SET_UP).name):
        shutil.copy2(file, target)
