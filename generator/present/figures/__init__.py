"""Figures of moves, drawn from limb directions."""

from generator.present.figures.drawing import figure
from generator.present.figures.file import picture_file, picture_name

__all__ = ["figure", "picture_file", "picture_name"]
