"""``mkdocs.yml`` as MkDocs reads it, or every reason why it cannot."""

from __future__ import annotations

import os
from pathlib import Path

from mkdocs.config import load_config
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import Abort, ConfigurationError

from generator.author.pages import settings_problems
from generator.plugin.said import SETTINGS, listening, place_of, told
from generator.problems import LessonError, Place, Problem

NAME = "plumline"
"""What the plugin is called in ``mkdocs.yml``."""


def load_settings(root: Path, site: Path | None = None) -> MkDocsConfig:
    """MkDocs' configuration of a site.

    Args:
        root: folder of the site.
        site: folder to write to, in the place of that in the file; then MkDocs is strict.

    Raises:
        LessonError: there is no site here, or its settings must be put right.
    """
    if problems := [*settings_problems(root), *_time_problems()]:
        raise LessonError(problems)
    with listening() as said:
        try:
            config = load_config(str(root / SETTINGS))
        except Abort:
            raise LessonError(told(root, said)) from None
        except ConfigurationError as error:
            what = " ".join(error.format_message().split()).rstrip(".")
            hint = "take the file from the last commit"
            raise LessonError([Problem(place_of(root, SETTINGS, ""), what, hint)]) from None
    if said:
        raise LessonError(told(root, said))
    if NAME not in config.plugins:
        what, hint = "nothing here asks for the lessons' pages", f"write `plugins: [{NAME}]`"
        raise LessonError([Problem(place_of(root, SETTINGS, "plugins"), what, hint)])
    if site:
        config.site_dir, config.strict = str(site), True
    return config


_LATEST = 2**32 - 1
"""Seconds since 1970 that a gzip header has room for: RFC 1952, section 2.3.1 (from memory, status M)."""


def _time_problems() -> list[Problem]:
    """A time told by the machine around us that is none; MkDocs would end with a traceback."""
    told = os.environ.get("SOURCE_DATE_EPOCH")
    if told is None or (told.isascii() and told.isdecimal() and int(told[:11]) <= _LATEST):
        return []
    what = f"the machine gives SOURCE_DATE_EPOCH as `{told[:40]}`, which is no number of seconds since 1970"
    hint = "set it to digits, such as 1767225600, or take it away"
    return [Problem(Place(SETTINGS), what, hint)]
