"""A filled page put where it stands: its addresses, what leads nowhere left out, no text taken for a place."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import ClassVar

import pytest
from jinja2 import UndefinedError
from markupsafe import Markup

from generator.present.addresses import InCopy, OnSite
from generator.present.assets.environment import Theme
from generator.present.form import Form
from generator.present.views.page import LinkView
from generator.present.words.say import Say
from tests.project import library

LEADS, LOST = LinkView("a/notes.html", "Notes"), LinkView("care.html", "Care & more")


@dataclass(frozen=True, slots=True)
class _View:
    template: ClassVar[str] = "page.html"
    text: str = ""
    links: tuple[LinkView, ...] = ()


def form(folder: Path, written: str, view: _View | None = None) -> Form:
    (folder / "page.html").write_text(written, "utf-8")
    return Theme(folder).form(view or _View(), Say(library().words["en"]))


def copy() -> InCopy:
    return InCopy({"a/index.html": "index.html", "a/notes.html": "notes.html"}, lambda _: b"", "")


def test_one_filled_page_stands_on_the_site_and_in_a_copy(tmp_path: Path) -> None:
    page = form(
        tmp_path, '<img src="{{ at.file("a/b.png") }}"><img src="{{ at.file("a/b.png") }}">'
    )
    site, carried = OnSite("es/a/index.html"), copy()
    assert page.put(site) == '<img src="../../a/b.png"><img src="../../a/b.png">'
    assert page.put(carried) == '<img src="b.png"><img src="b.png">'
    assert site.needs == carried.needs == ("a/b.png",)


@pytest.mark.parametrize(
    ("links", "on_site", "in_copy"),
    [
        ((LEADS, LOST), "<ul>[notes.html][../care.html]</ul>.", "<ul>[notes.html]</ul>."),
        ((LOST,), "<ul>[../care.html]</ul>.", "."),
        ((), ".", "."),
    ],
)
def test_what_leads_nowhere_is_left_out_with_what_is_around_it(
    tmp_path: Path, links: tuple[LinkView, ...], on_site: str, in_copy: str
) -> None:
    page = form(
        tmp_path,
        "{% call at.where_any(view.links) %}<ul>{% for link in view.links %}"
        "{% call at.where(at.link(link.href)) %}[{{ at.link(link.href) }}]{% endcall %}"
        "{% endfor %}</ul>{% endcall %}.",
        _View(links=links),
    )
    assert page.put(OnSite("a/index.html")) == on_site
    assert page.put(copy()) == in_copy


def test_nothing_of_a_part_that_is_left_out_is_needed(tmp_path: Path) -> None:
    page = form(
        tmp_path,
        '{% call at.where(at.link("care.html")) %}<img src="{{ at.file("a/b.png") }}">{% endcall %}',
    )
    carried = copy()
    assert page.put(carried) == ""
    assert carried.needs == ()


def test_a_part_made_apart_stands_where_it_was_asked_for_and_in_no_copy(tmp_path: Path) -> None:
    page = form(tmp_path, '<p>{{ at.apart("offer") }}</p>')
    site = OnSite("a/index.html")
    site.bring("offer", Markup("<b>1 MB</b>"))
    assert page.put(site) == "<p><b>1 MB</b></p>"
    assert page.put(copy()) == "<p></p>"


def test_no_text_is_taken_for_a_place(tmp_path: Path) -> None:
    view = _View("\x020\x03 \x02\x03 <b> & 'c'")
    page = form(tmp_path, '{{ at.file("a/b.png") }} {{ view.text }}', view)
    assert page.put(OnSite("a/index.html")) == "b.png 0  &lt;b&gt; &amp; &#39;c&#39;"


def test_an_address_is_written_as_html_wants_it(tmp_path: Path) -> None:
    page = form(tmp_path, '<a href="{{ at.link("https://x.example/?a=1&b=2") }}">')
    assert page.put(OnSite("a/index.html")) == '<a href="https://x.example/?a=1&amp;b=2">'


def test_what_a_view_does_not_have_is_no_empty_text(tmp_path: Path) -> None:
    with pytest.raises((AttributeError, UndefinedError)):
        form(tmp_path, "{{ view.texts }}")
    with pytest.raises(UndefinedError):
        form(tmp_path, "{{ vieww }}")
