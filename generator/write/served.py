"""The folder that a preview shows, in which only what has changed is written anew."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from pathlib import Path

from generator.engine.pack import checksum
from generator.present.output import Output
from generator.write.fill import Piece, Unpacker, write_outputs


class Served:
    """A folder, and what was written there."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self._pieces: dict[str, Piece] = {}
        """By name."""
        self._outputs: dict[str, str] = {}
        """By path, a checksum of each other file."""

    def renew(
        self,
        pieces: Sequence[Piece],
        outputs: Iterable[Output],
        unpack: Callable[[list[Piece], Unpacker], None],
    ) -> None:
        """Write what is new or other than before, and remove what is gone.

        Args:
            pieces: every lesson there is.
            outputs: every other file there is.
            unpack: writes lessons.
        """
        before, now = self._pieces, {piece.name: piece for piece in pieces}
        changed = [
            one for one in pieces if one.name not in before or before[one.name].key != one.key
        ]
        self._remove(_files(before.values()) - _files(pieces))
        unpack(changed, Unpacker(str(self.folder), lends=True))
        self._pieces = now
        made = list(outputs)
        sums = {output.path: checksum(output.content) for output in made}
        self._remove(self._outputs.keys() - sums.keys())
        old = self._outputs
        write_outputs(self.folder, (one for one in made if old.get(one.path) != sums[one.path]))
        self._outputs = sums

    def _remove(self, paths: Iterable[str]) -> None:
        for path in paths:
            (self.folder / path).unlink(missing_ok=True)


def _files(pieces: Iterable[Piece]) -> set[str]:
    return {path for piece in pieces for path in piece.paths}
