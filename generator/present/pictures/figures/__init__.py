"""Figures of moves, drawn from limb directions."""

from generator.present.pictures.figures.drawing import figure
from generator.present.pictures.figures.file import picture_file, picture_name

__all__ = ["figure", "picture_file", "picture_name"]
