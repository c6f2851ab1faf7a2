"""Every ``a.b`` of every template is a field of the view it is filled with."""

from __future__ import annotations

import re
from collections.abc import Iterator
from importlib import import_module
from pkgutil import iter_modules

import pytest
from jinja2 import DictLoader, Environment, FileSystemLoader

import generator.present.views
from generator.present.form import At
from generator.present.recording import views as recording_views
from generator.present.recording.slides import slide as slides
from generator.present.report import view as report_view
from generator.present.stops.kind import Paper
from generator.present.stops.kinds import KINDS
from generator.present.words.say import Say
from tests.site_project import ROOT
from tests.template_types import Checker, Scope, Type

THEME = ROOT / "theme"


def pages() -> dict[str, list[type]]:
    """The views that templates are filled with, by template."""
    modules = [recording_views, report_view] + [
        import_module(f"generator.present.views.{module.name}")
        for module in iter_modules(generator.present.views.__path__)
    ]
    found: dict[str, list[type]] = {}
    for module in modules:
        for one in vars(module).values():
            if isinstance(one, type) and isinstance(getattr(one, "template", None), str):
                views = found.setdefault(one.template, [])
                views += [one] if one not in views else []
    return found


def included(pattern: str, scope: Scope) -> Iterator[tuple[str, dict[str, Type]]]:  # noqa: ARG001  # what is there stands for the same everywhere
    """The templates of the kinds and of the slides, each with what its own name stands for."""
    if pattern == "recording/slides/*.html":
        for content in slides.Content.__args__:
            name = re.sub(r"(?<=[a-z])(?=[A-Z])", "-", content.__name__).lower()
            yield f"recording/slides/{name}.html", {"it": content}
        return
    assert pattern in {"stops/*/page.html", "stops/*/paper.html"}
    for kind in KINDS:
        if "page" in pattern or kind.paper is not Paper.LEFT_OUT:
            yield pattern.replace("*", kind.name), {"stop": kind.sees}


def problems(environment: Environment, template: str, view: type) -> list[str]:
    checker = Checker(environment, included)
    checker.check(template, {"view": view, "w": Say.__call__, "at": At, "plum_outline": str})
    return checker.problems


@pytest.mark.parametrize("template", pages())
def test_a_template_asks_only_for_what_its_view_has(template: str) -> None:
    environment = Environment(loader=FileSystemLoader(THEME), autoescape=True)
    for view in pages()[template]:
        assert problems(environment, template, view) == []


def test_every_template_is_looked_at() -> None:
    environment = Environment(loader=FileSystemLoader(THEME), autoescape=True)
    checker = Checker(environment, included)
    for template, views in pages().items():
        for view in views:
            checker.check(
                template, {"view": view, "w": Say.__call__, "at": At, "plum_outline": str}
            )
    there = {file.relative_to(THEME).as_posix() for file in THEME.rglob("*.html")}
    assert there - checker.templates == {"main.html"}  # MkDocs asks for it; it holds nothing


@pytest.mark.parametrize(
    ("written", "told"),
    [
        ("{{ view.titel }}", "LessonView has no titel"),
        ("{% for stop in view.stops %}{{ stop.head }}{% endfor %}", "StopOnPage has no head"),
        ("{% with a = view.page %}{{ a.rot }}{% endwith %}", "PageView has no rot"),
        (
            "{% macro m(link) %}{{ link.hreff }}{% endmacro %}{{ m(view.downloads[0]) }}",
            "has no hreff",
        ),
        ("{{ nobody }}", "nothing is called nobody"),
        ("{{ w('x', n=view.page.n) }}", "PageView has no n"),
        ("{% if view.video %}{{ view.video.sorce }}{% endif %}", "VideoView has no sorce"),
    ],
)
def test_a_slip_is_told_with_its_line(written: str, told: str) -> None:
    view = pages()["lesson.html"][0]
    environment = Environment(loader=DictLoader({"page.html": "\n" + written}), autoescape=True)
    found = problems(environment, "page.html", view)
    assert [line for line in found if line.startswith("page.html:2: ") and told in line], found
