"""Every published page is what the HTML Standard asks for, by the checker that the W3C runs too (Nu Html Checker)."""

from __future__ import annotations

import json
import shutil
import subprocess
from functools import cache
from pathlib import Path

import pytest

HERE = Path(__file__).parent
BLIND = "Content Security Policy"
"""It reads pages as files, where ``'self'`` is nobody; what the policy stops is seen in the browser (``watch``)."""


@cache
def checker() -> tuple[str, Path]:
    """Java, and the checker, which npm brings by its lock."""
    java, npm = shutil.which("java"), shutil.which("npm")
    if java is None or npm is None:
        pytest.skip("no Java or no npm here: the pages stay unchecked by the Nu Html Checker")
    fetch = [npm, "ci", "--ignore-scripts", "--no-audit", "--no-fund", "--silent"]
    done = subprocess.run(fetch, cwd=HERE, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    return java, next(HERE.rglob("vnu.jar"))


def told_of(folder: Path) -> list[str]:
    """Every error and warning about the pages of a folder."""
    java, jar = checker()
    quiet = ["-Xlog:disable", "-Xss4m"]  # whatever else Java has to say, it says on stderr
    told = ["--stdout", "--exit-zero-always", "--format", "json", "--skip-non-html"]
    command = [java, *quiet, "-jar", str(jar), *told, str(folder)]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    return [
        f"{one['url'].removeprefix(f'file:{folder}/')}:{one.get('lastLine', 0)}: {one['message']}"
        for one in json.loads(done.stdout)["messages"]
        if BLIND not in one["message"]
    ]


def test_it_finds_nothing_in_the_demo(built_site: Path) -> None:
    assert told_of(built_site) == []


def test_it_would_find_a_slip(tmp_path: Path) -> None:
    page = (
        "<!doctype html><html lang=en><title>t</title><details><p>no summary</p></details></html>"
    )
    (tmp_path / "index.html").write_text(page, "utf-8")
    assert len(told_of(tmp_path)) == 1
