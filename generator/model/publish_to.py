"""Where a site goes that no forge builds: a folder, or a server of the educator's own."""

from __future__ import annotations

from typing import Annotated, Self

from pydantic import Field, model_validator

from generator.model.base import Frozen

_SERVER = (
    r"^([A-Za-z0-9_][A-Za-z0-9_.-]*@)?[A-Za-z0-9][A-Za-z0-9.-]*:[A-Za-z0-9_/.~-]*[A-Za-z0-9_-]/?$"
)
"""Letters, digits and ``_ . - / ~``: a server's shell makes something else of most other signs."""


class PublishTo(Frozen):
    """What stands under ``publish:`` of ``site.yaml``."""

    folder: Annotated[str, Field(min_length=1, max_length=1000)] = ""
    """A folder of this machine, told from the site's own where it does not begin at the root."""
    server: Annotated[str, Field(pattern=_SERVER, max_length=300)] = ""
    """A folder of a server that is reached by ssh: ``user@host:/path``."""

    @model_validator(mode="after")
    def _one(self) -> Self:
        if bool(self.folder) == bool(self.server):
            what = "names no place, or two: write `folder:` or `server:`, one of them"
            raise ValueError(what)
        return self
