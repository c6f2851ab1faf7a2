"""Whether anything will build the site once it is pushed, where it will appear, and the workflow that does it."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from generator.publish.git import Git
from generator.publish.talk import Talk
from generator.write.whole import write_whole

_FORGES = Path(__file__).parents[1] / "forges"
_LOCK = "requirements.lock"
_WORKFLOWS = ".github/workflows"


@dataclass(frozen=True, slots=True)
class _Ready:
    """A workflow that the program brings along."""

    host: str
    """What addresses of such a forge hold."""
    file: str
    place: str
    """Where it belongs, from the repository's top."""


_GITHUB = _Ready("github", "github/publish.yml", f"{_WORKFLOWS}/publish.yml")
_READY = (_GITHUB, _Ready("gitlab", "gitlab/.gitlab-ci.yml", ".gitlab-ci.yml"))


def offer_workflow(git: Git, talk: Talk) -> None:
    """Put a ready workflow into a repository that has none, where its forge is known and she says yes."""
    if _has_workflow(git) or git.told("rev-parse", "--show-prefix").strip():
        return
    ready = next((one for one in _READY if one.host in git.says("remote", "--verbose")), None)
    if ready is None:
        return
    talk.tell("Nothing would build the site once it is pushed: this repository has no workflow.")
    if talk.ask(f"Put the ready one at {ready.place}?"):
        file = git.root / ready.place
        file.parent.mkdir(parents=True, exist_ok=True)
        write_whole(file, _text(ready, git.root), newline="\n")


def will_appear(git: Git, address: str) -> str:
    """Where a pushed site will be seen, or why nothing will build it yet.

    Args:
        git: in the folder of the site.
        address: that of ``site_data/site.yaml``; nothing where it is empty.
    """
    if not _has_workflow(git):
        return (
            "Nothing will build it there yet: this repository has no workflow. The program brings two, "
            f"in {_FORGES}: put github/publish.yml at {_GITHUB.place}, or gitlab/.gitlab-ci.yml at "
            "its top, and publish again. For another kind of forge write one that runs the same lines."
        )
    where = (
        f"at {address}" if address else "where your forge says (`address:` in site_data/site.yaml)"
    )
    return f"Your forge checks and builds it now, and it appears {where} in a few minutes. Nothing waits for that here."


def _has_workflow(git: Git) -> bool:
    top = Path(git.told("rev-parse", "--show-toplevel"))
    folder = top / _WORKFLOWS
    return (top / ".gitlab-ci.yml").is_file() or any(
        one.suffix in {".yml", ".yaml"} for one in (folder.iterdir() if folder.is_dir() else ())
    )


def _text(ready: _Ready, root: Path) -> str:
    """As ``start`` writes it: in a site of somebody's own the lock lies beside the program."""
    own = f"generator/{_LOCK}"
    text = (_FORGES / ready.file).read_text("utf-8")
    return text.replace(_LOCK, own) if (root / own).is_file() else text
