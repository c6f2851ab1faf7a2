"""The two versions of Common Cartridge that are made, with the names each has for the same things.

Source: the schemas of 1EdTech, ``ccv1p1_imscp_v1p2_v1p0.xsd`` and ``ccv1p3_imscp_v1p2_v1p0.xsd``. A
platform that reads the one may refuse the other, so both are there.
"""

from __future__ import annotations

from enum import Enum

QTI = "http://www.imsglobal.org/xsd/ims_qtiasiv1p2"
"""Of questions, in both versions: that of 1.1, IMS QTI 1.2.1 as the cartridge has it."""


class Version(Enum):
    """A version, as a file's name says it."""

    V1_1 = "1.1"
    V1_3 = "1.3"

    @property
    def _short(self) -> str:
        """``v1p1``, as it stands in every name."""
        return "v" + self.value.replace(".", "p")

    @property
    def schema(self) -> str:
        """What the manifest says it is."""
        return f"{self.value}.0"

    @property
    def manifest(self) -> str:
        """Namespace of the manifest."""
        return f"http://www.imsglobal.org/xsd/imscc{self._short}/imscp_v1p1"

    @property
    def about_all(self) -> str:
        """Namespace of what is said of the whole cartridge."""
        return f"http://ltsc.ieee.org/xsd/imscc{self._short}/LOM/manifest"

    @property
    def about_one(self) -> str:
        """Namespace of what is said of one thing in it."""
        return f"http://ltsc.ieee.org/xsd/imscc{self._short}/LOM/resource"

    @property
    def web_link(self) -> str:
        """Namespace of a link."""
        return f"http://www.imsglobal.org/xsd/imscc{self._short}/imswl_{self._short}"

    @property
    def link_type(self) -> str:
        """What the manifest calls a link."""
        return f"imswl_xml{self._short}"

    @property
    def quiz_type(self) -> str:
        """What the manifest calls questions that are given together."""
        return f"imsqti_xmlv1p2/imscc_xml{self._short}/assessment"

    @property
    def bank_type(self) -> str:
        """What the manifest calls questions to choose from; a cartridge may hold one bank."""
        return f"imsqti_xmlv1p2/imscc_xml{self._short}/question-bank"
