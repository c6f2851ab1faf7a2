"""What the worker says in the place of a page that is not kept: it is one file for all languages of the site."""

from __future__ import annotations

import json
from collections.abc import Iterable

from generator.present.words.say import Say

NOT_KEPT_TEXTS = "js/not-kept-texts.js"
"""The module that holds them; its own are empty and are replaced when the worker's files are joined."""


def not_kept_texts(says: Iterable[Say]) -> str:
    """The module with the words of each language by its folder, the site's first one first."""
    texts = {f"{say.language}/" if number else "": _in(say) for number, say in enumerate(says)}
    return f"export const notKeptTexts = {json.dumps(texts, ensure_ascii=False)};\n"


def _in(say: Say) -> dict[str, str | dict[str, str]]:
    return {
        "language": say.locale,
        "direction": say.direction,
        "says": {
            "not_kept": say("not_kept"),
            "not_kept_says": say("not_kept_says"),
            "not_kept_these": say("not_kept_these"),
            "not_kept_again": say("not_kept_again"),
            "all_lessons": say("all_lessons"),
        },
    }
