"""Caption and chapter files under two judges from outside: npm's webvtt-parser, and Chromium itself."""

from __future__ import annotations

import random
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page

from generator.model.captions import CaptionFile
from generator.present.recording.captions import caption_draft
from generator.read.vtt import read_vtt
from tests.project import GOOD, worked
from tests.read.test_vtt import BROKEN

PARSER = Path(__file__).parents[1] / "vendor" / "parser.js"
ERRORS = """texts => texts.map(text => {
    const read = new WebVTTParser().parse(text, "MODE");
    return {errors: read.errors.map(one => `${one.line}: ${one.message}`), cues: read.cues.length};
})"""
COUNT = """track => new Promise((done, failed) => {
    const element = document.createElement("track");
    Object.assign(element, {kind: track.kind, src: track.src, srclang: "en"});
    element.addEventListener("load", () => done(element.track.cues.length));
    element.addEventListener("error", () => failed(new Error(track.src)));
    document.querySelector("video").append(element);
    element.track.mode = "hidden";
})"""
STRICTER = {
    "arrow in the head",
    "no cue",
    "cue without words",
    "NUL",
    "same name twice",
    "unknown region setting",
    "space before the time",
}
"""Faults by the format's own words that the npm parser lets pass, and a file or a cue that says nothing."""


@pytest.fixture
def validate(page: Page) -> Callable[[list[str], str], list[dict[str, object]]]:
    """What the npm parser says of texts, read as ``metadata``, ``subtitles`` or ``chapters``."""
    page.add_script_tag(path=PARSER)
    return lambda texts, mode: page.evaluate(ERRORS.replace("MODE", mode), texts)


Validate = Callable[[list[str], str], list[dict[str, object]]]


def tracks(site: Path) -> list[Path]:
    return sorted(site.rglob("*.vtt"))


def test_every_file_of_the_built_demo_is_valid(built_site: Path, validate: Validate) -> None:
    files = tracks(built_site)
    assert len([file for file in files if file.name.startswith("chapters.")]) >= 5
    for kind, mode in ((False, "subtitles"), (True, "chapters")):
        some = [file for file in files if file.name.startswith("chapters.") is kind]
        said = validate([file.read_text("utf-8") for file in some], mode)
        assert {str(file): one["errors"] for file, one in zip(some, said, strict=True)} == {
            str(file): [] for file in some
        }


def test_every_file_loads_in_chromium_with_all_its_cues(
    built_site: Path, serve: Callable[[Path], str], page: Page
) -> None:
    page.goto(serve(built_site))  # any page of the site: a track is of its host
    page.evaluate("document.body.append(document.createElement('video'))")
    for file in tracks(built_site):
        read = read_vtt(file.name, "en", file.read_text("utf-8"))
        assert isinstance(read, CaptionFile)
        kind = "chapters" if file.name.startswith("chapters.") else "captions"
        source = "/" + file.relative_to(built_site).as_posix()
        assert page.evaluate(COUNT, {"kind": kind, "src": source}) == len(read.cues), source


def test_a_draft_is_valid_whatever_is_said(tmp_path: Path, validate: Validate) -> None:
    say = "Salt & pepper, 2 < 3 --> so.\n\nNOTE this. STYLE it! <b>WEBVTT</b> &amp; 00:01.000"
    text = GOOD.replace("Hello from Larkmead.", '"' + say.replace("\n", "\\n") + '"')
    draft = caption_draft(worked(tmp_path, text).lesson)
    assert isinstance(read_vtt("d.vtt", "en", draft), CaptionFile)
    assert [one["errors"] for one in validate([draft], "subtitles")] == [[]]


def test_the_npm_parser_finds_the_same_files_broken(validate: Validate) -> None:
    both = {name: text for name, (text, _) in BROKEN.items()}
    said = validate(list(both.values()), "subtitles")
    unseen = {name for name, one in zip(both, said, strict=True) if not one["errors"]}
    assert unseen <= STRICTER


def test_what_we_read_the_npm_parser_reads_too(validate: Validate) -> None:
    """Files with a few letters changed: where we find nothing, neither does it, and it counts the same cues."""
    changed = map(_changed, range(3000))
    texts = [text for text in changed if "&ap;" not in text]  # HTML's ≈: the npm list has six names
    ours = [read_vtt("a.vtt", "en", text) for text in texts]
    read = [(t, one) for t, one in zip(texts, ours, strict=True) if isinstance(one, CaptionFile)]
    assert 300 < len(read) < 2700  # both kinds are there in numbers
    said = validate([text for text, _ in read], "subtitles")
    differ = [
        (text, one["errors"], one["cues"])
        for (text, file), one in zip(read, said, strict=True)
        if one["errors"] or one["cues"] != len(file.cues)
    ]
    assert differ == []


WHOLE = """WEBVTT a

NOTE one

one
00:01.000 --> 00:02.000 align:start size:80%
<v Tilda>Salt &amp; <i>pepper</i>

00:02.000 --> 01:00:00.000 line:-1
Hello there
<c.loud>now</c>

2
01:00:00.000 --> 01:00:01.000
bye
"""
PARTS = (
    "",
    "",
    " ",
    "\n",
    "\n\n",
    "0",
    "9",
    ":",
    ".",
    ",",
    "-->",
    "-",
    ">",
    "<",
    "&",
    "<b>",
    "</i>",
    "%",
    "a",
    "NOTE",
    "STYLE",
    "\t",
)


def _changed(seed: int) -> str:
    chance = random.Random(seed)  # noqa: S311  # the same changes at every run
    text = WHOLE
    for _ in range(chance.randint(1, 2)):
        at = chance.randrange(len(text))
        text = text[:at] + chance.choice(PARTS) + text[at + chance.randint(0, 1) :]
    return text
