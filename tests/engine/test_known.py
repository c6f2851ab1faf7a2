"""What files hold, which entries were used and what the library says is known without reading again."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.engine.contents import Contents, combined
from generator.engine.inputs import inputs_of
from generator.engine.library import known_library
from generator.engine.store import Store
from generator.engine.uses import Uses, Watched
from generator.engine.versions import versions
from generator.read.library import read_library
from generator.write.fresh import sources
from tests.engine.small_site import small_site
from tests.site_project import ROOT


def test_a_file_is_read_again_only_when_its_mark_is_another_one(tmp_path: Path) -> None:
    file = tmp_path / "a.txt"
    file.write_text("one", "utf-8")
    first = Contents(tmp_path, {str(file): 1})
    held = first[str(file)]
    first.remember()
    file.write_text("two", "utf-8")
    assert Contents(tmp_path, {str(file): 1})[str(file)] == held
    assert Contents(tmp_path, {str(file): 2})[str(file)] != held


@pytest.mark.parametrize("record", ["", "[]", '{"a": 1}', '{"a": ["x", "y"]}', "{"])
def test_a_damaged_record_is_no_record(tmp_path: Path, record: str) -> None:
    (tmp_path / ".cache").mkdir()
    (tmp_path / ".cache/contents.json").write_text(record, "utf-8")
    (tmp_path / "uses.json").write_text(record, "utf-8")
    assert Contents(tmp_path, {}).word("a", 1, lambda: "found") == "found"
    assert Uses(tmp_path / "uses.json").find("own", "around") is None


def test_names_and_values_are_not_mixed_up() -> None:
    assert combined({"a": "bc"}) != combined({"ab": "c"})
    assert combined({"a": "1", "b": "2"}) == combined({"b": "2", "a": "1"})


def test_a_watched_mapping_notes_what_it_is_asked_for() -> None:
    asked: set[str] = set()
    foods = Watched({"apple": 1, "pear": 2}, "foods", asked)
    assert foods["apple"] == 1
    assert "plum" not in foods
    assert foods.get("fig") is None
    assert asked == {"foods/apple", "foods/plum", "foods/fig"}
    assert list(foods) == ["apple", "pear"]
    assert "foods/*" in asked


def test_uses_are_remembered_by_what_used_them(tmp_path: Path) -> None:
    file = tmp_path / "uses.json"
    uses = Uses(file)
    uses.add("own", "around", ["foods/apple"])
    uses.remember()
    again = Uses(file)
    assert again.find("own", "around") == ["foods/apple"]
    assert again.find("own", "other") is None
    again.remember()
    assert Uses(file).find("own", "around") == ["foods/apple"]


def test_the_library_is_read_once_and_is_the_same(tmp_path: Path) -> None:
    store, read = Store(tmp_path), read_library(ROOT)
    first = known_library(store, "abc", lambda: read)
    again = known_library(store, "abc", lambda: pytest.fail("it was read again"))
    assert again.library == first.library == read
    assert again.sums == first.sums
    assert len(set(again.sums.values())) == len(again.sums), "no two entries are alike"
    assert again.sums_of(["foods/apple-raw", "foods/none"])["foods/none"] == ""


@pytest.mark.parametrize("damage", [b"", b"junk"])
def test_a_damaged_library_is_read_again(tmp_path: Path, damage: bytes) -> None:
    store, read = Store(tmp_path), read_library(ROOT)
    known_library(store, "abc", lambda: read)
    file = tmp_path / "ab/abc"
    file.write_bytes(file.read_bytes()[:-9] + damage)
    assert known_library(store, "abc", lambda: read).library == read


def test_every_library_that_the_lock_names_counts() -> None:
    found = versions()
    assert "mkdocs 1." in found
    assert "markupsafe " in found, "what is needed by what we need"


def test_each_file_counts_for_what_depends_on_it(tmp_path: Path) -> None:
    root = small_site(tmp_path / "site")

    def now() -> dict[str, object]:
        inputs = inputs_of(root, Contents(root, sources(str(root))))
        flat = {name: getattr(inputs, name) for name in type(inputs).__slots__}
        return {**flat, **{f"lesson {name}": sum_ for name, sum_ in inputs.lessons.items()}}

    (root / "lessons/twin").mkdir()
    (root / "lessons/twin/lesson.yaml").write_bytes((root / "lessons/one/lesson.yaml").read_bytes())
    before = now()
    assert before["lesson one"] != before["lesson twin"], "the same files under two addresses"
    for path, other in {
        "lessons/one/lesson.yaml": {"lessons", "lesson one"},
        "lessons/film/film.en.vtt": {"lessons", "lesson film", "by_hand"},
        "lessons/about.md": {"by_hand"},
        "site_data/foods.yaml": {"library"},
        "site_data/site.yaml": {"library", "words"},
        "theme/css/tokens.css": {"theme"},
        "mkdocs.yml": {"settings"},
    }.items():
        held = (root / path).read_bytes()
        (root / path).write_bytes(held + b"\n")
        after = now()
        assert {name for name in after if after[name] != before[name]} == other, path
        (root / path).write_bytes(held)
    assert now() == before
