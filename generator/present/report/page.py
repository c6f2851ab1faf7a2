"""The report as one page that needs nothing else: to be opened, printed and sent as it is."""

from __future__ import annotations

from base64 import b64encode
from hashlib import sha256
from pathlib import Path

from generator.present.addresses import OnSite
from generator.present.assets.environment import Theme
from generator.present.report.charts import charts_json
from generator.present.report.view import ReportView
from generator.present.words.say import Say

_LIBRARY = "vendor/plotly/plotly-bars.min.js"
_STYLES = ("css/tokens.css", "css/tokens-printed.css", "report/report.css")
_END = "</body>"


def report_page(view: ReportView, say: Say, theme: Path) -> str:
    """The page: complete without its scripts, which draw charts above the tables.

    Args:
        view: what it shows.
        say: the words of its language.
        theme: folder of the theme.
    """
    page = Theme(theme).fill(view, say, OnSite("report.html"))
    scripts = [(theme / name).read_text("utf-8") for name in (_LIBRARY, "report/report.js")]
    style = "".join((theme / name).read_text("utf-8") for name in _STYLES)
    charts = charts_json(view, say).replace("<", "\\u003c")
    data = f'<script type="application/json" id="charts">{charts}</script>'
    ending = data + "".join(f"<script>{script}</script>" for script in scripts) + _END
    head = f'<meta http-equiv="Content-Security-Policy" content="{_policy(scripts)}">'
    return page.replace("<head>", f"<head>{head}<style>{style}</style>").replace(_END, ending)


def _policy(scripts: list[str]) -> str:
    """Its own scripts, told by their hashes, and nothing from anywhere."""
    hashes = (b64encode(sha256(script.encode()).digest()).decode() for script in scripts)
    allowed = " ".join(f"'sha256-{one}'" for one in hashes)
    return (
        f"default-src 'none'; script-src {allowed}; style-src 'unsafe-inline'; img-src data:; "
        "base-uri 'none'; form-action 'none'"
    )
