"""The preview sends what a published site is sent with, as far as its reloading lets it."""

from __future__ import annotations

from collections.abc import Iterable
from wsgiref.types import StartResponse, WSGIEnvironment
from wsgiref.util import setup_testing_defaults

from generator.plugin.headers import with_headers
from generator.plugin.ranges import with_ranges
from generator.present.policy import headers
from generator.steps.sent_with import preview_headers


def app(_: WSGIEnvironment, start: StartResponse) -> Iterable[bytes]:
    start("404 Not Found", [("Content-Type", "text/html")])
    return [b"gone"]


def test_every_answer_has_them_beside_its_own() -> None:
    """Status and body are as they were (PEP 3333)."""
    environ: WSGIEnvironment = {}
    setup_testing_defaults(environ)
    begun: list[tuple[str, list[tuple[str, str]]]] = []

    def start(status: str, given: list[tuple[str, str]], *_: object) -> object:
        begun.append((status, given))
        return None

    answer = with_headers(with_ranges(app), preview_headers)
    assert list(answer(environ, start)) == [b"gone"]  # type: ignore[arg-type]  # nobody calls what it gives
    ((status, given),) = begun
    assert status == "404 Not Found"
    assert given == [("Content-Type", "text/html"), *headers(preview=True).items()]
