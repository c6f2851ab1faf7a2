"""A few stops of each kind to try it with: the files ``tests/examples/<kind>.yaml``."""

from __future__ import annotations

from pathlib import Path

from generator.model.stops import STOP_KINDS

EXAMPLES = Path(__file__).parent / "examples"


def example_of(kind: str) -> str:
    """Stops as a lesson file holds them, one at least of the kind."""
    return (EXAMPLES / f"{kind}.yaml").read_text("utf-8")


def kinds_without_example(folder: Path = EXAMPLES) -> list[str]:
    """Kinds that nobody can try."""
    return [kind for kind in STOP_KINDS if not (folder / f"{kind}.yaml").exists()]
