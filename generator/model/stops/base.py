"""What every stop of a lesson has, whatever its kind."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field, StringConstraints

from generator.model.base import Frozen

Text = Annotated[str, StringConstraints(strip_whitespace=True, min_length=1)]
"""Words an educator wrote; never markup of the page."""

StopId = Annotated[str, StringConstraints(pattern=r"^[a-z][a-z0-9]*(-[a-z0-9]+)*$", max_length=40)]
"""The stop's address on the page, and the name other stops call it by."""


class BaseStop(Frozen):
    """The common part of a stop."""

    id: Annotated[
        StopId | None,
        Field(description="Address of the stop; without one it is its kind and number."),
    ] = None
    title: Text | None = None
    """Heading, where the kind's own word does not serve."""
    say: Text | None = None
    """Script the educator reads at this stop."""
