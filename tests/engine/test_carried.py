"""A site is made anew when what the program brings along is another: its library, its theme."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from generator import carried
from generator.write.fresh import is_fresh
from tests.engine.small_site import built, lesson_with
from tests.site_project import ROOT, write_lesson

SETTINGS = "site_name: Hillside\ndocs_dir: lessons\nsite_dir: site\nplugins: [plumline]\nuse_directory_urls: false\n"


@pytest.fixture
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """What a program brings along, in a folder of its own."""
    home = tmp_path / "program"
    for name in ("site_data", "theme"):
        shutil.copytree(ROOT / name, home / name)
    monkeypatch.setattr(carried, "HOME", str(home))
    return home


@pytest.fixture
def root(tmp_path: Path) -> Path:
    """A site of nothing but a lesson, its settings and who makes it."""
    root = tmp_path / "site"
    (root / "site_data").mkdir(parents=True)
    (root / "site_data/site.yaml").write_text("programme: Hillside\nlanguages: [en]\n", "utf-8")
    (root / "mkdocs.yml").write_text(SETTINGS, "utf-8")
    write_lesson(root, "small", lesson_with("carrot-raw"))
    return root


@pytest.mark.usefixtures("home")
def test_a_site_of_ones_own_is_built_and_found_unchanged(root: Path) -> None:
    assert isinstance(built(root), dict)
    assert is_fresh(str(root))
    assert (root / "site/small/index.html").is_file()
    assert not list((root / "site").glob("css/*")), "MkDocs' own theme is not published"


@pytest.mark.parametrize(
    ("path", "old", "new"),
    [
        ("site_data/foods.yaml", "{energy: 52,", "{energy: 152,"),
        ("site_data/words/en.yaml", "locale: en-US", "locale: en-GB"),
        ("theme/css/tokens.css", ":root", ":root, .other"),
    ],
)
def test_what_the_program_brings_along_changes_the_site(
    home: Path, root: Path, path: str, old: str, new: str
) -> None:
    before = built(root)
    file = home / path
    text = file.read_text("utf-8")
    assert old in text
    file.write_text(text.replace(old, new), "utf-8")
    assert not is_fresh(str(root))
    assert built(root) != before


def test_a_theme_of_ones_own_is_used(home: Path, root: Path) -> None:
    before = built(root)
    shutil.copytree(home / "theme", root / "theme")
    tokens = root / "theme/css/tokens.css"
    tokens.write_text(tokens.read_text("utf-8") + "\n.mine { color: red }\n", "utf-8")
    assert not is_fresh(str(root))
    after = built(root)
    assert isinstance(before, dict)
    assert isinstance(after, dict)
    assert after != before
    shutil.rmtree(root / "theme")
    assert not is_fresh(str(root))
    assert built(root) == before
