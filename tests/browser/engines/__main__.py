"""Brings Firefox and WebKitGTK in on Debian: ``python -m tests.browser.engines``, as root."""

from __future__ import annotations

import subprocess
import sys

from tests.browser.engines.found import PACKAGES


def main() -> int:
    """Install what the tests of three engines need; says how that ended."""
    install = ["apt-get", "install", "-qy", "--no-install-recommends", *PACKAGES]
    for command in (["apt-get", "update", "-q"], install):
        if ended := subprocess.run(command, check=False).returncode:
            return ended
    return 0


if __name__ == "__main__":
    sys.exit(main())
