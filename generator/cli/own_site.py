"""The commands ``start`` and ``update``: a site of somebody's own begun, and moved to a newer program."""

from __future__ import annotations

import shlex
import subprocess
import sys
from pathlib import Path

import click

from generator.author import update as updating
from generator.author.reference_files import renew_schema
from generator.author.rewriting import carry_over
from generator.author.start import Answers, Forge, refuse, start, wrong_answers
from generator.author.starter_pages import write_guide
from generator.cli.here import TypedPath, here
from generator.cli.options import root_option

_QUESTIONS = {
    "name": "Name of your program, school or kitchen",
    "address": "Address of the published site, ending in a slash (leave it empty until you know it)",
    "languages": "Languages, the lessons' own first",
    "publish": "Where it will be published: github, gitlab, or server for any web server",
    "lesson": "Title of the first lesson",
}
_USUAL = {"address": "", "languages": "en"}


def _asked(context: click.Context, parameter: click.Parameter, said: str | None) -> str:
    """An answer as it was given, or asked for now."""
    name = str(parameter.name)
    kind = click.Choice([forge.value for forge in Forge]) if name == "publish" else click.STRING
    if said is not None:
        return str(kind.convert(said, parameter, context))
    try:
        answer: str = click.prompt(
            _QUESTIONS[name],
            default=_USUAL.get(name),
            type=kind,
            show_default=bool(_USUAL.get(name)),
        )
    except click.Abort:
        if sys.stdin.isatty():
            raise
        what = f"nobody is here to answer; say --{name} as well"
        raise click.UsageError(what, context) from None
    return answer


def _question(name: str) -> click.Option:
    return click.Option([f"--{name}"], callback=_asked, help=_QUESTIONS[name])


def _empty(_: click.Context, __: click.Parameter, folder: Path) -> Path:
    """Refuse a folder before anything is asked."""
    refuse(folder)
    return folder


@click.command(name="start")
@click.argument("folder", type=TypedPath(), is_eager=True, callback=_empty)
def start_command(folder: Path, **said: str) -> None:
    """Begin a site of your own in FOLDER: five questions, each also an option."""
    address = said["address"].strip().rstrip("/")
    answers = Answers(
        programme=said["name"].strip(),
        address=f"{address}/" if address else "",
        languages=tuple(dict.fromkeys(said["languages"].replace(",", " ").split())),
        forge=Forge(said["publish"]),
        lesson=said["lesson"],
    )
    if wrong := " ".join(wrong_answers(answers)):
        raise click.UsageError(wrong)
    start(folder, answers)
    place = folder.resolve()
    click.echo(f"{place} holds your site now.")
    if answers.languages[0].partition("-")[0] != "en":
        click.echo("The example in the first lesson is in English: put its words into your own.")
    click.echo(_in_git(folder))
    go = "" if place == here().resolve() else f"\n  cd {shlex.quote(str(place))}"
    click.echo(f"Look at it:{go}\n  python3 generator preview")


start_command.params += [_question(name) for name in _QUESTIONS]


def _in_git(folder: Path) -> str:
    """Put a new site under git; what became of it, in a sentence."""
    add = 'git add -A && git commit -m "Begin the site"'
    try:
        _git(folder, "init", "--quiet", "--initial-branch=main")
        if not all(_git(folder, "config", key) for key in ("user.name", "user.email")):
            return (
                "It is a git repository. git does not know you yet, so tell it, once:\n"
                '  git config --global user.name "Your name"\n'
                '  git config --global user.email "you@example.org"\n'
                f"and then, in the folder: {add}"
            )
        if _git(folder, "add", "-A") and _git(folder, "commit", "--quiet", "-m", "Begin the site"):
            return "It is a git repository, and all of it is committed."
    except FileNotFoundError:
        return f"git is not on this machine. When it is, in the folder: git init && {add}"
    return f"It is no git repository yet. In the folder: git init && {add}"


def _git(folder: Path, *words: str) -> bool:
    """Whether git did what it was asked."""
    return not subprocess.run(
        ["git", *words], cwd=folder, check=False, capture_output=True
    ).returncode


@click.command(name="update")
@click.argument("newer", required=False, type=TypedPath(exists=True))
@click.option("--back", is_flag=True, help="Take the program of before again.")
@root_option
def update_command(newer: Path | None, root: Path, *, back: bool) -> None:
    """Move your site to the NEWER program, once that has checked and built it, or --back.

    NEWER is the file of a release, or a folder with the program's repository. What changes is said first.
    """
    if back == bool(newer):
        what = "say which program to move to, a file plumline-….whl or a folder, or --back"
        raise click.UsageError(what)
    if newer:
        updating.update(root, newer, click.echo)
    else:
        updating.go_back(root, click.echo)
    click.echo(
        'Look at it: python3 generator preview\nKeep it: git add -A && git commit -m "Update"'
    )
    if newer:
        click.echo("Not what you want? python3 generator update --back")


@click.command(name="carry-over")
@click.option("--since", required=True, help="Version of the program that wrote the files.")
@root_option
def carry_over_command(since: str, root: Path) -> None:
    """Bring what an older program wrote into today's shape; `update` does it by itself.

    Comments stay where they are; the guide is written anew.
    """
    for path in carry_over(root, since):
        click.echo(f"{path} is in its new shape.")
    write_guide(root)
    renew_schema(root)
