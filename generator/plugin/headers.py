"""Answers with the headers that a site is published with, so that a preview shows what they do."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from wsgiref.types import StartResponse, WSGIApplication, WSGIEnvironment


def with_headers(app: WSGIApplication, headers: Mapping[str, str]) -> WSGIApplication:
    """A server's answers, each with these headers too.

    Args:
        app: gives the answers.
        headers: by name.
    """

    def answer(environ: WSGIEnvironment, start: StartResponse) -> Iterable[bytes]:
        def begin(
            status: str, own: list[tuple[str, str]], *more: object
        ) -> Callable[[bytes], object]:
            return start(status, [*own, *headers.items()], *more)  # type: ignore[arg-type]  # passed on as it came

        return app(environ, begin)

    return answer
