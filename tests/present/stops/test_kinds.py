"""Every kind of stop is whole; whatever part of it is taken away, something names that part."""

from __future__ import annotations

import ast
import dataclasses
import shutil
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from generator.model.stops import STOP_KINDS
from generator.model.words import Words
from generator.present.recording.slides.contents import contents, pause
from generator.present.stops.in_lesson import in_lesson
from generator.present.stops.kind import StopKind
from generator.present.stops.kinds import KINDS, kind_of
from generator.present.stops.missing_parts import _SAID, missing_parts
from generator.present.words.say import Say
from tests.site_project import ROOT
from tests.stop_examples import EXAMPLES, example_of, kinds_without_example
from tests.worked import library, worked

SAY = Say(library().words["en"])
THEME = ROOT / "theme"
PARTS = sorted(file.relative_to(THEME).as_posix() for file in THEME.glob("stops/*/*"))
FIELDS = [field.name for field in dataclasses.fields(StopKind)]


@pytest.fixture
def theme(tmp_path: Path) -> Path:
    """What of the theme the kinds are made of, to take something away from."""
    for name in ("stops", "css", "js"):
        shutil.copytree(THEME / name, tmp_path / name)
    return tmp_path


def named(theme: Path, words: dict[str, Words] | None = None) -> list[str]:
    """The files that the kinds are said to lack something in, and what."""
    return [
        f"{one.path}: {one.what}" for one in missing_parts(theme, words or dict(library().words))
    ]


def test_nothing_is_missing() -> None:
    assert named(THEME) == []
    assert [kind.name for kind in KINDS] == list(STOP_KINDS)
    assert kinds_without_example() == []


@pytest.mark.parametrize("kind", STOP_KINDS)
def test_an_example_goes_all_the_way(kind: str) -> None:
    result = worked(example_of(kind))
    index = next(i for i, stop in enumerate(result.lesson.file.stops) if stop.kind == kind)
    stop = in_lesson(index, result, SAY, "../")
    record = kind_of(stop)
    view = record.view(stop)
    assert isinstance(view, record.sees)
    assert view.head.kind == kind_of(view).name == kind
    assert contents(index, result, SAY)
    assert bool(pause(index, result, SAY).task) == (kind != "watch")
    assert record.plan(view, SAY)
    for part in (record.answers(stop, view), record.sources(view), record.cards(view)):
        assert isinstance(part, tuple)


@pytest.mark.parametrize("part", PARTS)
def test_each_file_of_a_kind_is_missed(theme: Path, part: str) -> None:
    (theme / part).unlink()
    assert [line for line in named(theme) if line.startswith(f"theme/{part}: ")]


@pytest.mark.parametrize("entry", ["css/work.css", "js/work.js"])
def test_a_bundle_that_kinds_share_is_missed(theme: Path, entry: str) -> None:
    (theme / entry).unlink()
    assert [line for line in named(theme) if line.startswith(f"theme/{entry}: ")]


@pytest.mark.parametrize(
    ("entry", "part"),
    [
        ("css/work.css", "stops/move/style.css"),
        ("css/work.css", "stops/compare/style.css"),
        ("js/work.js", "stops/move/element.js"),
        ("js/work.js", "stops/compare/element.js"),
    ],
)
def test_a_bundle_that_leaves_a_kind_out_is_told(theme: Path, entry: str, part: str) -> None:
    lines = (theme / entry).read_text("utf-8").splitlines(keepends=True)
    (theme / entry).write_text("".join(line for line in lines if part not in line), "utf-8")
    assert [line for line in named(theme) if line.startswith(f"theme/{part}: nothing brings")]


@pytest.mark.parametrize("kind", STOP_KINDS)
def test_each_text_of_a_kind_is_missed(kind: str) -> None:
    files = [
        *(THEME / "stops" / kind).glob("*.html"),
        *(THEME / "stops" / kind).glob("*.js"),
        *ROOT.glob(f"generator/present/stops/{kind}.py"),
    ]
    said = {key for file in files for key in _SAID.findall(file.read_text("utf-8"))}
    for key in sorted({f"stop_{kind}", *said}):
        for language, words in library().words.items():
            fewer = {name: text for name, text in words.texts.items() if name != key}
            told = named(THEME, {**library().words, language: replace(words, texts=fewer)})
            file = f"site_data/words/{language}.yaml: "
            assert [line for line in told if line.startswith(f"{file}the text `{key}`")], key


@pytest.mark.parametrize("kind", STOP_KINDS)
def test_a_record_is_missed(kind: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, f"generator.present.stops.{kind}", None)
    file = f"generator/present/stops/{kind}.py: "
    assert [line for line in named(THEME) if line.startswith(file)]


@pytest.mark.parametrize("kind", STOP_KINDS)
def test_a_model_is_missed(kind: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delitem(STOP_KINDS, kind)
    file = f"generator/model/stops/{kind}.py: "
    assert [line for line in named(THEME) if line.startswith(file)]


@pytest.mark.parametrize("kind", STOP_KINDS)
def test_an_example_is_missed(kind: str, tmp_path: Path) -> None:
    for file in EXAMPLES.glob("*.yaml"):
        if file.stem != kind:
            shutil.copy(file, tmp_path)
    assert kinds_without_example(tmp_path) == [kind]


def test_mypy_names_each_part_that_is_left_out_of_a_record(tmp_path: Path) -> None:
    for kind in STOP_KINDS:
        source = ROOT / f"generator/present/stops/{kind}.py"
        text = "\n".join(without_each_part(source.read_text("utf-8")))
        (tmp_path / f"less_{kind}.py").write_text(text, "utf-8")
    options = ["--config-file", str(ROOT / "pyproject.toml"), "--hide-error-context"]
    done = subprocess.run(
        [sys.executable, "-m", "mypy", *options, *map(str, sorted(tmp_path.iterdir()))],
        cwd=ROOT,
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )
    for kind in STOP_KINDS:
        own = [line for line in done.stdout.splitlines() if f"less_{kind}.py" in line]
        for field in FIELDS:
            missing = f'Missing named argument "{field}" for "StopKind"'
            assert sum(missing in line for line in own) == 1, (kind, field, done.stdout)


def without_each_part(source: str) -> Iterator[str]:
    """A kind's file with its record so many times as it has parts, each time without another."""
    lines = source.splitlines()
    record = ast.parse(source).body[-1]
    assert isinstance(record, ast.Assign)
    call = record.value
    assert isinstance(call, ast.Call)
    yield from lines[: record.lineno - 1]
    for left_out in call.keywords:
        kept = [ast.get_source_segment(source, one) for one in call.keywords if one is not left_out]
        yield f"WITHOUT_{left_out.arg} = StopKind({', '.join(map(str, kept))})"


def test_a_field_that_says_not_who_reads_it_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    class Unsaid(STOP_KINDS["ask"]):  # type: ignore[misc]
        aside: str

    monkeypatch.setitem(STOP_KINDS, "ask", Unsaid)
    file = "generator/model/stops/ask.py: the field `aside` of the kind `ask` does not say who reads it"
    assert file in named(THEME)
