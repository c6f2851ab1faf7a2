"""Two who publish at once: git told to keep the lines that each added to the record."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from generator.model.published import SITE_RECORD
from generator.publish.git import Git
from generator.write.whole import write_whole

_FILE = ".gitattributes"
_LINES = """\
# Two who publish at once each add lines; all of them count.
site_data/published/**/*.jsonl merge=union
"""


@contextmanager
def both_kept(git: Git) -> Iterator[tuple[str, ...]]:
    """Say so in a site that was begun before the program did; gives the file that changes for it, if any.

    Where what follows fails, the file is as it was.
    """
    if git.told("check-attr", "merge", "--", SITE_RECORD).endswith(": union"):
        yield ()
        return
    file = git.root / _FILE
    before = file.read_bytes().decode("utf-8") if file.is_file() else None
    end = "" if not before or before.endswith("\n") else "\n"
    write_whole(file, f"{before or ''}{end}{_LINES}", newline="")
    try:
        yield (_FILE,)
    except BaseException:
        if before is None:
            file.unlink()
        else:
            write_whole(file, before, newline="")
        raise
