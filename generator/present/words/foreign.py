"""Texts that are not in the page's language, marked for eye and ear until they are translated.

The marks are characters of the private use area, set around a text before it goes through
Markdown, templates and escaping, and turned into elements when the page is whole. Inside a tag
or a script, where no element can stand, they are taken out.
"""

from __future__ import annotations

import re

from generator.model.wording import FALLBACK

_MISSING, _STALE, _OF_LIBRARY, _END = "\ue000", "\ue001", "\ue003", "\ue002"
_ANY = re.compile(f"[{_MISSING}{_STALE}{_OF_LIBRARY}{_END}]")
_TAG_OR_SCRIPT = re.compile(r"(<script\b.*?</script>|<title>.*?</title>|<[^>]*>)", re.DOTALL)


def missing(original: str) -> str:
    """A text of the lesson's own language, where a translation is missing."""
    return f"{_MISSING}{original}{_END}"


def stale(translation: str) -> str:
    """A translation whose original has changed."""
    return f"{_STALE}{translation}{_END}"


def of_library(text: str) -> str:
    """A name of the library, in the language it always has."""
    return f"{_OF_LIBRARY}{text}{_END}"


def is_marked(text: str) -> bool:
    """Whether a text, or a part of it, is marked."""
    return bool(_ANY.search(text))


def without_marks(text: str) -> str:
    """A text for where no element can stand."""
    return _ANY.sub("", text)


def settle(page: str, language: str) -> str:
    """A whole page with elements in the place of marks.

    Args:
        page: HTML.
        language: of the texts that are missing in the page's own.
    """
    if not is_marked(page):
        return page
    parts = _TAG_OR_SCRIPT.split(page)
    return "".join(
        without_marks(part) if index % 2 else _elements(part, language)
        for index, part in enumerate(parts)
    )


def _elements(text: str, language: str) -> str:
    opened = text.replace(_MISSING, f'<span lang="{language}" class="untranslated">')
    opened = opened.replace(_OF_LIBRARY, f'<span lang="{FALLBACK}" class="untranslated">')
    return opened.replace(_STALE, '<span class="untranslated">').replace(_END, "</span>")
