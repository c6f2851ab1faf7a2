"""What browsers are told that pages of a site may do: in each page, and as headers where the host sends some.

The lines of a page hold on every host, and from a folder too. What only a header can say stands in
``_headers`` at the site's root, which some hosts of static sites read; for any other web server they
are lines to copy. Nothing is said of ``Strict-Transport-Security``: it binds a whole host for months,
and a site may stand in a folder of somebody else's.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from generator.present.output import Output

HEADERS = "_headers"
"""Name of the file; each line but the first is one header, for all that its first line names."""
REFERRER = "no-referrer"
"""Nobody is told from which page somebody came (W3C Referrer Policy)."""
_NOTHING = "'sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU='"
"""Hash of the empty string: the plotting library adds an empty style element and fills it by script."""
_FRAMED = "frame-ancestors 'none'"
"""No other site shows a page inside of its own; a browser hears it in a header alone (CSP 3, 6.4.2)."""
_MAY = ("autoplay", "fullscreen", "picture-in-picture", "screen-wake-lock")
"""What player and pacer use, on the site's own pages."""
_MAY_NOT = (
    "accelerometer", "bluetooth", "browsing-topics", "camera", "display-capture", "encrypted-media",
    "geolocation", "gyroscope", "hid", "idle-detection", "local-fonts", "magnetometer", "microphone",
    "midi", "payment", "publickey-credentials-get", "serial", "storage-access", "sync-xhr", "usb",
    "window-management", "xr-spatial-tracking",
)  # fmt: skip
"""What no page here needs; names of W3C Permissions Policy and of the features' own specifications."""


def content_policy(*, media: str = "") -> str:
    """What a page may load and do (W3C Content Security Policy 3, Trusted Types).

    Args:
        media: where films and captions may come from besides the site: ``data:`` in a copy that is
            carried home, whose captions stand in the page.
    """
    films = (
        f"'self' blob: {media}".rstrip()
    )  # a film that a script fetched whole (theme/js/whole-film.js)
    return (
        f"default-src 'none'; script-src 'self'; style-src 'self' {_NOTHING}; img-src 'self' data:; "
        f"media-src {films}; connect-src 'self'; "
        "form-action 'none'; base-uri 'none'; "
        "require-trusted-types-for 'script'; trusted-types plumline 'allow-duplicates'"
    )


def headers(*, preview: bool = False) -> Mapping[str, str]:
    """The headers a site is sent with, by their names.

    Args:
        preview: whether a reload script runs in each page, which the whole policy would stop.
    """
    policy = _FRAMED if preview else f"{content_policy()}; {_FRAMED}"
    allowed = [*(f"{name}=(self)" for name in _MAY), *(f"{name}=()" for name in _MAY_NOT)]
    return MappingProxyType(
        {
            "Content-Security-Policy": policy,
            "Permissions-Policy": ", ".join(allowed),
            "Referrer-Policy": REFERRER,
            "X-Content-Type-Options": "nosniff",
        }
    )


def headers_file() -> Output:
    """The headers for hosts that read them from a file at the site's root."""
    lines = ["/*", *(f"  {name}: {value}" for name, value in headers().items())]
    return Output(HEADERS, "".join(f"{line}\n" for line in lines).encode())
