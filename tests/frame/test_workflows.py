"""The workflows of both kinds of forge check, build and publish with no more rights than they need."""

from __future__ import annotations

import re
import subprocess
from pathlib import Path
from typing import Any

import pytest
import yaml

ROOT = Path(__file__).parents[2]
FOLDER = ROOT / ".github/workflows"
FORGES = ROOT / "generator/forges"
READY = {"publish.yml": FORGES / "github/publish.yml"}
"""What a site of her own is started with, beside the file of this repository that it is."""
NAMES = ["publish.yml", "publish-in-parts.yml"]
GITLAB = FORGES / "gitlab/.gitlab-ci.yml"
BY_COMMIT = re.compile(r"uses: [\w-]+/[\w-]+@[0-9a-f]{40} # v[0-9]+\.[0-9]+\.[0-9]+")
"""An action by its whole commit, as GitHub's guide to secure use asks, its tag in words behind it."""
Job = dict[str, Any]


def workflow(name: str) -> Any:
    told = yaml.safe_load((FOLDER / name).read_text("utf-8"))
    return told | {"on": told.pop(True)}  # YAML 1.1 reads `on` as yes


def jobs(name: str) -> dict[str, Job]:
    found: dict[str, Job] = workflow(name)["jobs"]
    assert found
    return found


def steps(name: str) -> list[Job]:
    return [step for job in jobs(name).values() for step in job["steps"]]


def runs(job: Job) -> list[str]:
    return [step["run"].partition(" #")[0] for step in job["steps"] if "run" in step]


def gitlab() -> Any:
    return yaml.safe_load(GITLAB.read_text("utf-8"))


@pytest.mark.parametrize("name", NAMES)
def test_every_action_is_named_by_its_commit(name: str) -> None:
    lines = [
        line.strip().removeprefix("- ")
        for line in (FOLDER / name).read_text("utf-8").splitlines()
        if "uses:" in line
    ]
    assert lines
    assert [line for line in lines if not BY_COMMIT.fullmatch(line)] == []


def test_both_use_the_same_version_of_the_same_action() -> None:
    used = {step["uses"] for name in NAMES for step in steps(name) if "uses" in step}
    actions = [one.partition("@")[0] for one in used]
    assert len(actions) == len(set(actions))


@pytest.mark.parametrize("name", NAMES)
def test_a_job_may_publish_or_run_what_is_in_the_repository_but_not_both(name: str) -> None:
    assert workflow(name)["permissions"] == {}
    for job in jobs(name).values():
        rights = job["permissions"]
        publishes = any("deploy-pages@" in step.get("uses", "") for step in job["steps"])
        if publishes:
            assert rights == {"pages": "write", "id-token": "write"}
            assert not runs(job)
            assert not [step for step in job["steps"] if "checkout@" in step.get("uses", "")]
        else:
            assert rights == {"contents": "read"}


@pytest.mark.parametrize("name", NAMES)
def test_a_checkout_leaves_no_key_behind_and_brings_the_videos(name: str) -> None:
    fetched = [step["with"] for step in steps(name) if "checkout@" in step.get("uses", "")]
    assert fetched
    for one in fetched:
        assert one | {"fetch-depth": 2} == {
            "lfs": True,
            "persist-credentials": False,
            "fetch-depth": 2,
        }


@pytest.mark.parametrize("name", NAMES)
def test_no_job_runs_without_end_or_beside_a_publication(name: str) -> None:
    assert all(0 < job["timeout-minutes"] <= 60 for job in jobs(name).values())
    assert workflow(name)["concurrency"] == {
        "group": "pages-${{ github.ref }}",
        "cancel-in-progress": False,
    }


@pytest.mark.parametrize("name", NAMES)
def test_nothing_secret_is_given_to_anybody(name: str) -> None:
    """``pull_request_target`` would run a stranger's lines with the repository's own rights."""
    text = (FOLDER / name).read_text("utf-8")
    assert "secrets." not in text
    assert "pull_request_target" not in text


def test_a_pull_request_is_checked_and_built_and_never_published() -> None:
    told = workflow("publish.yml")
    assert told["on"] == {
        "push": {"branches": ["main", "master"]},
        "pull_request": None,
        "workflow_dispatch": None,
    }
    build, deploy = told["jobs"]["build"], told["jobs"]["deploy"]
    assert "if" not in build
    assert runs(build)[:2] == ["python3 generator check", "python3 generator build --anew"]
    uploads = [step for step in build["steps"] if "upload-pages" in step.get("uses", "")]
    assert [step["if"] for step in uploads] == ["github.event_name != 'pull_request'"]
    assert deploy["needs"] == "build"
    assert deploy["if"].startswith("github.event_name != 'pull_request' && ")


