"""Whether captions can be read in the time they are given: rules, one in a file."""

from __future__ import annotations

from generator.check.captions.beyond_end import beyond_end
from generator.check.captions.foods_misspelled import foods_misspelled
from generator.check.captions.over_pause import over_pause
from generator.check.captions.overlap import overlap
from generator.check.captions.shape import shape
from generator.check.captions.silence import silence
from generator.check.captions.speed import speed
from generator.check.captions.standing import standing

CAPTION_RULES = (
    overlap,
    shape,
    standing,
    speed,
    over_pause,
    silence,
    beyond_end,
    foods_misspelled,
)
