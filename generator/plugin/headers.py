"""Answers with the headers that a site is published with, so that a preview shows what they do."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from wsgiref.types import StartResponse, WSGIApplication, WSGIEnvironment


def with_headers(
    app: WSGIApplication, headers: Callable[[str], Mapping[str, str]]
) -> WSGIApplication:
    """A server's answers, each with more headers.

    Args:
        app: gives the answers.
        headers: gives them by name, for the path that is asked for.
    """

    def answer(environ: WSGIEnvironment, start: StartResponse) -> Iterable[bytes]:
        def begin(
            status: str, own: list[tuple[str, str]], *more: object
        ) -> Callable[[bytes], object]:
            told = [*own, *headers(str(environ.get("PATH_INFO", ""))).items()]
            return start(status, told, *more)  # type: ignore[arg-type]  # passed on as it came

        return app(environ, begin)

    return answer
