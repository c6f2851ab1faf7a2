"""A copy of the whole project with one more kind of stop in it, made of the files DEVELOPERS.md lists."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

from tests.site_project import EPOCH, ROOT, copy_project, make_papers, write_lesson

FILES = ROOT / "tests" / "examples" / "made-up-kind"
NUMBERS = ROOT / "tests" / "examples" / "made-up-kind-with-numbers"
WORDS = "site_data/words"
QUIZ = {
    "at": "0:30",
    "prompt": "Which holds more water?",
    "choices": ["A ripe plum", "A dried plum"],
}
QUIZ_IN_SPANISH = """\
title: Dos ciruelas
summary: Elige una.
stops:
  ciruela:
    title: Agua
    prompt: ¿Cuál tiene más agua?
    choices: [Una ciruela madura, Una ciruela pasa]
"""


def files_of_the_kind() -> list[str]:
    """Every new or changed file, from the project's root."""
    return sorted(file.relative_to(FILES).as_posix() for file in FILES.rglob("*") if file.is_file())


def project_with_the_kind(folder: Path) -> Path:
    """The program and an empty site, the kind, and a lesson with it in two languages."""
    root = copy_project(folder, lessons=False)
    shutil.copytree(ROOT / "generator", root / "generator")
    for name in files_of_the_kind():
        text = (FILES / name).read_text("utf-8")
        if name.startswith(WORDS):  # a changed file: the kind's lines below those that are there
            text = (root / name).read_text("utf-8") + text
        (root / name).parent.mkdir(parents=True, exist_ok=True)
        (root / name).write_text(text, "utf-8")
    site = root / "site_data/site.yaml"
    site.write_text(site.read_text("utf-8") + "publish_recording_pack: true\n", "utf-8")
    stops = [{"quiz": {"id": "ciruela", "title": "Water", **QUIZ}}]
    make_papers(root, "worksheet", "answers", "a4")
    head = {"title": "Two plums", "summary": "Choose one.", "grades": "3-5", "minutes": 5}
    lesson = write_lesson(root, "plums", {**head, "stops": stops})
    (lesson.parent / "lesson.es.yaml").write_text(QUIZ_IN_SPANISH, "utf-8")
    return root


def add_numbers(root: Path) -> None:
    """What working out and reading have of the kind as well: a file more in each of the two rooms."""
    shutil.copytree(NUMBERS, root, dirs_exist_ok=True)


def run_there(root: Path, *words: str) -> subprocess.CompletedProcess[str]:
    """`plumline` with the copy's own program."""
    return _run(root, "-c", "import sys; from generator.cli import main; sys.exit(main())", *words)


def build_there(root: Path) -> subprocess.CompletedProcess[str]:
    """`mkdocs build` with the copy's own program."""
    return _run(root, "-m", "mkdocs", "build", "--quiet")


def _run(root: Path, *words: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, *words],
        cwd=root,
        env={**os.environ, "PYTHONPATH": str(root), "SOURCE_DATE_EPOCH": EPOCH},
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )
