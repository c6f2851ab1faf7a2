"""What can only be made of a site's finished files: take-home copies, and lists of what to keep."""

from __future__ import annotations

from pathlib import Path

from generator.present.pages.take_home import take_home_name, with_size
from generator.present.words.say import Say
from generator.write.keep_list import write_keep_list
from generator.write.take_home import write_take_home


def finish_lesson(site: Path, folder: str, title: str, say: Say, address: str) -> None:
    """Add both to a lesson's folder; its page is then told how large the copy is.

    Args:
        site: folder of the finished site.
        folder: of the lesson on the site: ``es/river-walk``.
        title: of the lesson.
        say: the words of its language.
        address: of the published site; empty where it has none.
    """
    above, _, lesson = folder.rpartition("/")
    copy = write_take_home(site, folder, take_home_name(lesson), address)
    page = site / folder / "index.html"
    page.write_text(with_size(page.read_text("utf-8"), copy.stat().st_size, say), "utf-8")
    write_keep_list(site, folder, f"{above}/index.html".lstrip("/"), title)
