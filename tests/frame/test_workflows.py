"""The workflows are sound, and the one in parts makes every share and joins them all."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
import yaml

FOLDER = Path(__file__).parents[2] / ".github/workflows"


def workflow(name: str) -> Any:
    return yaml.safe_load((FOLDER / name).read_text("utf-8"))


def steps(name: str) -> list[dict[str, Any]]:
    return [step for job in workflow(name)["jobs"].values() for step in job["steps"]]


@pytest.mark.parametrize("name", ["publish.yml", "publish-in-parts.yml"])
def test_every_action_is_pinned_to_one_version(name: str) -> None:
    used = [step["uses"] for step in steps(name) if "uses" in step]
    assert used
    assert all("@" in one and not one.endswith(("@main", "@master")) for one in used)


def test_both_use_the_same_version_of_the_same_action() -> None:
    used = {
        step["uses"]
        for name in ("publish.yml", "publish-in-parts.yml")
        for step in steps(name)
        if "uses" in step
    }
    actions = [one.partition("@")[0] for one in used]
    assert len(actions) == len(set(actions))


def test_every_share_is_made_once_and_all_are_joined() -> None:
    jobs = workflow("publish-in-parts.yml")["jobs"]
    shares = jobs["part"]["strategy"]["matrix"]["part"]
    assert shares == list(range(1, len(shares) + 1))
    runs = [step["run"] for step in jobs["part"]["steps"] if "run" in step]
    assert [run.partition(" #")[0] for run in runs] == [
        f"python3 generator build --part ${{{{ matrix.part }}}}/{len(shares)}"
    ]
    kept = next(step for step in jobs["part"]["steps"] if "upload-artifact" in step.get("uses", ""))
    assert kept["with"]["path"] == f"part-${{{{ matrix.part }}}}-of-{len(shares)}"
    assert jobs["publish"]["needs"] == "part"
    assert any(
        "generator join parts/part-*" in step.get("run", "") for step in jobs["publish"]["steps"]
    )


def test_only_the_job_that_publishes_may_publish() -> None:
    told = workflow("publish-in-parts.yml")
    assert told["permissions"] == {"contents": "read"}
    assert "permissions" not in told["jobs"]["part"]
