"""What the kinds of stop bring to the site's styles and scripts, each from its own folder of ``theme/stops/``."""

from __future__ import annotations

import re
from collections.abc import Mapping

from generator.present.stops.kinds import KINDS

_Files = Mapping[str, str]
_ELEMENT = re.compile(r"^export class (\w+) extends (?:HTMLElement|LiveElement)\b", re.MULTILINE)


def style_entries(styles: _Files) -> dict[str, str]:
    """Bundles of styles that the kinds need, each with the file that begins it."""
    names = dict.fromkeys(name for kind in KINDS for name in kind.styles)
    return {
        name: entry if (entry := f"css/{name}.css") in styles else f"stops/{name}/style.css"
        for name in names
    }


def with_paper_styles(styles: _Files) -> dict[str, str]:
    """The styles, those of the printed pages with the ``paper.css`` of each kind that has one."""
    own = (kind.name for kind in KINDS if kind.paper_style)
    imports = "".join(f'@import "../stops/{name}/paper.css";\n' for name in own)
    return {**styles, "css/paper.css": styles["css/paper.css"] + imports}


def script_entries(scripts: _Files) -> dict[str, str]:
    """The module that begins each script the kinds need, by its name."""
    return {
        f"js/{kind.script}.js": _entry(kind.name, scripts[f"stops/{kind.name}/element.js"])
        if kind.script == kind.name
        else scripts[f"js/{kind.script}.js"]
        for kind in KINDS
        if kind.script
    }


def _entry(kind: str, element: str) -> str:
    found = _ELEMENT.search(element)
    if not found:
        raise ValueError(f"stops/{kind}/element.js: exports no class that extends HTMLElement")
    return f'import {{ {found[1]} }} from "../stops/{kind}/element.js";\n{found[1]}.define();\n'


def with_read_aloud(scripts: _Files) -> dict[str, str]:
    """The scripts, with what is read aloud of each kind besides what all have."""
    own = (f".stop-{kind.name} {part}" for kind in KINDS for part in kind.read_aloud)
    module = f'export const TOLD_BY_KINDS = "{", ".join(own)}";\n'
    return {**scripts, "js/told-by-kinds.js": module}
