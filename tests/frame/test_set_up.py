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


def lose_python(machine: Machine) -> None:
    """As where the system took its Python away: what `.venv` has leads nowhere."""
    file = Path(setup.tool("python"))
    file.unlink()
    file.symlink_to(machine.root / "gone")


@pytest.mark.parametrize(
    "change", [touch_lock, touch_package, lose_stamp, lose_scripts, lose_python]
)
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


@pytest.fixture
def own(machine: Machine, monkeypatch: pytest.MonkeyPatch) -> Machine:
    """A site of somebody's own, with the program in one file beside its lock."""
    for name in ("pyproject.toml", SITE, TEST):
        (machine.root / name).unlink()
    lock = "generator/requirements.lock"
    (machine.root / "generator").mkdir()
    (machine.root / lock).write_text("./generator/plumline-9-py3-none-any.whl\n", "utf-8")
    monkeypatch.setattr(setup, "OWN", True)
    monkeypatch.setattr(setup, "SITE", lock)
    return machine


def test_a_site_of_ones_own_installs_its_lock_and_nothing_else(own: Machine) -> None:
    assert setup.main(["build"]) == 0
    venv, install, build = own.ran
    assert "venv" in venv
    assert install[-3:] == ("--require-hashes", "-r", "generator/requirements.lock")
    assert build[1:] == ("build",)
    own.ran.clear()
    assert setup.main(["build"]) == 0
    assert own.said() == ["plumline"]


def test_an_updated_program_is_installed_anew(own: Machine) -> None:
    setup.main(["build"])
    (own.root / setup.SITE).write_text("./generator/plumline-10-py3-none-any.whl\n", "utf-8")
    own.ran.clear()
    setup.main(["build"])
    assert len(own.ran) == 3


def test_a_site_of_ones_own_has_no_tests_of_the_program(own: Machine, tmp_path: Path) -> None:
    setup.main(["test"])
    assert own.ran[-1][1:] == ("test",), "the program says that there is no such command"
    copy = tmp_path / "site/generator"
    copy.mkdir(parents=True)
    shutil.copy(ROOT / "generator/__main__.py", copy)
    (copy / "requirements.lock").touch()
    said = subprocess.run(
        [sys.executable, "generator"], cwd=copy.parent, capture_output=True, text=True, check=True
    )
    assert "\n  build " in said.stdout
    assert "test" not in said.stdout


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


@pytest.fixture(params=["windows", "macos"])
def other_system(
    request: pytest.FixtureRequest, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> Path:
    """A machine of another make, in a folder as people name them; gives where its programs lie.

    Where each puts programs: the standard library's venv page, "How venvs work"; that Windows finds
    `plumline.exe` by `plumline` and the endings in PATHEXT: that of `shutil.which`. Both from memory.
    """
    ask, find = sysconfig.get_path, shutil.which
    windows = request.param == "windows"
    scheme, ending = ("nt_venv", ".exe") if windows else ("posix_venv", "")
    root = tmp_path / ("Users/Zoë O'Hara/My Documents" if windows else "Zoë/Mobile Documents")
    root.mkdir(parents=True)
    for name in ("pyproject.toml", "requirements.lock", TEST):
        shutil.copy(ROOT / name, root)

    def which(name: str, path: str | None = None) -> str | None:
        return find(name if name.endswith(ending) else name + ending, path=path)

    monkeypatch.setattr(sysconfig, "get_path", lambda name, _, places: ask(name, scheme, places))
    monkeypatch.setattr(shutil, "which", which)
    monkeypatch.setattr(setup, "ROOT", root)
    monkeypatch.setattr(setup, "VENV", root / ".venv")
    return root / ".venv" / ("Scripts" if windows else "bin")


def test_another_system_installs_once_and_runs_its_own_programs(
    other_system: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    ran: list[tuple[str, ...]] = []

    def run(*command: str) -> int:
        ran.append(command)
        if "venv" in command:
            other_system.mkdir(parents=True)
            for name in ("python", "plumline", "pytest"):
                ending = ".exe" if other_system.name == "Scripts" else ""
                (other_system / f"{name}{ending}").touch(mode=0o755)
        return 0

    monkeypatch.setattr(setup, "run", run)
    assert setup.main(["build", "--anew"]) == 0
    made, site, itself, build = ran
    assert made == (sys.executable, "-m", "venv", "--clear", str(other_system.parent))
    assert {Path(command[0]) for command in (site, itself)} == {Path(setup.tool("python"))}
    assert Path(build[0]).parent == other_system
    assert Path(build[0]).is_file()
    assert (Path(build[0]).stem, *build[1:]) == ("plumline", "build", "--anew")
    ran.clear()
    assert setup.main(["check"]) == 0
    assert ran == [(build[0], "check")], "it is installed already"
    ran.clear()
    setup.run_checks(["-k", "gap"])
    assert Path(ran[0][0]).is_file()


def _pythons() -> list[object]:
    """Every Python that the program promises to run on; those that are not here are skipped, and say so."""
    return [
        pytest.param(
            found or name,
            id=name,
            marks=() if found else pytest.mark.skip(reason=f"there is no {name} on this machine"),
        )
        for name in ("python3.11", "python3.12", "python3.13", "python3.14")
        for found in [_found(name)]
    ]


def _found(name: str) -> str | None:
    """A Python of this version that starts; what merely has its name may lead nowhere."""
    versions = Path.home() / ".pyenv/versions"
    beside = [
        str(one) for one in sorted(versions.glob(f"{name.removeprefix('python')}.*/bin/{name}"))
    ]
    for program in filter(None, [shutil.which(name), *beside]):
        asked = [program, "-c", "import sys; print('python%d.%d' % sys.version_info[:2])"]
        done = subprocess.run(asked, capture_output=True, text=True, check=False)
        if done.stdout.strip() == name:
            return program
    return None


@pytest.mark.parametrize("python", _pythons())
def test_the_set_up_file_and_all_of_the_program_can_be_read_by(python: str) -> None:
    """Whatever Python she has, the first word she types is answered, and no file is new syntax to it."""
    said = subprocess.run(
        [python, "-W", "error", str(ROOT / "generator")],
        capture_output=True,
        text=True,
        check=False,
    )
    assert (said.returncode, said.stderr) == (0, "")
    assert said.stdout.startswith("What to write after `python3 generator`:")
    reads = (
        "import ast, pathlib, sys; [ast.parse(f.read_text('utf-8'), str(f), feature_version=sys.version_info[:2])"
        f" for f in pathlib.Path({str(ROOT / 'generator')!r}).rglob('*.py')]"
    )
    done = subprocess.run(
        [python, "-W", "error", "-c", reads], capture_output=True, text=True, check=False
    )
    assert (done.returncode, done.stderr) == (0, "")
