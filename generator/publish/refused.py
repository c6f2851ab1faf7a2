"""Why a publication did not go out: one plain sentence, and the way out."""

from __future__ import annotations


class NotPublishedError(Exception):
    """What is in the way of a publication; nothing of hers was changed, unless the sentence says so."""

    def __init__(self, what: str, hint: str, *, words: str = "") -> None:
        """Say it.

        Args:
            what: what is in the way: a sentence without a full stop.
            hint: what to do about it: a sentence without a full stop.
            words: what git, a hook or a host said itself, line by line.
        """
        self.what, self.hint, self.words = what, hint, words.strip()
        super().__init__(str(self))

    def __str__(self) -> str:
        said = "".join(f"\n    {line}" for line in self.words.splitlines())
        return f"{self.what}: {self.hint}." + (f"\n  It said:{said}" if said else "")
