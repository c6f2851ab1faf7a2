"""Whether a folder is that of a site, and whether its settings for MkDocs can be read at all."""

from __future__ import annotations

from pathlib import Path

import yaml

from generator.problems import Place, Problem
from generator.read.broken import broken, unreadable
from generator.read.files import read_text
from generator.read.merge_marks import merge_problem

SETTINGS = "mkdocs.yml"


def folder_problems(root: Path) -> list[Problem]:
    """One sentence where the folder holds no site; nothing where it does."""
    if any((root / name).exists() for name in ("lessons", "site_data", SETTINGS)):
        return []
    what = "this is not the folder of a site: it holds no lessons/ and no site_data/"
    hint = "go to the folder that does, or name it with --root"
    return [Problem(Place(SETTINGS), what, hint)]


def settings_problems(root: Path) -> list[Problem]:
    """What keeps ``mkdocs.yml`` from being read; its values are MkDocs' own business."""
    if problems := folder_problems(root):
        return problems
    text = read_text(root, SETTINGS)
    if isinstance(text, Problem):
        return [text]
    if merged := merge_problem(SETTINGS, text):
        return [merged]
    try:
        for _ in yaml.parse(text):
            pass
    except yaml.MarkedYAMLError as error:
        return [broken(SETTINGS, text, error)]
    except yaml.reader.ReaderError:
        return [unreadable(SETTINGS, text)]
    return []
