"""The set-up file installs once, notices what changed, and never trusts a half-made `.venv`."""

from __future__ import annotations

import ast
import shutil
import subprocess
import sys
import sysconfig
from collections.abc import Callable
from pathlib import Path
from typing import NamedTuple

import pytest

from generator import __main__ as setup

ROOT = Path(setup.__file__).parent.parent
SITE, TEST = "requirements.lock", "requirements-test.lock"


class Machine(NamedTuple):
    """A project in a folder of its own, where programs are only noted and not run."""

    root: Path
    ran: list[tuple[str, ...]]
    broken: set[str]

    def said(self) -> list[str]:
        """What was run, told by the words that matter."""
        return [self._told(command) for command in self.ran]

    def _told(self, command: tuple[str, ...]) -> str:
        words = {"venv": "venv", SITE: "site", TEST: "test", "--editable": "itself"}
        return next((words[word] for word in command if word in words), Path(command[0]).stem)


@pytest.fixture
def machine(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Machine:
    for name in ("pyproject.toml", SITE, TEST):
        shutil.copy(ROOT / name, tmp_path)
    here = Machine(tmp_path, [], set())

    def run(*command: str) -> int:
        here.ran.append(command)
        what = here.said()[-1]
        if what in here.broken:
            return 3
        if what == "venv":
            make_scripts(tmp_path / ".venv")
        return 0

    monkeypatch.setattr(setup, "ROOT", tmp_path)
    monkeypatch.setattr(setup, "VENV", tmp_path / ".venv")
    monkeypatch.setattr(setup, "run", run)
    return here


def make_scripts(venv: Path) -> None:
    shutil.rmtree(venv, ignore_errors=True)
    folder = Path(sysconfig.get_path("scripts", "venv", {"base": str(venv)}))
    folder.mkdir(parents=True)
    for name in ("python", "plumline"):
        (folder / name).touch(mode=0o755)


def test_a_fresh_machine_installs_then_runs(machine: Machine) -> None:
    assert setup.main(["build"]) == 0
    assert machine.said() == ["venv", "site", "itself", "plumline"]
    assert machine.ran[-1][1:] == ("build",)


def test_a_second_run_installs_nothing(machine: Machine) -> None:
    setup.main(["build"])
    machine.ran.clear()
    setup.main(["preview", "--port", "8001"])
    assert machine.said() == ["plumline"]
    assert machine.ran[0][1:] == ("preview", "--port", "8001")


def test_tests_add_to_what_is_there_and_serve_the_site_too(machine: Machine) -> None:
    setup.install(SITE)
    machine.ran.clear()
    setup.install(TEST)
    assert machine.said() == ["test", "itself"]
    machine.ran.clear()
    setup.install(SITE)
    assert machine.said() == []


def touch_lock(machine: Machine) -> None:
    (machine.root / SITE).write_text("click==8.5.1\n", encoding="utf-8")


def touch_package(machine: Machine) -> None:
    file = machine.root / "pyproject.toml"
    file.write_text(file.read_text().replace('plumline = "', 'other = "', 1), encoding="utf-8")


def lose_stamp(machine: Machine) -> None:
    (machine.root / ".venv" / "plumline-stamp.txt").unlink()


def lose_scripts(machine: Machine) -> None:
    shutil.rmtree(sysconfig.get_path("scripts", "venv", {"base": str(machine.root / ".venv")}))


@pytest.mark.parametrize("change", [touch_lock, touch_package, lose_stamp, lose_scripts])
def test_a_changed_or_broken_venv_is_made_anew(
    machine: Machine, change: Callable[[Machine], None]
) -> None:
    setup.install(SITE)
    change(machine)
    machine.ran.clear()
    assert setup.install(SITE) == 0
    assert machine.said() == ["venv", "site", "itself"]


def test_settings_of_tools_do_not_ask_for_a_new_venv(machine: Machine) -> None:
    setup.install(SITE)
    with (machine.root / "pyproject.toml").open("a", encoding="utf-8") as file:
        file.write("\n[tool.other]\n")
    machine.ran.clear()
    setup.install(SITE)
    assert machine.said() == []


@pytest.mark.parametrize("step", ["venv", "site", "itself"])
def test_a_failed_step_says_so_and_leaves_nothing_that_counts_as_good(
    machine: Machine, step: str, capsys: pytest.CaptureFixture[str]
) -> None:
    machine.broken.add(step)
    assert setup.main(["build"]) == 1
    assert "see above" in capsys.readouterr().out
    assert "plumline" not in machine.said()
    machine.broken.clear()
    machine.ran.clear()
    setup.main(["build"])
    assert machine.said() == ["venv", "site", "itself", "plumline"]


def test_a_failed_addition_keeps_what_was_there(machine: Machine) -> None:
    setup.install(SITE)
    machine.broken.add("test")
    assert setup.main(["test"]) == 1
    machine.ran.clear()
    setup.main(["build"])
    assert machine.said() == ["plumline"]


def test_a_python_without_ensurepip_says_what_to_install(
    machine: Machine, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Debian leaves ensurepip out; its package python3-venv brings it."""
    monkeypatch.setattr(setup, "find_spec", lambda _: None)
    assert setup.main(["build"]) == 1
    assert "apt install python3-venv" in capsys.readouterr().out
    assert machine.ran == []


def test_an_old_python_is_told_which_one_is_needed(
    machine: Machine, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(sys, "version_info", (3, 10, 13))
    assert setup.main(["build"]) == 1
    assert "needs Python 3.11 or newer" in capsys.readouterr().out
    assert machine.ran == []


def test_the_exit_code_of_a_command_is_passed_on(machine: Machine) -> None:
    machine.broken.add("plumline")
    assert setup.main(["check"]) == 3


def test_tests_run_every_check_even_after_one_failed_and_pytest_last(
    machine: Machine, capsys: pytest.CaptureFixture[str]
) -> None:
    machine.broken.add("mypy")
    assert setup.main(["test"]) == 1
    ran = machine.ran[machine.said().index("itself") + 1 :]
    told = [" ".join((Path(command[0]).name, *command[1:])) for command in ran]
    checks = ["ruff check", "ruff format --check", "mypy", "lint-imports", setup.PYTEST]
    assert told == ["python tests/chromium.py", *checks]
    assert capsys.readouterr().out.endswith("Failed: mypy.\n")


def test_words_after_test_go_to_pytest_alone(machine: Machine) -> None:
    setup.main(["test", "-k", "gap"])
    assert machine.ran[-1][1:] == ("-k", "gap")
    assert machine.said()[-2:] == ["python", "pytest"]


@pytest.mark.parametrize(("scheme", "folder"), [("nt_venv", "Scripts"), ("posix_venv", "bin")])
def test_programs_are_found_where_each_system_puts_them(
    machine: Machine, monkeypatch: pytest.MonkeyPatch, scheme: str, folder: str
) -> None:
    """Folder names from the standard library's venv page, "How venvs work"."""
    ask = sysconfig.get_path
    monkeypatch.setattr(sysconfig, "get_path", lambda name, _, places: ask(name, scheme, places))
    assert Path(setup.tool("pytest")) == machine.root / ".venv" / folder / "pytest"


def test_alone_it_lists_its_commands_and_installs_nothing() -> None:
    """Started as an educator does: a folder given to Python, from the top of the project."""
    result = subprocess.run(
        [sys.executable, "generator"], cwd=ROOT, capture_output=True, text=True, check=True
    )
    assert result.stderr == ""
    for word in ("preview", "check", "build", "test"):
        assert f"\n  {word} " in result.stdout


def test_it_needs_only_the_standard_library_and_few_lines() -> None:
    source = Path(setup.__file__).read_text(encoding="utf-8")
    assert len(source.splitlines()) < 120
    imported = {
        name.partition(".")[0] for node in ast.walk(ast.parse(source)) for name in _imported(node)
    }
    assert imported <= sys.stdlib_module_names


def _imported(node: ast.AST) -> list[str]:
    match node:
        case ast.Import():
            return [alias.name for alias in node.names]
        case ast.ImportFrom():
            return [node.module or "."]
        case _:
            return []


def pins(lock: str) -> dict[str, str]:
    lines = (ROOT / lock).read_text(encoding="utf-8").splitlines()
    pinned = [line.removesuffix(" \\") for line in lines if "==" in line and line[0].isalnum()]
    return {name: version for name, _, version in (pin.partition("==") for pin in pinned)}


def test_the_test_lock_holds_all_of_the_site_lock() -> None:
    assert pins(SITE).items() <= pins(TEST).items()
    assert {"mkdocs", "pydantic", "hatchling"} <= pins(SITE).keys()
    assert {"pytest", "imageio-ffmpeg"} <= pins(TEST).keys() - pins(SITE).keys()


@pytest.mark.parametrize("lock", [SITE, TEST])
def test_a_lock_has_a_hash_for_every_package_and_no_index_address(lock: str) -> None:
    text = (ROOT / lock).read_text(encoding="utf-8")
    entries = text.split("\n")
    for number, line in enumerate(entries):
        if "==" in line:
            assert entries[number + 1].startswith("    --hash=sha256:")
    settings = [line for line in entries if line.startswith("-") or "://" in line.split("#")[0]]
    assert settings == []
