"""The folder of a finished site: its lessons, its other pages, and the files they share."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import closing
from errno import EIO
from functools import partial
from os import strerror
from pathlib import Path

from generator.engine.side_by_side import each_made
from generator.present.output import Output
from generator.present.pages.not_found import NOT_FOUND
from generator.present.policy import headers_file
from generator.steps.by_hand import ByHand
from generator.steps.cartridges import cartridges_of_all
from generator.steps.formerly import formerly
from generator.steps.lessons import KeptLesson
from generator.steps.run import Run
from generator.steps.site import Site
from generator.steps.stamps import stamps
from generator.write.day import day_of
from generator.write.fill import Piece, Unpacker, write_outputs
from generator.write.served import Served
from generator.write.sitemap import sitemap

__all__ = ["Served", "fill", "show"]


def fill(run: Run, site: Site, by_hand: ByHand, folder: Path) -> None:
    """Write a whole site into an empty folder.

    Raises:
        OSError: something cannot be written.
    """
    old, pieces = run.old_site(), pieces_of(site, run.root)
    missing = [piece for piece in pieces if not old.hand_over(piece, str(folder))]
    unpack(run, missing, Unpacker(str(folder)))
    write_outputs(folder, other_files(site, by_hand))
    write_outputs(folder, cartridges_of_all(run, site))
    if address := site.library.site.address:
        write_outputs(
            folder, sitemap(address, _found_by_searching(site, by_hand), day_of(run.root))
        )


def show(run: Run, site: Site, by_hand: ByHand, served: Served) -> None:
    """Bring the folder of a preview up to date.

    Raises:
        OSError: something cannot be written.
    """
    outputs = (*other_files(site, by_hand), *site.components(run.root))
    served.renew(pieces_of(site, run.root), outputs, partial(unpack, run))


def unpack(run: Run, pieces: list[Piece], unpacker: Unpacker) -> None:
    """Write lessons side by side; those whose packs are damaged are made anew.

    Raises:
        OSError: something cannot be written.
    """
    damaged = list(filter(None, _written(pieces, unpacker, run.keep_out)))
    if damaged:
        again = [_piece(lesson, run.root) for lesson in run.make_again(damaged)]
        if any(_written(again, unpacker, None)):
            raise OSError(EIO, strerror(EIO), str(run.root / ".cache"))


def pieces_of(site: Site, root: Path) -> list[Piece]:
    """The lessons as they are written."""
    return [_piece(lesson, root) for lesson in site.lessons]


def other_files(site: Site, by_hand: ByHand) -> Iterator[Output]:
    """What belongs to no lesson, and the headers that every page is sent with."""
    told = list(site.map.lessons)
    for one in _other_files(site, by_hand):
        told.append(one.path)
        yield one
    yield headers_file(told)


def _other_files(site: Site, by_hand: ByHand) -> Iterator[Output]:
    """What lessons share, the pages of the site itself, the pages written by hand, and their pictures."""
    yield from site.shared()
    yield from by_hand.files
    written = {one.path for one in (*by_hand.pages, *by_hand.files)}
    made = (
        site.not_found(),
        *site.codes(),
        *stamps(site),
        *site.lesson_tables(),
        *site.updates(),
        *formerly(site),
    )
    yield from (page for page in made if page.path not in written)
    for page in by_hand.pages:
        headed, draft = page.path in by_hand.headed, page.path in by_hand.drafts
        body = page.content.decode()
        whole = site.page(page.path, page.title, body, headed=headed, draft=draft)
        yield Output(page.path, whole.encode(), page.title)


def _piece(lesson: KeptLesson, root: Path) -> Piece:
    """What was made of a lesson, and the files beside it that are published."""
    beside = root / "lessons" / lesson.id
    copied = {f"{lesson.id}/{name}": beside / name for name in lesson.facts.media}
    return Piece(lesson.id, lesson.key, lesson.pack, copied)


def _written(pieces: list[Piece], unpacker: Unpacker, keep_out: int | None) -> Iterator[str]:
    """For each piece its name where its pack is damaged, else nothing."""
    with closing(each_made(unpacker, pieces, keep_out=keep_out)) as writing:
        yield from writing


def _found_by_searching(site: Site, by_hand: ByHand) -> list[str]:
    """Pages in order: those written by hand, and the first of each lesson."""
    lessons = [path for path, stops in site.map.lessons.items() if stops is not None]
    return [page.path for page in by_hand.pages if page.path != NOT_FOUND] + lessons
