"""The program as one file, a wheel: made from whatever runs now, and pinned with all its libraries by hash.

Format: PyPA specifications, binary distribution format; recorded installed projects.
"""

from __future__ import annotations

import hashlib
import subprocess
import sys
from base64 import urlsafe_b64encode
from collections.abc import Iterator
from importlib.metadata import PackageNotFoundError, distribution
from pathlib import Path
from zipfile import ZIP_DEFLATED, ZipFile, ZipInfo

from generator import __version__, carried
from generator.problems import LessonError, Place, Problem

FOLDER = "generator"
"""Of a site of somebody's own: the program, its lock and what sets both up."""
LOCK = f"{FOLDER}/requirements.lock"
SET_UP = f"{FOLDER}/__main__.py"
_OF_INSTALLER = {"INSTALLER", "REQUESTED", "RECORD", "direct_url.json"}
"""What whoever installs a wheel adds to it."""


def program_file(folder: Path) -> Path:
    """The running program as a wheel in a folder; returns the file.

    Raises:
        LessonError: it cannot be made.
    """
    return _packed(folder) if carried.IN_PACKAGE else built_from(Path(carried.HOME), folder)


def built_from(checkout: Path, folder: Path) -> Path:
    """The program in a checkout of its repository as a wheel in a folder; returns the file.

    Raises:
        LessonError: it cannot be made.
    """
    before = set(folder.glob("*.whl"))
    pip = (sys.executable, "-m", "pip", "wheel", "--quiet", "--disable-pip-version-check")
    alone = ("--no-deps", "--no-build-isolation", "--wheel-dir", str(folder))
    done = subprocess.run(
        [*pip, *alone, str(checkout)], check=False, capture_output=True, text=True
    )
    made = sorted(set(folder.glob("*.whl")) - before)
    if done.returncode or not made:
        said = done.stderr.strip().splitlines()
        what = "the program could not be made into one file" + (f": {said[-1]}" if said else "")
        hint = "set it up anew: delete the folder .venv and start `python3 generator` again"
        raise LessonError([Problem(Place(str(checkout)), what, hint)])
    return made[0]


def _packed(folder: Path) -> Path:
    """The installed program, put together again as it came."""
    file = folder / f"plumline-{__version__}-py3-none-any.whl"
    held = dict(sorted(_installed()))
    record = next(name for name in held if name.endswith("/METADATA")).replace("METADATA", "RECORD")
    lines = [f"{name},sha256={_sum(data)},{len(data)}" for name, data in held.items()]
    held[record] = "\n".join([*lines, f"{record},,", ""]).encode()
    with ZipFile(file, "w", ZIP_DEFLATED) as wheel:
        for name, data in held.items():
            wheel.writestr(
                ZipInfo(name), data, ZIP_DEFLATED
            )  # dated 1980: the same bytes every time
    return file


def _installed() -> Iterator[tuple[str, bytes]]:
    try:
        files = distribution("plumline").files or []
    except PackageNotFoundError:
        files = []
    for file in files:
        ours = file.parts[0] == FOLDER or file.parts[0].endswith(".dist-info")
        made = "__pycache__" in file.parts or file.name in _OF_INSTALLER
        if ours and not made:
            yield file.as_posix(), file.read_binary()


def _sum(data: bytes) -> str:
    """A checksum as a wheel's record writes it."""
    return urlsafe_b64encode(hashlib.sha256(data).digest()).rstrip(b"=").decode()


def pinned(lock: str, wheel: Path) -> str:
    """A lock file of every library, and of the program's own file beside it.

    Args:
        lock: of the libraries, exact versions with hashes.
        wheel: the program, which will lie in ``generator/``.
    """
    digest = hashlib.sha256(wheel.read_bytes()).hexdigest()
    head = (
        "# The program and every library it runs on, exact versions with hashes. "
        "`python3 generator update` writes a newer one.\n"
    )
    entries = "".join(line for line in lock.splitlines(keepends=True) if not line.startswith("#"))
    return f"{head}{entries.rstrip()}\n./{FOLDER}/{wheel.name} \\\n    --hash=sha256:{digest}\n"
