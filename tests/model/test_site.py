"""The programme's name may be said in each language of the site."""

from __future__ import annotations

import pytest

from generator.model.site import SiteFile


@pytest.mark.parametrize(
    ("language", "name"), [("es", "Cocina de Larkmead"), ("en", "Kitchen"), ("fr", "Kitchen")]
)
def test_a_page_has_the_name_in_its_language(language: str, name: str) -> None:
    site = SiteFile(programme="Kitchen", programme_in={"es": "Cocina de Larkmead"})
    assert site.name_in(language) == name
