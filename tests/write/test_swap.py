"""A site is swapped in whole: no run that fails or is cut off loses the one before."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from generator.write.swap import replaced


def write(target: Path, text: str) -> None:
    with replaced(target) as folder:
        assert list(folder.iterdir()) == []
        (folder / "index.html").write_text(text, encoding="utf-8")


def holds(target: Path) -> str:
    assert [path.name for path in target.parent.iterdir()] == [target.name], "something was left"
    return (target / "index.html").read_text(encoding="utf-8")


def fail(target: Path) -> None:
    with replaced(target) as folder:
        (folder / "index.html").write_text("half", encoding="utf-8")
        raise RuntimeError


def broken(target: Path) -> None:
    with pytest.raises(RuntimeError):
        fail(target)


def test_the_first_and_the_next(tmp_path: Path) -> None:
    site = tmp_path / "site"
    write(site, "one")
    assert holds(site) == "one"
    write(site, "two")
    assert holds(site) == "two"


def test_a_run_that_fails_changes_nothing(tmp_path: Path) -> None:
    site = tmp_path / "site"
    write(site, "one")
    broken(site)
    assert holds(site) == "one"


def test_what_a_cut_off_run_left_behind_is_cleared(tmp_path: Path) -> None:
    site = tmp_path / "site"
    write(site, "one")
    for name in (".site.new", ".site.old"):
        (tmp_path / name).mkdir()
        (tmp_path / name / "junk").touch()
    write(site, "two")
    assert holds(site) == "two"


@pytest.mark.parametrize("next_run", [broken, lambda target: write(target, "one")])
def test_a_run_cut_off_between_its_two_steps_loses_no_site(
    tmp_path: Path, next_run: Callable[[Path], None]
) -> None:
    site = tmp_path / "site"
    write(site, "one")
    site.rename(tmp_path / ".site.old")
    next_run(site)
    assert holds(site) == "one"
