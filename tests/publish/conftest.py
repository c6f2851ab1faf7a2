"""What tests of publishing are given: a small site in a repository, its remote beside it."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.publish.own_site import OwnSite, own_site


@pytest.fixture
def site(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> OwnSite:
    return own_site(tmp_path, monkeypatch)
