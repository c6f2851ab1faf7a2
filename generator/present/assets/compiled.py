"""What templates are compiled to, kept: to compile them takes longer than to fill them once.

A kept one is used for the very text it was compiled from, by the same Python and the same jinja
(jinja asks that), and only if it is, sign by sign, what was kept.
"""

from __future__ import annotations

import os
from contextlib import suppress
from hashlib import blake2b
from io import BytesIO
from pathlib import Path

from jinja2 import BytecodeCache
from jinja2.bccache import Bucket

_SUM = 16
"""Bytes of a checksum."""


class Compiled(BytecodeCache):
    """A folder of compiled templates; a damaged one is as good as none."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder

    def load_bytecode(self, bucket: Bucket) -> None:
        """Bring what was kept, if it is whole."""
        try:
            held = self._file(bucket).read_bytes()
        except OSError:
            return
        if held[:_SUM] == _sum(held[_SUM:]):
            bucket.load_bytecode(BytesIO(held[_SUM:]))

    def dump_bytecode(self, bucket: Bucket) -> None:
        """Keep it; where that cannot be, it is compiled the next time too."""
        code = BytesIO()
        bucket.write_bytecode(code)
        file = self._file(bucket)
        growing = file.with_name(f"{file.name}.{os.getpid()}")
        with suppress(OSError):
            file.parent.mkdir(parents=True, exist_ok=True)
            growing.write_bytes(_sum(code.getvalue()) + code.getvalue())
            growing.replace(file)

    def _file(self, bucket: Bucket) -> Path:
        return self._folder / bucket.key


def _sum(code: bytes) -> bytes:
    return blake2b(code, digest_size=_SUM).digest()
