"""What copies of the project share in one process of tests: of the same text comes the same, so it is worked out once."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from functools import lru_cache
from types import CodeType

import pytest

from generator.present.assets.bundle import join_script
from generator.present.assets.quick import QuickEnvironment
from generator.read.source import read_source

Words = Mapping[str, str | Mapping[str, str]]


@contextmanager
def once_each() -> Iterator[None]:
    """As long as this lasts, files of ``site_data/`` are taken apart, templates compiled and scripts joined once.

    These took most of the time of a check and of a small build. Tests of reading call what reads,
    and programs that tests start know nothing of this.
    """
    with pytest.MonkeyPatch.context() as patch:
        read = lru_cache(maxsize=12)(read_source)
        for who in ("library", "overlay"):
            patch.setattr(f"generator.read.{who}.read_source", read)
        patch.setattr(QuickEnvironment, "compile", _compiled_once())
        patch.setattr("generator.present.assets.later.join_script", _joined_once())
        yield


def _joined_once() -> Callable[..., str]:
    known: dict[tuple[str, frozenset[tuple[str, str]], str], str] = {}

    def joined(entry: str, files: Mapping[str, str], words: Words | None = None) -> str:
        of = (entry, frozenset(files.items()), json.dumps(words, sort_keys=True))
        if of not in known:
            known[of] = join_script(entry, files, words)
        return known[of]

    return joined


def _compiled_once() -> object:
    known: dict[tuple[str, str], CodeType] = {}
    whole = QuickEnvironment.compile

    def compiled(self: QuickEnvironment, source: str, name: str, filename: str) -> CodeType:
        if (source, name) not in known:
            known[source, name] = whole(self, source, name, filename)
        return _of_file(known[source, name], filename)

    return compiled


def _of_file(code: CodeType, filename: str) -> CodeType:
    """The same code, whose mistakes are told with the file of this copy."""
    inner = (
        _of_file(one, filename) if isinstance(one, CodeType) else one for one in code.co_consts
    )
    return code.replace(co_filename=filename, co_consts=tuple(inner))
