"""Where papers are made: typst is loaded when the first is asked for, and what was made once is kept."""

from __future__ import annotations

import json
import os
from collections.abc import Sequence
from contextlib import suppress
from dataclasses import asdict, dataclass
from functools import cached_property
from hashlib import blake2b
from importlib.metadata import version
from pathlib import Path
from typing import TYPE_CHECKING

from generator.present.pages.page import Surround
from generator.present.papers.data import Data
from generator.present.papers.keys import keys_said, sources
from generator.present.papers.paper import Size
from generator.present.pictures.colours import LIGHT
from generator.present.pictures.plums.plum import PLUM
from generator.present.words.say import Say

if TYPE_CHECKING:
    from generator.present.papers.typesetting import Typesetting

_SUM = 32
"""Bytes of a checksum."""


@dataclass(frozen=True, slots=True)
class Part:
    """One paper in a file."""

    template: str
    """Its file in ``theme/papers/``, without ``.typ``."""
    view: Data
    """What the template sees, as ``as_data`` gives it."""
    stamp: str
    still_right: str
    """Where to ask whether it still holds; empty while the site has no address."""


@dataclass(frozen=True, slots=True)
class File:
    """How a file is made."""

    title: str
    """What a reader shows as its name."""
    size: Size
    large: bool
    """Whether its letters are 18 pt and up instead of 12."""
    path: str
    """From the site's root."""


class Press:
    """Makes papers by the templates of one theme."""

    def __init__(self, theme: Path, kept: Path | None = None) -> None:
        """The templates of a theme.

        Args:
            theme: its folder.
            kept: folder in which to keep what was made.
        """
        self._theme, self._kept = theme, kept

    def __reduce__(self) -> tuple[type[Press], tuple[Path, Path | None]]:
        """A process of its own begins anew: what typst holds cannot be sent."""
        return Press, (self._theme, self._kept)

    def paper(self, file: File, parts: Sequence[Part], surround: Surround) -> bytes:
        """One file; the same arguments give the same bytes on every machine.

        Args:
            file: how it is made.
            parts: what stands in it, in order.
            surround: of the lesson they are of.
        """
        say = surround.say
        given: dict[str, Data] = {
            "title": file.title,
            "language": say.locale,
            "size": file.size.in_typst,
            "large": file.large,
            "programme": surround.site.name_in(say.language),
            "papers": [asdict(part) for part in parts],
            "words": {key: _word(say, key) for key in self._keys},
            "colours": asdict(LIGHT),
            "plum": PLUM,
        }
        return self.made(file.path, json.dumps(given, ensure_ascii=False))

    def made(self, path: str, given: str) -> bytes:
        """The file at a path from what its templates are given: as it is kept, or made now."""
        key = blake2b(given.encode(), digest_size=_SUM, key=self._mark).digest()
        if (kept := self._read(path, key)) is not None:
            return kept
        made = self._typesetting.pdf(given)
        self._keep(path, key, made)
        return made

    @cached_property
    def _typesetting(self) -> Typesetting:
        from generator.present.papers.typesetting import Typesetting  # noqa: PLC0415  # loads typst

        return Typesetting(self._theme)

    @cached_property
    def _keys(self) -> tuple[str, ...]:
        """Every text of the site that a template of papers says."""
        return keys_said(self._theme)

    @cached_property
    def _mark(self) -> bytes:
        """Of everything besides what is given that a paper is made by."""
        held = blake2b(version("typst").encode(), digest_size=_SUM)
        for file in sources(self._theme):
            held.update(file.read_bytes())
        return held.digest()

    def _file(self, path: str) -> Path | None:
        return (
            self._kept / f"{blake2b(path.encode(), digest_size=16).hexdigest()}.pdf"
            if self._kept
            else None
        )

    def _read(self, path: str, key: bytes) -> bytes | None:
        """What is kept of a file, if it was made of the same and is whole."""
        file = self._file(path)
        if file is None:
            return None
        try:
            held = file.read_bytes()
        except OSError:
            return None
        made = held[2 * _SUM :]
        whole = held[:_SUM] == key and held[_SUM : 2 * _SUM] == _sum(made)
        return made if whole else None

    def _keep(self, path: str, key: bytes, made: bytes) -> None:
        """Keep a file; where that cannot be, it is made the next time too."""
        file = self._file(path)
        if file is None:
            return
        growing = file.with_name(f"{file.name}.{os.getpid()}")
        with suppress(OSError):
            file.parent.mkdir(parents=True, exist_ok=True)
            growing.write_bytes(key + _sum(made) + made)
            growing.replace(file)


def _word(say: Say, key: str) -> Data:
    """A text of the site; one with several forms is said by its view."""
    text = say.texts[key]
    return text if isinstance(text, str) else dict(text)


def _sum(made: bytes) -> bytes:
    return blake2b(made, digest_size=_SUM).digest()
