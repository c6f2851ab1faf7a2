"""A site published, or its last publication taken back, wherever it goes."""

from __future__ import annotations

from pathlib import Path
from urllib.parse import urlsplit

from generator.publish.by_copy import publish_by_copy
from generator.publish.by_git import publish_by_git
from generator.publish.git import Git
from generator.publish.going_out import Steps
from generator.publish.refused import NotPublishedError
from generator.publish.talk import Talk
from generator.publish.undo import undo
from generator.read.library import read_library


def publish(root: Path, steps: Steps, note: str, talk: Talk) -> None:
    """Publish a site where its ``site.yaml`` says.

    Args:
        root: its folder.
        steps: checks and builds.
        note: what she says of it, or nothing.
        talk: says what is done, and asks.

    Raises:
        NotPublishedError: it did not go out; the sentence says why, and what to do.
        LessonError: something must be put right before.
    """
    site = read_library(root).site
    _refuse_nobodys(site.address)
    if not site.address:
        talk.tell(
            "site_data/site.yaml has no `address:` yet, so no paper has a code that leads back here."
        )
    if site.publish:
        publish_by_copy(root, site.publish, steps, note, talk)
    else:
        publish_by_git(Git(root), steps, note, talk)


def take_back(root: Path, steps: Steps, note: str, talk: Talk) -> None:
    """Put the state of the publication before the last one back; arguments and errors as of ``publish``."""
    if read_library(root).site.publish:
        what = "this site goes to a folder or a server, and no commit of it is made that could be taken back"
        hint = (
            "put the files back as they were, by your git client or from a copy, and publish again"
        )
        raise NotPublishedError(what, hint)
    undo(Git(root), steps, note, talk)


def _refuse_nobodys(address: str) -> None:
    """Stop where every sheet would lead nowhere: ``.example`` is nobody's (RFC 2606, section 2)."""
    if (urlsplit(address).hostname or "").endswith(".example"):
        what = f"`address:` in site_data/site.yaml is {address}, where no site can stand, and every code on paper would lead there"
        hint = "write where yours will stand, or nothing until you know it; then publish again"
        raise NotPublishedError(what, hint)
