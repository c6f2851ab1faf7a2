"""A site of somebody's own, begun in a new folder from five answers."""

from __future__ import annotations

import json
import shutil
from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum
from pathlib import Path
from tempfile import TemporaryDirectory

from pydantic import ValidationError

from generator import carried
from generator.author.lesson import begin_lesson
from generator.author.program_file import LOCK, SET_UP, pinned, program_file
from generator.author.reference_files import write_schema
from generator.author.starter_pages import starter_pages
from generator.model.site import SiteFile
from generator.problems import LessonError, Place, Problem

_PACKAGE = Path(__file__).parents[1]
_STARTER, _FORGES = _PACKAGE / "starter", _PACKAGE / "forges"


class Forge(StrEnum):
    """Where the site will be published, by the kind of workflow that does it."""

    GITHUB = "github"
    GITLAB = "gitlab"
    SERVER = "server"
    """Any web server: plain files are copied there, and nothing does it by itself."""


@dataclass(frozen=True, slots=True)
class Answers:
    """What a site begins with."""

    programme: str
    """Name of the programme, shown above every lesson."""
    address: str
    """Where the site will stand, ending in a slash; nothing where that is not known yet."""
    languages: tuple[str, ...]
    """Tags of BCP 47, the first the lessons' own."""
    forge: Forge
    lesson: str
    """Title of the first lesson."""


def start(folder: Path, answers: Answers) -> None:
    """Fill a folder with a whole site; it is there in full or not at all.

    Raises:
        LessonError: as ``refuse``, or no folder can be named by the lesson's title.
    """
    refuse(folder)
    folder = folder.absolute()
    parent = folder.parent
    parent.mkdir(parents=True, exist_ok=True)
    with TemporaryDirectory(prefix=f".{folder.name}.", dir=parent) as beside:
        root = Path(beside) / "site"
        for path, content in _files(answers):
            file = root / path
            file.parent.mkdir(parents=True, exist_ok=True)
            file.write_bytes(content)
        (root / "generator").mkdir()
        _put_program(root)
        begin_lesson(root, answers.lesson)
        write_schema(root)
        if not folder.is_dir():
            root.rename(folder)
            return
        for one in sorted(
            root.iterdir()
        ):  # an empty folder stays the one it is: somebody may stand in it
            one.rename(folder / one.name)


def _put_program(root: Path) -> None:
    wheel = program_file(root / "generator")
    lock = Path(carried.HOME, "requirements.lock").read_text("utf-8")
    (root / LOCK).write_text(pinned(lock, wheel), "utf-8", newline="\n")
    shutil.copyfile(_PACKAGE / "__main__.py", root / SET_UP)


def _files(answers: Answers) -> Iterator[tuple[str, bytes]]:
    """Everything but the program, by its path in the site."""
    said = {
        "PROGRAMME": answers.programme,
        "PUBLISH": _PUBLISH[answers.forge],
    }
    quoted = {
        "PROGRAMME": json.dumps(answers.programme, ensure_ascii=False),
        "ADDRESS": answers.address or '""',
        "LANGUAGES": f"[{', '.join(answers.languages)}]",
    }
    yield "README.md", _filled("README.md", said)
    yield "site_data/site.yaml", _filled("site.yaml", quoted)
    yield "mkdocs.yml", _filled("mkdocs.yml", {})
    yield ".gitignore", _filled("gitignore", {})
    yield ".gitattributes", _filled("gitattributes", {})
    yield from starter_pages(answers.languages)
    match answers.forge:
        case Forge.GITHUB:
            yield ".github/workflows/publish.yml", _workflow("github/publish.yml")
        case Forge.GITLAB:
            yield ".gitlab-ci.yml", _workflow("gitlab/.gitlab-ci.yml")
        case Forge.SERVER:
            pass


def _filled(name: str, words: dict[str, str]) -> bytes:
    text = (_STARTER / name).read_text("utf-8")
    for word, put in words.items():
        text = text.replace(word, put)
    return text.encode()


def _workflow(name: str) -> bytes:
    """A ready workflow; the lock lies beside the program."""
    return (_FORGES / name).read_text("utf-8").replace("requirements.lock", LOCK).encode()


def refuse(folder: Path) -> None:
    """Stop where something is in a new site's way.

    Raises:
        LessonError: the folder holds something already, or is a place for something else.
    """
    if problems := tuple(_in_the_way(folder)):
        raise LessonError(problems)


def _in_the_way(folder: Path) -> Iterator[Problem]:
    home = Path(carried.HOME)
    if not carried.IN_PACKAGE and folder.resolve().is_relative_to(home.resolve()):
        what = "this folder is inside of the program's own"
        yield Problem(Place(str(folder)), what, "choose one beside it, such as ../my-lessons")
    elif folder.is_symlink() or (folder.exists() and not folder.is_dir()):
        yield Problem(Place(str(folder)), "this is no folder", "choose another name")
    elif folder.is_dir() and any(folder.iterdir()):
        what = "this folder is not empty, and nothing in it is touched"
        yield Problem(Place(str(folder)), what, "choose a new one, or take everything out of it")


def wrong_answers(answers: Answers) -> Iterator[str]:
    """A sentence for each answer that no site can have, with a way out."""
    said = {
        "programme": answers.programme,
        "address": answers.address,
        "languages": " ".join(answers.languages),
    }
    try:
        SiteFile(programme=answers.programme, address=answers.address, languages=answers.languages)
    except ValidationError as error:
        for key in dict.fromkeys(str(one["loc"][0]) for one in error.errors()):
            yield f"{_CALLED[key]} cannot be `{said[key]}`: {_HINTS[key]}."
    if not answers.programme:
        yield f"Your program has no name: {_HINTS['programme']}."
    known = sorted(file.stem for file in Path(carried.HOME, "site_data/words").glob("*.yaml"))
    for language in answers.languages:
        if language not in known:
            begin = f"begin with {' or '.join(known)}"
            yield f"The program has no words in `{language}` yet: {begin}, and add a language later, as the guide says."


_CALLED = {
    "programme": "The name of your program",
    "address": "The address",
    "languages": "The list of languages",
}
_HINTS = {
    "programme": "write 1 to 120 signs",
    "address": "write it from https:// to its last slash, or leave it empty until you know it",
    "languages": "write tags such as en or es, the lessons' own first",
}
_PUBLISH = {
    Forge.GITHUB: "Once, in the repository's settings: Pages, Source, GitHub Actions. From then on every push publishes: `.github/workflows/publish.yml` checks the lessons, builds the site and stops at a mistake with its line.",
    Forge.GITLAB: "Once, in the project's settings: switch Pages on. From then on every push publishes: `.gitlab-ci.yml` checks the lessons, builds the site and stops at a mistake with its line.",
    Forge.SERVER: "Name your web server in `site_data/site.yaml`, `publish: {server: user@host:/path}` or `publish: {folder: ../www}`. Or copy all of `site/` there yourself, once `python3 generator build` has written it.",
}
