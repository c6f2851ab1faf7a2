"""The stops as chapters: in order, without a hole, each named by its stop."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from pathlib import Path

from generator.compute.result import LessonResult
from generator.compute.timeline import HOLD
from generator.model.captions import CaptionFile
from generator.model.lesson import Video
from generator.present.recording.chapters import chapters_file, chapters_track
from generator.present.words.say import Say
from generator.read.vtt import read_vtt
from tests.project import GOOD, library, worked

SAY = Say(library().words["en"])


def filmed(folder: Path, text: str = GOOD) -> LessonResult:
    result = worked(folder, text)
    file = result.lesson.file.model_copy(update={"video": Video(file="v.mp4")})
    return replace(result, lesson=replace(result.lesson, file=file))


def test_a_chapter_leads_up_to_its_pause(tmp_path: Path) -> None:
    track = read_vtt("c.vtt", "en", chapters_track(filmed(tmp_path), SAY))
    assert isinstance(track, CaptionFile)
    assert [(cue.id, cue.start_ms, cue.end_ms) for cue in track.cues] == [
        ("hello-from-larkmead", 0, 20_000 + HOLD),  # the ask at the same moment takes no time
        ("breakfast", 20_000 + HOLD, 40_000 + HOLD),
        ("move-breakfast", 40_000 + HOLD, 80_000),
    ]
    assert all(one.end_ms == other.start_ms for one, other in pairwise(track.cues))


def test_a_title_is_one_line_with_its_signs_escaped(tmp_path: Path) -> None:
    text = GOOD.replace(
        "id: breakfast", 'id: breakfast\n      title: "Eggs & toast\\n1 < 2 --> so"'
    )
    track = chapters_track(filmed(tmp_path, text), SAY)
    assert "\nEggs &amp; toast 1 &lt; 2 --&gt; so\n" in track


def test_a_lesson_without_a_video_has_no_chapters(tmp_path: Path) -> None:
    assert chapters_file(worked(tmp_path, GOOD), SAY) == ""
    assert chapters_file(filmed(tmp_path), SAY) == "chapters.en.vtt"
