"""Scripts with their texts, once for each language, and the styles that come after a page."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from pathlib import Path

from generator.present.assets.brought import FOLDER, brought_by
from generator.present.assets.bundle import join_script, join_styles, sources
from generator.present.assets.kind_files import script_entries, with_read_aloud
from generator.present.assets.not_kept import NOT_KEPT_TEXTS, not_kept_texts
from generator.present.output import Output
from generator.present.words.say import Say

WORKER = "sw.js"
"""The service worker stands at the site's root: it may answer nothing above its own folder."""
_NO_WORKER = "sw-off.js"
_SCRIPTS = (
    "page",
    "lesson",
    "thread",
    "video",
    "later",
    "home",
    "play",
    "clear",
    "codes",
    "stamps",
    "projector",
    "for-class",
    "embed",
)
"""Entries of theme/js/ whose scripts say texts of the site; the kinds of stop name more."""


def later_files(theme: Path, says: Iterable[Say], *, keeping: bool = True) -> Iterator[Output]:
    """The scripts of each language, and what they all share.

    Args:
        theme: its folder.
        says: the words of each language, the site's first one first.
        keeping: whether lessons may be kept on a device; where not, the worker's file takes away
            what is kept.
    """
    scripts, styles = with_read_aloud(sources(theme, "js")), sources(theme, "css")
    kinds = script_entries(scripts)
    scripts |= kinds
    entries = {name: f"js/{name}.js" for name in _SCRIPTS}
    entries |= {entry.removeprefix("js/").removesuffix(".js"): entry for entry in kinds}
    for name in (
        "later.css",
        "home.css",
        "play.css",
        "codes.css",
        "stamps.css",
        "projector.css",
        "lesson-table.css",
    ):
        yield Output(f"assets/{name}", join_styles(f"css/{name}", styles).encode())
    spoken = tuple(says)
    for say in spoken:
        for name, entry in entries.items():
            bundle, file = join_script(entry, scripts, say.texts), f"{name}-{say.locale}.js"
            yield Output(FOLDER + file, bundle.encode(), needs=brought_by(file, say.locale))
    worker = WORKER if keeping else _NO_WORKER
    words = {NOT_KEPT_TEXTS: not_kept_texts(spoken)}
    yield Output(WORKER, join_script(f"js/{worker}", scripts | words).encode())
