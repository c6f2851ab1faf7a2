"""What stands in plain data that may have any shape yet: only what has the shape that is asked for."""

from __future__ import annotations

from generator.read.source import Data


def word(data: dict[str, Data], key: str) -> str | None:
    """The text of a key; nothing where it holds none."""
    value = data.get(key)
    return value if isinstance(value, str) else None


def entries(data: dict[str, Data], key: str) -> list[Data]:
    """The list of a key; empty where it holds none."""
    value = data.get(key)
    return value if isinstance(value, list) else []


def keyed(data: Data) -> dict[str, Data]:
    """Keys and values; empty where there are none."""
    return data if isinstance(data, dict) else {}
