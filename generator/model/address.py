"""Where a link of an educator's may lead: into the site, to a safe page elsewhere, or to a mailbox."""

from __future__ import annotations

from urllib.parse import urlsplit

SCHEMES = frozenset({"https", "mailto"})
"""Ways out of the site: a page nobody on the way can change, and a letter."""


def is_elsewhere(address: str) -> bool:
    """Whether an address leads out of the site, or is one that no two programs read alike."""
    try:
        parts = urlsplit(_as_browsers_read(address))
    except ValueError:
        return True
    return bool(parts.scheme or parts.netloc)


def is_allowed(address: str) -> bool:
    """Whether a link may have an address: ``https:``, ``mailto:``, or one inside the site."""
    if not is_elsewhere(address):
        return True
    try:
        return urlsplit(_as_browsers_read(address)).scheme in SCHEMES
    except ValueError:
        return False


def _as_browsers_read(address: str) -> str:
    """An address with slashes for its backslashes and without what browsers skip: URL Standard, section 4.4."""
    return "".join(sign for sign in address.replace("\\", "/").strip() if sign > " ")
