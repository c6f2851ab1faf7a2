"""How much energy a gram of food holds, and the published band that falls in."""

from __future__ import annotations

from enum import StrEnum
from fractions import Fraction


class DensityBand(StrEnum):
    """Energy density bands; they say nothing about drinks, which water makes look very low."""

    VERY_LOW = "very low"
    """Below 0.6 kcal/g."""
    LOW = "low"
    """0.6 to 1.5 kcal/g."""
    MEDIUM = "medium"
    """Above 1.5 to 4.0 kcal/g."""
    HIGH = "high"
    """Above 4.0 kcal/g; nothing eaten is above 9."""


def density(kcal: Fraction, grams: Fraction) -> Fraction:
    """Energy density in kcal/g, exact.

    Raises:
        ValueError: the weight is not above zero, or the energy is negative.
    """
    if grams <= 0 or kcal < 0:
        raise ValueError(f"{kcal} kcal in {grams} g is no energy density")
    return kcal / grams


def density_band(kcal_per_gram: Fraction) -> DensityBand:
    """The band of an energy density in kcal/g.

    The published bands touch; here 0.6 is low, 1.5 still low and 4.0 still medium.

    Source: Rolls BJ 2009, Physiol Behav 97:609-615 (first three cuts); the fourth band from
    memory of the CDC brief "Low-Energy-Dense Foods and Weight Management" (2008).
    """
    if kcal_per_gram < Fraction(6, 10):
        return DensityBand.VERY_LOW
    if kcal_per_gram <= Fraction(15, 10):
        return DensityBand.LOW
    return DensityBand.MEDIUM if kcal_per_gram <= 4 else DensityBand.HIGH
