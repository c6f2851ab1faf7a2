"""A site kept by git, in a moment."""

from __future__ import annotations

import subprocess
from pathlib import Path

WHO = ("-c", "user.name=Ana", "-c", "user.email=ana@larkmead.example", "-c", "commit.gpgsign=false")


def git(root: Path, *words: str) -> str:
    """What git says."""
    done = subprocess.run(
        ["git", *WHO, *words], cwd=root, check=True, capture_output=True, encoding="utf-8"
    )
    return done.stdout.strip()


def begun(root: Path) -> Path:
    """A repository without a commit; what is built stays out of it."""
    git(root, "init", "--quiet", "--initial-branch=main")
    (root / ".gitignore").write_text("site/\n.cache/\n__pycache__/\n", "utf-8")
    return root


def commit(root: Path, says: str) -> str:
    """Everything as it is, committed."""
    git(root, "add", "--all")
    git(root, "commit", "--quiet", "--allow-empty", "-m", says)
    return git(root, "rev-parse", "HEAD")
