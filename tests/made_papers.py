"""Papers of the demo as files, and what poppler's programs say of them: a reader that did not make them."""

from __future__ import annotations

import subprocess
from pathlib import Path

from generator.author.papers import papers_of
from tests.made import write_files
from tests.project import ROOT


def demo_papers(folder: Path) -> Path:
    """Every paper of the demo in a folder, by its path on the site."""
    write_files(papers_of(ROOT, prints=(False, True)), folder)
    return folder


def info(file: Path) -> dict[str, str]:
    """What ``pdfinfo`` says of a file."""
    lines = _said("pdfinfo", file).splitlines()
    return {name: value.strip() for name, _, value in (line.partition(":") for line in lines)}


def words(file: Path) -> str:
    """What ``pdftotext`` reads in a file, in the order of its content, each run of spaces as one."""
    return " ".join(_said("pdftotext", "-raw", file, "-").split())


def lines(file: Path) -> list[str]:
    """The same, line by line."""
    return _said("pdftotext", "-raw", file, "-").splitlines()


def structure(file: Path) -> str:
    """The tree of its tags, with what is read aloud in the place of pictures."""
    return _said("pdfinfo", "-struct-text", file)


def _said(*words_: str | Path) -> str:
    """What a reader says; `pdfinfo` hands on a heading's name as it stands in the file, in UTF-16."""
    done = subprocess.run(list(words_), capture_output=True, check=True)
    return done.stdout.decode("utf-8", errors="replace")