@pytest.mark.parametrize("name", NAMES)
def test_only_the_branch_of_the_site_is_published(name: str) -> None:
    asked = jobs(name)["deploy"]["if"].split(" && ")
    assert "github.ref_name == github.event.repository.default_branch" in asked


def test_every_share_is_made_once_and_all_are_joined() -> None:
    found = jobs("publish-in-parts.yml")
    shares = found["part"]["strategy"]["matrix"]["part"]
    assert shares == list(range(1, len(shares) + 1))
    assert runs(found["part"]) == [
        f"python3 generator build --part ${{{{ matrix.part }}}}/{len(shares)}"
    ]
    kept = next(step for step in found["part"]["steps"] if "upload-art" in step.get("uses", ""))
    assert kept["with"]["path"] == f"part-${{{{ matrix.part }}}}-of-{len(shares)}"
    assert found["build"]["needs"] == "part"
    assert runs(found["build"]) == ["python3 generator join parts/part-*"]
    assert found["deploy"]["needs"] == "build"


def test_a_site_of_ones_own_gets_the_workflow_that_this_one_uses() -> None:
    for name, ready in READY.items():
        assert ready.read_bytes() == (FOLDER / name).read_bytes()


def test_the_other_forge_checks_every_request_and_publishes_its_branch_alone() -> None:
    told = gitlab()
    branch = {"if": "$CI_COMMIT_BRANCH == $CI_DEFAULT_BRANCH"}
    request = {"if": '$CI_PIPELINE_SOURCE == "merge_request_event"'}
    assert told["workflow"]["rules"] == [request, branch]
    assert "rules" not in told["build"]
    assert told["pages"]["rules"] == [branch]
    assert told["pages"]["needs"] == ["build"]
    check, build = runs(jobs("publish.yml")["build"])[:2]
    assert told["build"]["script"][:2] == [f"{check} --code-quality problems.json", build]


def test_the_other_forge_shows_mistakes_beside_their_lines_also_where_they_stop_it() -> None:
    kept = gitlab()["build"]["artifacts"]
    assert kept["reports"] == {"codequality": "problems.json"}
    assert kept["when"] == "always"


def test_the_other_forge_publishes_without_anything_of_the_repository() -> None:
    told = gitlab()
    assert told["pages"]["variables"] == {"GIT_STRATEGY": "none"}
    assert told["pages"]["script"] == ["mv site public"]
    assert told["pages"]["artifacts"]["paths"] == ["public"]
    assert told["build"]["artifacts"]["paths"] == ["site"]


def test_the_other_forge_has_limits_brings_videos_and_knows_no_secret() -> None:
    told = gitlab()
    for job in ("build", "pages"):
        minutes = re.fullmatch(r"([0-9]+) minutes", told[job]["timeout"])
        assert minutes
        assert int(minutes[1]) <= 60
    assert told["variables"]["GIT_LFS_SKIP_SMUDGE"] == "0"
    assert told["pages"]["resource_group"]
    named = set(re.findall(r"\$([A-Z_]+)", GITLAB.read_text("utf-8")))
    assert all(name.startswith("CI_") for name in named)
    assert not {name for name in named if re.search("TOKEN|PASSWORD|KEY|SECRET", name)}


def size_check() -> str:
    (text,) = [one for one in runs(jobs("publish.yml")["build"]) if "du -sm" in one]
    return text


def test_both_forges_ask_the_same_about_sizes() -> None:
    assert gitlab()["build"]["script"][2] == size_check()


@pytest.mark.parametrize(
    ("megabytes", "told"),
    [([1], ""), ([101], "Over 100 MB"), ([99] * 11, "a host of pages takes 1000")],
)
def test_a_site_too_large_for_its_host_is_told(
    tmp_path: Path, megabytes: list[int], told: str
) -> None:
    """1 GB a site and 100 MB a file, from memory; the files are holes and take no room."""
    (tmp_path / "site").mkdir()
    for number, size in enumerate(megabytes):
        with (tmp_path / f"site/{number}.mp4").open("wb") as file:
            file.truncate(size * 1024 * 1024)
    ran = subprocess.run(
        ["bash", "-e", "-c", size_check()],  # whichever bash there is
        cwd=tmp_path, capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert ran.returncode == bool(told)
    assert told in ran.stdout
