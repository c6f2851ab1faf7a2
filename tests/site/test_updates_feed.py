"""The feed of updates is Atom: RFC 4287, each section that asks something of it, and tag URIs of RFC 4151."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import datetime
from itertools import pairwise
from pathlib import Path

import pytest
from lxml import etree

from generator.model.published import Published
from generator.steps.run import begin
from generator.steps.site import Site
from tests.project import ROOT
from tests.publications import DAYS, number, publication, record, state
from tests.site_project import copy_project

ATOM = {"a": "http://www.w3.org/2005/Atom"}
FIRST, SECOND, THIRD, *_ = DAYS
RECORD = record(
    *(publication(at) for at in DAYS[:3]),
    publication(DAYS[3], undoes=THIRD),
    soup=(
        state(FIRST),
        state(SECOND, numbers={"soups.broth": number("920")}),
        state(THIRD, title="Soup & <broth>"),
        state(DAYS[3]),
        *(state(at, "es") for at in DAYS[:2]),
    ),
)
RECORDS = {"none": Published(), "some": RECORD}


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Site:
    """A site in two languages without a lesson."""
    root = copy_project(tmp_path_factory.mktemp("feed") / "site", lessons=False)
    return begin(root, root / "shown", preview=True, last={}).site()


def feeds(site: Site, published: Published) -> dict[str, etree._Element]:
    made = replace(site, published=published).updates()
    return {one.path: etree.fromstring(one.content) for one in made if one.path.endswith(".xml")}


def one(root: etree._Element, path: str) -> str:
    (found,) = root.iterfind(path, ATOM)
    return found.text or ""


@pytest.mark.parametrize("name", RECORDS)
def test_it_is_of_the_grammar(site: Site, name: str) -> None:
    """Appendix B, from memory; what a break of it would be is in the next test."""
    grammar = etree.RelaxNG(etree.parse(ROOT / "tests/examples/atom.rng"))
    found = feeds(site, RECORDS[name])
    assert found.keys() == {"updates.xml", "es/updates.xml"}
    for path, feed in found.items():
        assert grammar.validate(feed), (path, grammar.error_log)


BREAKS = {
    "4.1.1: a feed has one id": ("<id>[^<]*</id>", ""),
    "4.1.1: a feed has one title": ("<title>[^<]*</title>", ""),
    "4.1.1: a feed has one updated": ("<updated>[^<]*</updated>", ""),
    "3.3: a date is of RFC 3339": ("<updated>[^<]*</updated>", "<updated>2026-03-01</updated>"),
    "4.2.7: a link has an address": (' href="[^"]*"', ""),
    "3.2.1: an author has a name": ("<name>[^<]*</name>", ""),
    "4.2.6: an id is an IRI": ("<id>[^<]*</id>", "<id>updates</id>"),
    "3.1.1: a text has a type that is known": ('type="html"', 'type="words"'),
}


@pytest.mark.parametrize("rule", BREAKS)
def test_the_grammar_sees_what_is_broken(site: Site, rule: str) -> None:
    grammar = etree.RelaxNG(etree.parse(ROOT / "tests/examples/atom.rng"))
    text = etree.tostring(feeds(site, RECORD)["updates.xml"], encoding="unicode")
    broken, times = re.subn(*BREAKS[rule], text, count=1)
    assert times == 1
    assert not grammar.validate(etree.fromstring(broken))


@pytest.mark.parametrize("name", RECORDS)
def test_what_the_grammar_cannot_say(site: Site, name: str) -> None:
    for path, feed in feeds(site, RECORDS[name]).items():
        address = f"https://kitchen.example.org/{path}"
        links = {link.get("rel"): link for link in feed.iterfind("a:link", ATOM)}
        assert links["self"].get("href") == address  # 4.1.1: a feed should name itself
        assert links["alternate"].get("href") == address.replace(".xml", ".html")
        assert len(links) == len(feed.findall("a:link", ATOM))  # 4.1.1: one alternate of a type
        assert one(feed, "a:author/a:name")  # 4.1.1: a feed has an author, or each entry
        entries = feed.findall("a:entry", ATOM)
        ids = [one(entry, "a:id") for entry in entries]
        assert len({*ids, one(feed, "a:id")}) == len(ids) + 1  # 4.1.1: no two of the same id
        latest = max((one(entry, "a:updated") for entry in entries), default="1970-01-01T00:00:00Z")
        assert one(feed, "a:updated") == latest
        for entry in entries:
            assert one(entry, "a:title").strip()  # 4.2.14: for people, so not empty
            assert one(entry, "a:content").strip()  # 4.1.2: content or an alternate; here both
            (link,) = entry.iterfind("a:link", ATOM)
            assert (link.get("href") or "").startswith(address.replace(".xml", ".html#at-"))
            published, updated = (one(entry, f"a:{name}") for name in ("published", "updated"))
            assert datetime.fromisoformat(published) <= datetime.fromisoformat(updated)


def test_every_id_is_a_tag_of_the_day_and_the_host(site: Site) -> None:
    """RFC 4151, section 2.1: tag:authority,date:specific."""
    (feed, _) = feeds(site, RECORD).values()
    for entry in feed.iterfind("a:entry", ATOM):
        at = one(entry, "a:published")
        assert one(entry, "a:id") == f"tag:kitchen.example.org,{at[:10]}:updates/en/{at}"
    assert one(feed, "a:id") == f"tag:kitchen.example.org,{FIRST[:10]}:updates/en"


def test_newest_first_and_what_was_taken_back_is_updated_then(site: Site) -> None:
    entries = feeds(site, RECORD)["updates.xml"].findall("a:entry", ATOM)
    moments = [one(entry, "a:published") for entry in entries]
    assert all(newer > older for newer, older in pairwise(moments))
    changed = {one(entry, "a:published"): one(entry, "a:updated") for entry in entries}
    assert changed == {at: at for at in DAYS[:4]} | {THIRD: DAYS[3]}


def test_ids_stay_when_the_site_moves_and_when_more_is_published(
    site: Site, tmp_path: Path
) -> None:
    def ids(site: Site, published: Published) -> dict[str, str]:
        feed = feeds(site, published)["updates.xml"]
        return {
            one(entry, "a:published"): one(entry, "a:id")
            for entry in feed.iterfind("a:entry", ATOM)
        }

    root = copy_project(tmp_path / "moved", lessons=False)
    file = root / "site_data/site.yaml"
    moved = file.read_text("utf-8").replace("kitchen.example.org/", "soup.example.org/new/")
    file.write_text(moved, "utf-8")
    later = replace(
        RECORD,
        publications=(
            *RECORD.publications,
            publication(DAYS[4], address="https://soup.example.org/new/"),
        ),
    )
    before = ids(site, RECORD)
    after = ids(begin(root, root / "x", preview=True, last={}).site(), later)
    assert {at: after[at] for at in before} == before
    assert after[DAYS[4]] == f"tag:soup.example.org,{DAYS[4][:10]}:new/updates/en/{DAYS[4]}"


def test_the_page_leads_to_it_from_its_head(site: Site) -> None:
    made = {one.path: one.content.decode() for one in replace(site, published=RECORD).updates()}
    for folder in ("", "es/"):
        assert re.search(
            r'<link rel="alternate" type="application/atom\+xml" href="updates.xml"',
            made[f"{folder}updates.html"],
        )
