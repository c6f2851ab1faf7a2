"""What browsers are told that pages of a site may do: in each page, and as headers where the host sends some.

The lines of a page hold on every host, and from a folder too. What only a header can say stands in
``_headers`` at the site's root, which some hosts of static sites read; for any other web server they
are lines to copy. Nothing is said of ``Strict-Transport-Security``: it binds a whole host for months,
and a site may stand in a folder of somebody else's.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from types import MappingProxyType

from generator.present.output import Output

HEADERS = "_headers"
"""Name of the file; a line names pages, and each line below it that is set in is one header for them."""
FRAMED = "embed/"
"""Folder of the only pages that other sites may show inside of theirs; they keep nothing and ask for nothing."""
REFERRER = "no-referrer"
"""Nobody is told from which page somebody came (W3C Referrer Policy)."""
_POLICY, _PAGE = "Content-Security-Policy", ".html"
_NOTHING = "'sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU='"
"""Hash of the empty string: the plotting library adds an empty style element and fills it by script."""
_IN_NO_FRAME = "frame-ancestors 'none'"
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


def headers(path: str = "", *, preview: bool = False) -> Mapping[str, str]:
    """The headers a page is sent with, by their names.

    Args:
        path: of the page, from the site's root.
        preview: whether a reload script runs in each page, which the whole policy would stop.
    """
    parts = ((not preview, content_policy()), (not path.startswith(FRAMED), _IN_NO_FRAME))
    policy = "; ".join(part for said, part in parts if said)
    allowed = [*(f"{name}=(self)" for name in _MAY), *(f"{name}=()" for name in _MAY_NOT)]
    return MappingProxyType(
        {
            **({_POLICY: policy} if policy else {}),
            "Permissions-Policy": ", ".join(allowed),
            "Referrer-Policy": REFERRER,
            "X-Content-Type-Options": "nosniff",
        }
    )


def headers_file(pages: Iterable[str]) -> Output:
    """The headers for hosts that read them from a file at the site's root.

    No page is named twice for one header: hosts differ in what they make of that, and where two
    policies meet, a browser holds a page to both (CSP 3, 4.2.2).

    Args:
        pages: of the site, by their paths from its root.
    """
    every = {name: value for name, value in headers().items() if name != _POLICY}
    own = {place: {_POLICY: headers()[_POLICY]} for place in _places(pages)}
    framed = {f"/{FRAMED}*": {_POLICY: headers(FRAMED)[_POLICY]}}
    rules = {"/*": every, **own, **framed}
    return Output(HEADERS, "".join(_rule(place, told) for place, told in rules.items()).encode())


def _rule(place: str, told: Mapping[str, str]) -> str:
    return "".join(f"{line}\n" for line in (place, *(f"  {key}: {told[key]}" for key in told)))


def _places(pages: Iterable[str]) -> list[str]:
    """All but the framed pages: the root, its pages with and without their ending, and each folder."""
    roots, folders = set[str](), set[str]()
    for path in pages:
        folder, inside, _ = path.partition("/")
        if inside:
            folders.add(f"/{folder}/*")
        elif path.endswith(_PAGE):
            roots |= {f"/{path}", f"/{path.removesuffix(_PAGE)}"}
    return ["/", *sorted(roots), *sorted(folders - {f"/{FRAMED}*"})]
