"""Whether anything will build the site once it is pushed, and where it will appear."""

from __future__ import annotations

from pathlib import Path

from generator.publish.git import Git

_GITHUB = ".github/workflows"
_GITLAB = ".gitlab-ci.yml"
_READY = "generator/forges"


def will_appear(git: Git, address: str) -> str:
    """Where a pushed site will be seen, or why nothing will build it yet.

    Args:
        git: in the folder of the site.
        address: that of ``site_data/site.yaml``; nothing where it is empty.
    """
    top = Path(git.told("rev-parse", "--show-toplevel"))
    if not _has_workflow(top):
        return _none_yet(git)
    where = (
        f"at {address}"
        if address
        else "where your forge says (its address belongs into site_data/site.yaml)"
    )
    return f"Your forge checks and builds it now, and it appears {where} in a few minutes. Nothing waits for that here."


def _has_workflow(top: Path) -> bool:
    folder = top / _GITHUB
    return (top / _GITLAB).is_file() or any(folder.glob("*.yml")) or any(folder.glob("*.yaml"))


def _none_yet(git: Git) -> str:
    """Which ready workflow belongs there, by the name of the remote's host."""
    urls = git.says("remote", "--verbose")
    one, place = ("gitlab/.gitlab-ci.yml", _GITLAB)
    if "gitlab" not in urls:
        one, place = "github/publish.yml", f"{_GITHUB}/publish.yml"
    return (
        f"Nothing will build it there yet: this repository has no workflow. Put {_READY}/{one} "
        f"of the program at {place} and publish again; the guide's page on publishing says how."
    )
