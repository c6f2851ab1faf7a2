"""Which files MkDocs is given: the educator's own that are meant for the site, and ours."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from pathlib import Path, PurePosixPath

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File, Files

from generator.steps.site import FRONT, SiteMap

GUIDE = "guide"
"""Folder of pages for educators; which of them are published, ``draft_docs`` says."""


_SHOWN = {".avif", ".gif", ".jpeg", ".jpg", ".png", ".svg", ".webp"}
_GIVEN = {
    *(".csv", ".docx", ".epub", ".ods", ".odt", ".pdf", ".pptx", ".txt", ".xlsx", ".zip"),
    *(".m4a", ".mp3", ".mp4", ".vtt", ".webm"),
}
"""Pictures and files that a page may lead to. None of them runs (of a drawing it is looked for): a page or script of someone's,
published beside a lesson, could read what learners typed there."""


def can_go_out(file: File) -> bool:
    """Whether a file is of a kind that a page may show or hand over."""
    return PurePosixPath(file.src_uri).suffix.lower() in _SHOWN | _GIVEN


def is_own(file: File, config: MkDocsConfig) -> bool:
    """Whether a file lies in ``lessons/``."""
    return bool(file.src_dir) and Path(str(file.src_dir)) == Path(config.docs_dir)


def is_page_here(file: File, folders: Collection[str]) -> bool:
    """Whether a file is a Markdown page in a place where pages are meant.

    Args:
        file: one of ``lessons/``.
        folders: of the site's languages: nothing for the first, ``es/`` for another.
    """
    folder = PurePosixPath(file.src_uri).parent.as_posix()
    above = "" if folder == "." else f"{folder}/"
    return file.is_documentation_page() and (above in folders or above.startswith(f"{GUIDE}/"))


def with_front_pages(files: Files, config: MkDocsConfig, folders: Iterable[str]) -> Files:
    """Every language has a front page, written by hand or not; a README.md is one as well."""
    for folder in folders:
        if not any(file.dest_uri == folder + FRONT for file in files):
            front = File(f"{folder}index.md", None, config.site_dir, config.use_directory_urls)
            front.content_string = ""
            files.append(front)
    return files


def with_lessons(files: Files, config: MkDocsConfig, known: SiteMap) -> Files:
    """The pages and videos of lessons, to be led to and not to be made, in the place of what has their names."""
    for address in (*known.lessons, *known.media):
        if theirs := files.get_file_from_path(address):
            files.remove(theirs)
        files.append(LessonFile(address, None, config.site_dir, config.use_directory_urls))
    return files


class LessonFile(File):
    """A lesson's page that is made elsewhere, so that Markdown can link to ``soup/index.html``."""

    def copy_file(self, dirty: bool = False) -> None:  # noqa: FBT001, FBT002  # as MkDocs has it
        """There is nothing to copy."""
