"""Fills the folder of a new site: what is as it was is taken over from the old one, the rest is unpacked."""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterable, Mapping
from contextlib import suppress
from dataclasses import dataclass, field
from pathlib import Path

from generator.engine.pack import DamagedPackError, Pack
from generator.media.published import publish
from generator.present.output import Output
from generator.write.fresh import Marks, mark


@dataclass(frozen=True, slots=True)
class Piece:
    """A part of a site that is made as one: a lesson."""

    name: str
    key: str
    """What tells it from what it was in the old site."""
    pack: Pack
    copied: Mapping[str, Path] = field(default_factory=dict)
    """Files that are published as they are: by path on the site, where each lies."""

    @property
    def paths(self) -> list[str]:
        """Every file of it, from the site's root."""
        made = [entry.path for entry in self.pack.published]
        return made + [path for path in self.copied if path not in made]


@dataclass(frozen=True, slots=True)
class OldSite:
    """The site as the last build left it, if nobody has touched it since."""

    folder: str
    marks: Marks = field(repr=False)
    """Of every file there, by its whole path, as the last build saw them."""
    keys: Mapping[str, str] = field(repr=False)
    """Of every piece in it, by name."""

    def hand_over(self, piece: Piece, folder: str) -> bool:
        """Take a piece into a new site; says whether it is in the old one, and whole.

        A file is in both sites until the old one goes; it is never written to.
        """
        if self.keys.get(piece.name) != piece.key:
            return False
        paths = piece.paths
        if not all(self._is_untouched(f"{self.folder}/{path}") for path in paths):
            return False
        _make_folders(folder, paths)
        for path in paths:
            _in_both(f"{self.folder}/{path}", f"{folder}/{path}")
        return True

    def _is_untouched(self, file: str) -> bool:
        try:
            return self.marks.get(file) == mark(file)
        except OSError:
            return False


@dataclass(frozen=True, slots=True)
class Unpacker:
    """Writes pieces into a folder; can be sent to another process."""

    folder: str
    lends: bool = False
    """Whether files that are published as they are may be links to where they lie."""

    def __call__(self, piece: Piece) -> str:
        """Write a piece; gives its name where its pack is damaged, else nothing."""
        _make_folders(self.folder, piece.paths)
        made = {entry.path for entry in piece.pack.published}
        for path, source in piece.copied.items():
            if path not in made:
                self._publish(source, Path(self.folder, path))
        try:
            for entry, pieces in piece.pack.pieces():
                if entry.path not in made:
                    continue
                with open(f"{self.folder}/{entry.path}", "wb") as file:  # noqa: PTH123  # thousands of them
                    file.writelines(pieces)
        except DamagedPackError:
            return piece.name
        return ""

    def _publish(self, source: Path, file: Path) -> None:
        if self.lends:
            file.unlink(missing_ok=True)
            with suppress(OSError):  # not every system lets everybody make links
                file.symlink_to(source.resolve())
                return
        publish(source, file)


def write_outputs(folder: Path, outputs: Iterable[Output]) -> None:
    """Write files that are in memory."""
    for output in outputs:
        file = folder / output.path
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_bytes(output.content)


def _make_folders(folder: str, paths: Iterable[str]) -> None:
    for above in {path.rpartition("/")[0] for path in paths}:
        os.makedirs(f"{folder}/{above}", exist_ok=True)  # noqa: PTH103  # thousands of them


def _in_both(old: str, new: str) -> None:
    """One file under two names; a copy where the disk knows no such thing."""
    try:
        os.link(old, new)
    except OSError:
        shutil.copyfile(old, new)
