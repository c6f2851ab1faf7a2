"""Texts that are not in the page's language, marked for eye and ear until they are translated.

Such a text is a string like any other, and knows besides how it stands in a page: in an element of
its own. What only wants its words takes it for the string it is; a template that writes it between
tags gets the element, because templates ask every text how it is written in HTML. Inside a tag no
element can stand: there a template says ``| unmarked``.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Self

from markupsafe import Markup

from generator.model.wording import FALLBACK

_END = Markup("</span>")


class Marked(str):
    """A text of which at least a part is foreign."""

    __slots__ = ("_html",)
    _html: Markup

    def __new__(cls, text: str, html: Markup) -> Self:
        """A text, and the same with elements in it."""
        made = super().__new__(cls, text)
        made._html = html
        return made

    def __reduce__(self) -> tuple[type[Marked], tuple[str, Markup]]:
        """What a copy in another process is made from."""
        return Marked, (str(self), self._html)

    def __html__(self) -> Markup:
        """How it stands in a page."""
        return self._html


class Foreign(Marked):
    """A text that is foreign from beginning to end."""

    __slots__ = ("opening",)
    opening: Markup

    def __new__(cls, text: str, opening: Markup) -> Self:
        """A text, and the tag that begins its element."""
        made = super().__new__(cls, text, opening + text + _END)
        made.opening = opening
        return made

    def __reduce__(self) -> tuple[type[Marked], tuple[str, Markup]]:
        """What a copy in another process is made from."""
        return Foreign, (str(self), self.opening)

    def around(self, html: Markup) -> Markup:
        """Its element around what Markdown made of it."""
        return self.opening + html + _END


def missing(original: str, language: str) -> Foreign:
    """A text of the lesson's own language, where a translation is missing."""
    return Foreign(original, Markup('<span lang="{}" class="untranslated">').format(language))


def stale(translation: str) -> Foreign:
    """A translation whose original has changed."""
    return Foreign(translation, Markup('<span class="untranslated">'))


def of_library(text: str) -> Foreign:
    """A name of the library, in the language it always has."""
    return missing(text, FALLBACK)


def cited(title: str, language: str) -> str:
    """A published title on a page of a language: English as it was printed, and nothing to translate."""
    if language.partition("-")[0] == FALLBACK:
        return title
    return Foreign(title, Markup('<span lang="{}">').format(FALLBACK))


def is_marked(text: str) -> bool:
    """Whether a text, or a part of it, is foreign."""
    return isinstance(text, Marked)


def joined(separator: str, parts: Iterable[str]) -> str:
    """Texts one after the other; foreign ones stay marked."""
    texts = tuple(parts)
    plain = separator.join(texts)
    if not any(map(is_marked, texts)):
        return plain
    return Marked(plain, Markup.escape(separator).join(texts))


def filled(pattern: str, values: Mapping[str, object]) -> str:
    """A text with values in its places; foreign ones stay marked.

    Raises:
        KeyError: there is no value for one of its places.
    """
    plain = pattern.format(**values)
    if not any(isinstance(value, Marked) for value in values.values()):
        return plain
    return Marked(plain, Markup.escape(pattern).format(**values))


def like(text: str, made: str) -> str:
    """What was made of a text, marked as the text is that it was made of."""
    return Foreign(made, text.opening) if isinstance(text, Foreign) else made


def unmarked(text: str) -> str:
    """A text for inside a tag, where no element can stand."""
    return str(text) if isinstance(text, Marked) else text
