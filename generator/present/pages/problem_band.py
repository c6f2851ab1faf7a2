"""What is wrong with the lessons, shown in the preview above the last page that was right."""

from __future__ import annotations

from collections.abc import Iterable

from markupsafe import Markup

_BAND = Markup(
    '<aside role="alert" style="padding:1rem;background:var(--plum-wash);border-bottom:3px solid var(--plum)">'
    "<b>{title}</b><ul>{problems}</ul></aside>"
)
_LINE = Markup("<li><code>{place}</code> {what}<br>{hint}</li>")


def with_band(page: str, problems: Iterable[tuple[str, str, str]]) -> str:
    """A page of the preview with problems above its content; the preview has no strict policy.

    Args:
        page: HTML from its doctype on.
        problems: place, what is wrong, and the way out of each.
    """
    listed = Markup().join(
        _LINE.format(place=place, what=what, hint=hint) for place, what, hint in problems
    )
    if not listed:
        return page
    band = _BAND.format(title="To put right; below is the page as it was before:", problems=listed)
    return page.replace("<body>", f"<body>{band}", 1)
