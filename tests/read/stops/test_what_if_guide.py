"""What the guide shows of a what-if stop can be copied into a lesson as it stands."""

from __future__ import annotations

import re
from pathlib import Path

from generator.compute.changed import WhatIf
from tests.pots_lesson import LESSON
from tests.project import ROOT, worked

GUIDE = (ROOT / "lessons/guide/what-if.md").read_text("utf-8")


def test_the_stop_of_the_guide(tmp_path: Path) -> None:
    (shown,) = re.findall(r"```yaml\n(.*?)```", GUIDE, re.DOTALL)
    head, _, rest = LESSON.partition("  - what_if:")
    timed = head.replace("measure: fiber", 'at: "1:00"\n      measure: fiber')
    result = worked(tmp_path, f"{timed}{shown}  - talk:{rest.partition('  - talk:')[2]}")
    (what_if,) = result.of(WhatIf).values()
    assert len(what_if.changes) == 3
    (named,) = re.findall(r"`(swap\.[\w.-]+)`", GUIDE)
    assert named in {figure.id for figure in result.figures}


def test_two_foods_in_the_place_of_one(tmp_path: Path) -> None:
    (both,) = re.findall(r"`(to: .*?, and: .*?\})`", GUIDE)
    text = LESSON.replace("to: {food: barley-cooked, amount: 1 cup}", both)
    (what_if,) = worked(tmp_path, text).of(WhatIf).values()
    assert [held.id for held in what_if.changes[0].new] == ["soup-chicken-broth", "water-tap"]
