"""Figures of moves, drawn from limb directions."""

from generator.present.pictures.figures.drawing import figure, figures
from generator.present.pictures.figures.file import picture_files, picture_name

__all__ = ["figure", "figures", "picture_files", "picture_name"]
