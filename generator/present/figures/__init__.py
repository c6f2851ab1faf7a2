"""Figures of moves, drawn from limb directions."""

from generator.present.figures.drawing import figure

__all__ = ["figure"]
