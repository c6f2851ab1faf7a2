"""What a phone in the same room needs to find the preview."""

from __future__ import annotations

from generator.present.pictures.qr import qr_in_blocks

__all__ = ["qr_in_blocks"]
