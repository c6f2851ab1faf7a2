"""Scripts and styles that come after a page, or that only the front page needs."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator
from pathlib import Path

from generator.present.assets.bundle import join_script, join_styles, sources
from generator.present.assets.kind_files import with_read_aloud
from generator.present.output import Output
from generator.present.words.say import Say

WORKER = "sw.js"
"""The service worker stands at the site's root: it may answer nothing above its own folder."""
_TEXTS = "js/more-texts.js"
_PLAY = "later_play_"


def later_files(theme: Path, says: Iterable[Say]) -> Iterator[Output]:
    """The bundles with their texts, once for each language, and what they all share."""
    scripts, styles = with_read_aloud(sources(theme, "js")), sources(theme, "css")
    for name in ("later.css", "home.css", "play.css"):
        yield Output(f"assets/{name}", join_styles(f"css/{name}", styles).encode())
    for say in says:
        for name in ("later", "home", "play"):
            bundle = join_script(f"js/{name}.js", {**scripts, _TEXTS: _texts_module(say, name)})
            yield Output(f"assets/{name}-{say.locale}.js", bundle.encode())
    yield Output(WORKER, join_script(f"js/{WORKER}", scripts).encode())


def _texts_module(say: Say, bundle: str) -> str:
    """The texts of a bundle: what only play says is long, and comes with play alone."""
    spoken = {
        key: text
        for key, text in say.starting_with("later_").items()
        if key.startswith(_PLAY) == (bundle == "play")
    }
    texts = json.dumps(spoken, ensure_ascii=False, sort_keys=True)
    return f"export const moreTexts = {texts};\n"
