"""What a site may do is said whole: in the headers as in the pages, nothing more and nothing less."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from generator.present.policy import HEADERS, content_policy, headers, headers_file
from tests.local_server import sent_with
from tests.policy import POLICY

FRAMED = {"frame-ancestors": "'none'"}
POWERS = ("camera", "microphone", "geolocation", "usb", "payment", "browsing-topics")
"""What no lesson may ever ask for; names from the features' own specifications."""
USED = {
    "autoplay": r"\.play\(\)",
    "fullscreen": r"requestFullscreen|<video",
    "picture-in-picture": r"<video",
    "screen-wake-lock": r"wakeLock",
}
"""What is allowed, and what of ours uses it."""
THEME = Path(__file__).parents[2] / "theme"


def directives(policy: str) -> dict[str, str]:
    parts = [part.partition(" ") for part in policy.split("; ")]
    assert len({name for name, _, _ in parts}) == len(parts)
    return {name: value for name, _, value in parts}


def permissions() -> dict[str, str]:
    told = headers()["Permissions-Policy"].split(", ")
    return dict(one.split("=", 1) for one in told)


def test_a_page_may_do_this_and_no_more() -> None:
    assert directives(content_policy()) == POLICY


def test_a_copy_carried_home_may_hold_its_captions_and_no_more() -> None:
    assert directives(content_policy(media="data:")) == POLICY | {"media-src": "'self' blob: data:"}


def test_the_header_says_what_the_pages_say_and_who_may_show_them_in_a_frame() -> None:
    assert directives(headers()["Content-Security-Policy"]) == POLICY | FRAMED


def test_the_preview_is_sent_with_all_but_what_its_reloading_would_break() -> None:
    assert directives(headers(preview=True)["Content-Security-Policy"]) == FRAMED
    rest = {name: value for name, value in headers().items() if "Content-S" not in name}
    assert rest.items() <= headers(preview=True).items()


def test_every_feature_is_named_once_and_given_to_nobody_else() -> None:
    """Permissions Policy, W3C: ``()`` is nobody, ``(self)`` the site itself."""
    told = permissions()
    assert len(told) == headers()["Permissions-Policy"].count("=")
    assert set(told.values()) == {"()", "(self)"}
    assert [told[name] for name in POWERS] == ["()"] * len(POWERS)


def test_a_feature_is_allowed_only_where_something_of_ours_uses_it() -> None:
    texts = [
        file.read_text("utf-8") for kind in ("js", "html") for file in THEME.rglob(f"*.{kind}")
    ]
    allowed = {name for name, to in permissions().items() if to == "(self)"}
    assert allowed == set(USED)
    for pattern in USED.values():
        assert any(re.search(pattern, text) for text in texts), pattern


def test_nobody_is_told_where_somebody_came_from_and_no_type_is_guessed() -> None:
    """Referrer Policy, W3C; ``nosniff`` is WHATWG Fetch, 3.4."""
    assert headers()["Referrer-Policy"] == "no-referrer"
    assert headers()["X-Content-Type-Options"] == "nosniff"


def test_nothing_is_promised_for_a_whole_host() -> None:
    """RFC 6797, 6.1: the promise holds for a host, and a site may be one folder of it."""
    assert "Strict-Transport-Security" not in headers()


PAGES = (
    "index.html", "care.html", "404.html", "soup/index.html", "soup/notes.html",
    "es/soup/recording/script.html", "embed/soup/stop.html", "embed/es/soup/stop.html", "embed.html",
)  # fmt: skip


@pytest.mark.parametrize("page", PAGES)
def test_the_file_says_each_header_of_a_page_once(page: str) -> None:
    made = headers_file(PAGES)
    assert made.path == HEADERS
    addresses = [f"/{page}", f"/{page.removesuffix('index.html')}"]
    addresses = addresses if page.endswith("index.html") else [f"/{page}", f"/{page[:-5]}"]
    for address in addresses:
        sent = sorted(sent_with(address, made.content.decode()))
        assert sent == sorted(headers(page).items()), address


def test_only_what_other_sites_may_show_is_shown_by_them() -> None:
    for page in PAGES:
        policy = directives(headers(page)["Content-Security-Policy"])
        assert policy == (POLICY if page.startswith("embed/") else POLICY | FRAMED)
    assert "Content-Security-Policy" not in headers("embed/soup/stop.html", preview=True)
