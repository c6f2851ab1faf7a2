"""Pictures and films that hand-written pages lead to: whether they are what their names say."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from generator.media.content import UnfitError
from generator.media.films import FILM_ENDINGS, look
from generator.media.published import published
from generator.model.personal import said
from generator.problems import Place, Problem, Weight


def file_problems(root: Path, path: str) -> Iterator[Problem]:
    """What is wrong with a file that goes out, and what is left out of it.

    Args:
        root: folder of the site.
        path: of the file below it.
    """
    file, place = root / path, Place(path)
    try:
        if file.suffix.lower() in FILM_ENDINGS:
            look(file)
        told = published(file).told
    except UnfitError as error:
        yield Problem(place, f"`{file.name}` {error.what}", error.hint)
    except OSError as error:
        what = f"`{file.name}` cannot be read ({error.strerror})"
        yield Problem(place, what, "ask whose it is, and see whether the disk is in order")
    else:
        if told:
            what = f"`{file.name}` also tells {said(told)}; that is left out of what is published"
            hint = "your own file stays as it is: think of it before you send that to anybody"
            yield Problem(place, what, hint, Weight.QUESTION)


def what_goes_out(file: Path) -> bytes:
    """A file as a page shows it.

    Raises:
        UnfitError: it is not what its name says, which ``file_problems`` tells.
        OSError: it cannot be read.
    """
    return b"".join(published(file).pieces())
