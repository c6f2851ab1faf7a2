"""What is kept of papers is used for the very same paper alone, and never trusted when it is damaged."""

from __future__ import annotations

import json
import shutil
from pathlib import Path

import pytest

from generator.present.papers.press import Press
from tests.project import ROOT

FRAME = '#let given = json(bytes(sys.inputs.given))\n#set document(title: "T")\n#let whole = [#set document(title: "T"); #given.says]\n'
GIVEN = json.dumps({"says": "Two baskets"})


@pytest.fixture
def theme(tmp_path: Path) -> Path:
    """A theme of one small paper."""
    folder = tmp_path / "theme"
    (folder / "papers").mkdir(parents=True)
    (folder / "papers/frame.typ").write_text(FRAME, "utf-8")
    shutil.copytree(ROOT / "theme/vendor/noto-sans", folder / "vendor/noto-sans")
    return folder


@pytest.fixture
def kept(tmp_path: Path) -> Path:
    """Where it is kept."""
    return tmp_path / "kept"


def test_the_same_paper_is_not_set_again(
    theme: Path, kept: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    first = Press(theme, kept).made("a.pdf", GIVEN)
    assert first.startswith(b"%PDF-1.7")
    again = Press(theme, kept)
    monkeypatch.setattr(Press, "_typesetting", None)  # nothing can be set with it
    assert again.made("a.pdf", GIVEN) == first


@pytest.mark.parametrize("changed", ["given", "template", "letters", "path"])
def test_whatever_is_other_makes_it_anew(
    theme: Path, kept: Path, monkeypatch: pytest.MonkeyPatch, changed: str
) -> None:
    Press(theme, kept).made("a.pdf", GIVEN)
    given, path = GIVEN, "a.pdf"
    if changed == "given":
        given = json.dumps({"says": "Three baskets"})
    elif changed == "template":
        (theme / "papers/frame.typ").write_text(FRAME + "// another\n", "utf-8")
    elif changed == "letters":
        (theme / "vendor/noto-sans/NotoSans-Bold.ttf").unlink()
    else:
        path = "b.pdf"
    monkeypatch.setattr(Press, "_typesetting", None)
    with pytest.raises(AttributeError, match="pdf"):
        Press(theme, kept).made(path, given)


@pytest.mark.parametrize("at", [3, 40, -1])
def test_a_damaged_one_is_set_again(theme: Path, kept: Path, at: int) -> None:
    first = Press(theme, kept).made("a.pdf", GIVEN)
    [file] = kept.glob("*.pdf")
    held = bytearray(file.read_bytes())
    held[at] ^= 1
    file.write_bytes(held)
    assert Press(theme, kept).made("a.pdf", GIVEN) == first


def test_one_that_cannot_be_kept_is_made_all_the_same(theme: Path, tmp_path: Path) -> None:
    (tmp_path / "taken").write_text("a file", "utf-8")
    made = Press(theme, tmp_path / "taken").made("a.pdf", GIVEN)
    assert made == Press(theme).made("a.pdf", GIVEN)
