"""What is wrong with the lessons, shown in the preview below the last page that was right.

A page of the preview is left open at its end (HTML lets ``</body>`` be left out), so that what is
found wrong after it was made can follow it. It stays in sight at the foot of the window.
"""

from __future__ import annotations

from collections.abc import Iterable

from markupsafe import Markup

_BAND = Markup(
    '<div role="alert" tabindex="0" style="position:sticky;bottom:0;max-height:40vh;overflow:auto;padding:1rem;'
    'background:var(--plum-wash);border-top:3px solid var(--plum)">'
    "<b>{title}</b><ul>{problems}</ul></div>"
)
_LINE = Markup("<li><code>{place}</code> {what}<br>{hint}</li>")
_PAGE = Markup(
    '<!doctype html><html lang="en"><meta charset="utf-8"><title>{title}</title>'
    '<meta name="viewport" content="width=device-width, initial-scale=1">'
    "<style>:root{{color-scheme:light dark;font:1.1rem/1.5 system-ui,sans-serif}}"
    "body{{max-width:45rem;margin:2rem auto;padding:0 1rem;overflow-wrap:anywhere}}"
    "li{{margin:0 0 1rem}}</style>"
    "<body><main><h1>{title}</h1><p>{says}</p><ul>{problems}</ul></main></body></html>"
)


def with_band(page: str, problems: Iterable[tuple[str, str, str]]) -> str:
    """A page of the preview with problems at its end; the preview has no strict policy.

    Args:
        page: HTML from its doctype on.
        problems: place, what is wrong, and the way out of each.
    """
    listed = _listed(problems)
    if not listed:
        return page
    title = "To put right; the page is as it was before:"
    return page + str(_BAND.format(title=title, problems=listed))  # Markup would escape the page


def problem_page(problems: Iterable[tuple[str, str, str]]) -> str:
    """A whole page of problems, shown where there was no right page yet; problems as above."""
    title = "This site has something to put right"
    says = "Change the file and save it. As soon as all is right, this page becomes the site."
    return str(_PAGE.format(title=title, says=says, problems=_listed(problems)))


def _listed(problems: Iterable[tuple[str, str, str]]) -> Markup:
    return Markup().join(
        _LINE.format(place=place, what=what, hint=hint) for place, what, hint in problems
    )
