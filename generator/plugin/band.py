"""A preview's pages say what is wrong since they were made, or why there are none yet, each as it is asked for."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from wsgiref.types import StartResponse, WSGIApplication, WSGIEnvironment

from generator.author.pages import with_problems
from generator.problems import Problem


def with_band(app: WSGIApplication, problems: Callable[[], tuple[Problem, ...]]) -> WSGIApplication:
    """A server's answers, with a band of problems above every page while there are any.

    Args:
        app: answers for the preview.
        problems: those there are now.
    """

    def answer(environ: WSGIEnvironment, start: StartResponse) -> Iterable[bytes]:
        wrong = problems()
        if not wrong or not environ.get("PATH_INFO", "").endswith(("/", ".html")):
            return app(environ, start)
        begun: list[tuple[str, list[tuple[str, str]]]] = []

        def begin(
            status: str, headers: list[tuple[str, str]], *_: object
        ) -> Callable[[bytes], object]:
            begun.append((status, headers))
            return lambda _: None

        page = b"".join(app(environ, begin)).decode("utf-8", "replace")
        body = with_problems(page, wrong).encode()
        status, headers = begun[-1]
        kept = [one for one in headers if one[0].lower() != "content-length"]
        start(status, [*kept, ("Content-Length", str(len(body)))])
        return [body]

    return answer


def with_page(
    app: WSGIApplication, other: WSGIApplication, page: str, instead: Callable[[str], bool]
) -> WSGIApplication:
    """A server's answers, with one page in the place of those that are not there.

    Args:
        app: answers for the preview.
        other: answers for that page.
        page: its path, from the server's root.
        instead: whether it stands for the page of a path.
    """

    def answer(environ: WSGIEnvironment, start: StartResponse) -> Iterable[bytes]:
        path = environ.get("PATH_INFO", "")
        if not (path.endswith(("/", ".html")) and instead(path)):
            return app(environ, start)
        environ["PATH_INFO"] = page
        return other(environ, start)

    return answer
