"""What the pages of a preview are sent with."""

from __future__ import annotations

from collections.abc import Mapping

from generator.present.policy import headers


def preview_headers(path: str) -> Mapping[str, str]:
    """The headers of a published page, but for what the reloading of a preview needs.

    Args:
        path: from the root of the host, where a preview stands.
    """
    return headers(path.removeprefix("/"), preview=True)
