"""What the pages of a preview are sent with."""

from __future__ import annotations

from collections.abc import Mapping

from generator.present.policy import headers


def preview_headers() -> Mapping[str, str]:
    """The headers of a published site, but for what the reloading of a preview needs."""
    return headers(preview=True)
