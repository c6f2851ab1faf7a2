"""The test files that take longest, which begin first so that no core waits at the end of a run."""

from __future__ import annotations

from pathlib import Path

LONGEST = (
    "bench/test_benches.py",
    "fuzz/test_many_files.py",
    "engine/test_kills.py",
    "engine/test_edits.py",
    "site/test_every_text.py",
    "browser/test_pages.py",
    "browser/test_every_page.py",
    "browser/test_keep_lesson.py",
    "browser/test_a_class.py",
    "browser/test_last_sheets.py",
    "browser/test_preview_pages.py",
    "browser/test_pacer.py",
    "browser/test_pacer_window.py",
    "browser/test_finish_code.py",
    "browser/test_strained.py",
    "browser/test_deal.py",
    "browser/test_mirrored.py",
    "browser/test_gap_calculator.py",
    "cli/test_video.py",
    "browser/test_paper.py",
    "browser/test_pause_player.py",
    "browser/test_lesson_walk.py",
    "browser/test_player_around.py",
    "present/stops/test_made_up_kind.py",
    "site/test_first_hour.py",
    "cli/test_recording.py",
    "publish/test_remote.py",
    "cli/test_update.py",
    "publish/test_undo.py",
    "publish/test_workflow_runs.py",
    "publish/test_by_git.py",
    "browser/test_recording.py",
    "write/test_rehearsal.py",
    "cli/test_foods.py",
    "cli/test_commands.py",
    "bench/test_faults.py",
    "engine/test_parts.py",
    "plugin/test_settings.py",
    "plugin/test_links.py",
)
"""Longest first, from this folder; the rest follow in the order of their names. Seen by `pytest --durations=0`."""

_HERE = Path(__file__).parent


def place(file: Path) -> int:
    """Where a test file stands in the order."""
    name = file.relative_to(_HERE).as_posix() if file.is_relative_to(_HERE) else ""
    return LONGEST.index(name) if name in LONGEST else len(LONGEST)
