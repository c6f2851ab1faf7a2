"""Sets up Plumline on a machine that has only Python and git, then runs what was asked for."""

from __future__ import annotations

import sys

if __name__ == "__main__":
    del sys.path[0]  # this folder: its modules must not stand in for the standard library's
import hashlib
import os
import shutil
import subprocess
import sysconfig
from importlib.util import find_spec
from pathlib import Path

HERE = Path(__file__).resolve().parent
ROOT = HERE.parent
VENV = ROOT / ".venv"
OWN = (
    HERE / "requirements.lock"
).is_file()  # a site of somebody's own, the program here in one file
SITE = "generator/requirements.lock" if OWN else "requirements.lock"
TEST = "requirements-test.lock"  # holds all of the first
PYTEST = "pytest --numprocesses=auto --dist=loadfile"  # a file at a time, on every core
CHECKS = ("ruff check", "ruff format --check", "mypy", "lint-imports", PYTEST)
OURS = "" if OWN else "\n  test      run the tests of Plumline itself"
COMMANDS = f"""What to write after `python3 generator`:
  preview   show the site and follow every change
  check     look for mistakes in the lessons
  build     write the site into site/{OURS}
  --help    every other command"""


def main(words: list[str]) -> int:
    if sys.version_info < (3, 11):  # noqa: UP036 - a machine may well have an older one
        return say(f"Plumline needs Python 3.11 or newer, and this is {sys.version.split()[0]}.", 1)
    if not words:
        return say(COMMANDS)
    if words[0] != "test" or OWN:
        return install(SITE) or run(tool("plumline"), *words)
    return install(TEST) or run(tool("python"), "tests/chromium.py") or run_checks(words[1:])


def install(lock: str) -> int:
    """Make `.venv` hold what a lock file names. A stamp inside says which ones it holds."""
    stamp = VENV / "plumline-stamp.txt"
    works = all(shutil.which(tool(name)) for name in ("plumline", "python"))
    held = stamp.read_text("utf-8") if stamp.exists() and works else ""
    if mark(lock) in held:
        return 0
    growing = mark(SITE) in held
    stamp.unlink(missing_ok=True)  # until the end is reached, nothing in there counts as good
    say(f"Installing what {lock} names into {VENV}: a minute or two, this once.")
    if not growing and make_venv():
        return 1
    pip = (tool("python"), "-m", "pip", "install", "--quiet", "--no-input")
    itself = ("--no-deps", "--no-build-isolation", "--editable", ".")
    if run(*pip, "--require-hashes", "-r", lock) or (not OWN and run(*pip, *itself)):
        if growing:
            stamp.write_text(held, encoding="utf-8")  # what was there before still serves
        return say("That failed, see above. Is the internet reachable? Then try once more.", 1)
    stamp.write_text(" ".join({mark(SITE), mark(lock)}), encoding="utf-8")
    return 0


def mark(lock: str) -> str:
    """All that an installation depends on, as one word: where any of it changes, it is remade."""
    package = b"" if OWN else (ROOT / "pyproject.toml").read_bytes().partition(b"[tool.")[0]
    place = f"{VENV} {sysconfig.get_python_version()}".encode()
    return hashlib.sha256(place + package + (ROOT / lock).read_bytes()).hexdigest()


def make_venv() -> int:
    if not find_spec("ensurepip"):
        return say("This Python has no ensurepip. Debian, Ubuntu: apt install python3-venv", 1)
    failed = run(sys.executable, "-m", "venv", "--clear", str(VENV))
    return failed and say("The folder could not be made, see above.", 1)


def run_checks(words: list[str]) -> int:
    if words:
        return run(tool("pytest"), *words)
    failed = [line for line in CHECKS if run(tool(line.split()[0]), *line.split()[1:])]
    return say(f"Failed: {', '.join(failed)}.", 1) if failed else 0


def tool(name: str) -> str:
    folder = Path(sysconfig.get_path("scripts", "venv", {"base": str(VENV)}))
    return shutil.which(name, path=folder) or str(folder / name)


def run(*command: str) -> int:
    return subprocess.run(command, check=False, cwd=ROOT).returncode


def say(text: str, code: int = 0) -> int:
    print(text, flush=True)
    return code


if __name__ == "__main__":
    os.environ.setdefault("PLUMLINE_FROM", str(Path.cwd()))  # where paths that were typed begin
    try:
        sys.exit(main(sys.argv[1:]))
    except KeyboardInterrupt:
        sys.exit(130)
