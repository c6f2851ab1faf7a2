"""A page written by hand for an address that leads nowhere takes the place of ours, and works from any depth."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from generator.present.output import Output
from generator.steps.by_hand import ByHand
from generator.steps.filling import other_files
from generator.steps.run import begin
from tests.site_project import build_project, copy_project, small_lesson, write_lesson

ADDRESSES = re.compile(r'\b(?:href|src|data-later)="([^"]+)"')
MINE = """# Lost

[The lesson](small/index.html), [below](#again), [a letter](mailto:us@example.org).

## Again

`<a href="small/index.html">` is an address in a page.
"""


@pytest.fixture(scope="module")
def project(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A site below a path of its host, with a page of that name and pages that lead to it."""
    folder = copy_project(tmp_path_factory.mktemp("lost") / "project", lessons=False)
    write_lesson(folder, "small", small_lesson())
    (folder / "lessons/404.md").write_text(MINE, "utf-8")
    file = folder / "site_data/site.yaml"
    told = re.sub(r"address: .*", "address: https://hill.example.org/kitchen/", file.read_text())
    file.write_text(told, "utf-8")
    return folder


def test_it_is_the_one_and_leads_from_the_root_of_the_host(project: Path) -> None:
    site = build_project(project)
    page = (site / "404.html").read_text("utf-8")
    assert "This page is not here" not in page
    told = re.sub(r"<code>.*?</code>", "", page)
    found = set(ADDRESSES.findall(told)) - {"#main", "#again", "mailto:us@example.org"}
    assert "/kitchen/small/index.html" in found
    for address in found:
        assert address.startswith("/kitchen/"), address
        assert (site / address.removeprefix("/kitchen/")).is_file(), address
    assert '&lt;a href="small/index.html"&gt;' in page  # words are no address
    assert 'name="robots"' in page
    assert "404.html" not in (site / "sitemap.xml").read_text("utf-8")


def test_each_path_is_made_once(project: Path) -> None:
    site = begin(project, project / "shown", preview=True, last={}).site()
    page = Output("404.html", b"<p>Mine</p>", "Lost")
    raw = Output("404.html", b"<!doctype html><p>Raw</p>")
    for by_hand in (ByHand((page,), ()), ByHand((), (raw,)), ByHand((), ())):
        paths = [one.path for one in other_files(site, by_hand)]
        assert paths.count("404.html") == 1
