"""Of HTML in a hand-written page only plain elements are published; what is left out is told with its line."""

from __future__ import annotations

from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.cli.commands import commands
from generator.plugin.clean import clean
from tests.html_page import read_page
from tests.site_project import copy_project, small_lesson, write_lesson


def plumline(root: Path, *words: str) -> Result:
    return CliRunner().invoke(commands, [*words, "--root", str(root)], catch_exceptions=False)


@pytest.mark.parametrize(
    "html",
    [
        "<script>alert(1)</script>",
        "<script src='small/evil.js'></script>",
        "<meta http-equiv='refresh' content='0;url=https://evil.example/'>",
        "<base href='https://evil.example/'>",
        "<link rel='stylesheet' href='https://evil.example/a.css'>",
        "<style>body { display: none }</style>",
        "<iframe src='https://evil.example/'></iframe>",
        "<object data='a.swf'></object><embed src='a.swf'>",
        "<form action='https://evil.example/'><input name='a'><button>b</button></form>",
        "<svg onload='alert(1)'><script>alert(1)</script></svg>",
        "<math><mtext><img src='x' onerror='alert(1)'></mtext></math>",
        "<img src='x.png' onerror='alert(1)' style='position: fixed'>",
        "<p onclick='alert(1)' style='color: red'>x</p>",
        "<a href='javascript:alert(1)'>x</a>",
        "<a href=' java\nscript:alert(1)'>x</a>",
        "<a href='data:text/html,x'>x</a>",
        "<a href='http://evil.example/'>x</a>",
        "<a href='//evil.example/'>x</a>",
        r"<a href='\\evil.example/'>x</a>",
        r"<a href='/\evil.example/'>x</a>",
        "<a href='blob:https://a/b'>x</a>",
        "<img src='https://evil.example/p.png'>",
        "<img src='data:image/png;base64,AAAA'>",
        "<img srcset='https://evil.example/p.png 2x' src='a.png'>",
        "<video src='https://evil.example/v.mp4' autoplay></video>",
        "<details ontoggle='alert(1)' open>x</details>",
        "<noscript><p title='</noscript><img src=x onerror=alert(1)>'></noscript>",
        "<!-- <script> --><b>x</b>",
        "<template><script>alert(1)</script></template>",
        "<gap-calculator></gap-calculator><button popovertarget='x'>y</button>",
    ],
)
def test_nothing_that_runs_asks_or_leads_astray_is_left(tmp_path: Path, html: str) -> None:
    file = tmp_path / "page.html"
    file.write_text(f"<!doctype html><title>t</title>{clean(html)}", "utf-8")
    body = next(read_page(file).iter("body"))
    plain = {"body", "p", "a", "b", "img", "details"}
    assert {str(each.tag) for each in body.iter()} <= plain
    attributes = {name for each in body.iter() for name in each.attrib}
    assert attributes <= {"alt", "open", "rel", "src", "title"}
    assert "evil" not in "".join(value for each in body.iter() for value in each.attrib.values())


def test_plain_elements_and_links_survive() -> None:
    html = (
        '<h2 id="a">A</h2><p lang="es">x <a href="care.html#b">c</a> <a href="mailto:x@y.org">d</a></p>'
        '<table><tr><th scope="col" align="right">e</th></tr></table><img alt="Pot" src="pot.png">'
    )
    kept = clean(html)
    for part in ('<h2 id="a">A</h2>', '<p lang="es">', 'href="care.html#b"', 'href="mailto:x@y.org"',
                 'scope="col"', 'align="right"', 'src="pot.png"', 'alt="Pot"'):  # fmt: skip
        assert part in kept
    assert '<a href="https://example.org/" rel="noreferrer">' in clean(
        '<a href="https://example.org/">x</a>'
    )


@pytest.mark.parametrize(
    ("href", "rel"),
    [
        ("care.html#b", False),
        ("#b", False),
        ("a.html?b=c&amp;d", False),
        ("https://example.org/", True),
        ("https://example.org/?a=1&amp;b=2", True),
        ("mailto:x@y.org", True),
    ],
)
def test_only_a_link_out_of_the_site_hides_where_it_was_followed(href: str, rel: bool) -> None:
    html = f'<a href="{href}" title="a &gt; b">x</a>'
    assert clean(html) == (html.replace('">x', '" rel="noreferrer">x') if rel else html)


def test_a_link_in_a_title_is_none() -> None:
    html = clean("""<a href="a.html" title='<a href="https://b/" rel="noreferrer">'>x</a>""")
    assert html.endswith(' rel=&quot;noreferrer&quot;&gt;">x</a>')


def test_a_heading_takes_no_id_of_the_page_itself(tmp_path: Path) -> None:
    project = copy_project(tmp_path, lessons=False)
    write_lesson(project, "small", small_lesson())
    page = project / "lessons/about.md"
    page.write_text(
        "# Us\n\n## Main\n\n## Main\n\n## Mainly\n\n[on](#section-main)\n\n<p id='main'>A</p>\n",
        "utf-8",
    )
    done = plumline(project, "build")
    assert done.exit_code == 0, done.output
    assert "lessons/about.md:11:4: `id='main'` is an id that the page uses itself" in done.stderr
    html = (project / "site/about.html").read_text("utf-8")
    for name in ("main", "section-main", "section-main_1", "mainly"):
        assert html.count(f'id="{name}"') == 1, name


def test_what_is_left_out_is_told_with_its_line(tmp_path: Path) -> None:
    project = copy_project(tmp_path, lessons=False)
    write_lesson(project, "small", small_lesson())
    (project / "lessons/about.md").write_text(
        "---\ntitle: Us\ntemplate: nowhere.html\n---\n# Us\n\n<script src='a.js'></script>\n\n"
        "<p onclick='x()'>A</p>\n\n[old](http://example.org/) [new](https://example.org/)\n\n"
        "| a |\n|--:|\n| b |\n\n`<script>` in code\n",
        "utf-8",
    )
    done = plumline(project, "check")
    assert done.exit_code == 0, done.output
    assert [line for line in done.stderr.splitlines() if line.startswith("lessons/")] == [
        "lessons/about.md:7:1: `<script` is not published",
        "lessons/about.md:9:4: `onclick=` is not published",
        "lessons/about.md:11:7: `http://example.org/` leads to where anybody on the way can change it",
    ]
    assert plumline(project, "build").exit_code == 0
    page = (project / "site/about.html").read_text("utf-8")
    assert "a.js" not in page
    assert "onclick" not in page
    assert "http://example.org" not in page
    assert '<a href="https://example.org/" rel="noreferrer">new</a>' in page


@pytest.mark.parametrize("name", ["care", "sources", "teachers"])
def test_the_pages_of_the_demo_lose_nothing(built_site: Path, name: str) -> None:
    links = [each.get("href", "") for each in read_page(built_site / f"{name}.html").iter("a")]
    assert all(links)
