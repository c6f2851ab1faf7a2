"""How one page reaches other files: as it stands on the site, or in a copy that is carried home.

Views name files by their paths from the site's root; a filled page asks here for every address in
it (``form.py``). What was asked for is remembered, so that nobody has to look for it in the page.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from base64 import b64encode
from collections.abc import Callable, Mapping
from posixpath import dirname
from urllib.parse import urlsplit

from markupsafe import Markup

from generator.present.policy import content_policy


class Addresses(ABC):
    """The addresses of one page."""

    policy: str
    """Content security policy of the page, or empty where it has none."""

    def __init__(self) -> None:
        """Nothing was asked for yet."""
        self._needs: set[str] = set()

    @property
    def needs(self) -> tuple[str, ...]:
        """What was shown or loaded so far, in order, from the site's root."""
        return tuple(sorted(self._needs))

    @property
    @abstractmethod
    def root(self) -> str:
        """The folder of the site: empty, or ``../`` so many times."""

    @abstractmethod
    def file(self, path: str) -> str:
        """A file that the page shows or loads."""

    @abstractmethod
    def fetched(self, path: str) -> str:
        """A file that only a script fetches, over the network; empty where no script can."""

    @abstractmethod
    def track(self, path: str) -> str:
        """A caption file."""

    @abstractmethod
    def link(self, href: str) -> str:
        """A page to go to, at a place on it or not; empty where no way leads there."""

    def apart(self, name: str) -> Markup:  # noqa: ARG002  # most pages have none
        """A part of the page that is made once its pages are; empty where it has none."""
        return Markup()


class OnSite(Addresses):
    """The addresses of a page on the site, which also opens from a folder."""

    def __init__(self, page: str, *, preview: bool = False) -> None:
        """Addresses as seen from a page.

        Args:
            page: its path from the site's root.
            preview: whether a reload script runs in it, which a policy would break.
        """
        super().__init__()
        self._apart: dict[str, Markup] = {}
        self.policy = "" if preview else content_policy()
        self._folder = dirname(page)

    def file(self, path: str) -> str:
        """A file that the page shows or loads."""
        self._needs.add(path)
        return seen_from(path, self._folder)

    def fetched(self, path: str) -> str:
        """A file that a script fetches."""
        return self.file(path)

    def track(self, path: str) -> str:
        """A caption file."""
        return self.file(path)

    def link(self, href: str) -> str:
        """A page to go to; a place on this page, and another site, are addresses already."""
        path, sign, place = href.partition("#")
        if not path or ":" in path:
            return href
        return f"{seen_from(path, self._folder)}{sign}{place}"

    def bring(self, name: str, part: Markup) -> None:
        """Give a part of the page that was made apart."""
        self._apart[name] = part

    def apart(self, name: str) -> Markup:
        """A part that was given."""
        return self._apart.get(name, Markup())

    @property
    def root(self) -> str:
        """The folder of the site."""
        return "../" * (self._folder.count("/") + 1) if self._folder else ""


class FromAnywhere(OnSite):
    """The addresses of a page that a host sends in the place of any that is not there, however deep."""

    def __init__(self, published: str, *, preview: bool = False) -> None:
        """Addresses from the root of the host.

        Args:
            published: address of the site, ending in a slash; where it has none, it is taken to
                stand at its host's root.
            preview: whether a reload script runs in it.
        """
        super().__init__("", preview=preview)
        self._site = urlsplit(published).path or "/"

    def file(self, path: str) -> str:
        """A file that the page shows or loads."""
        return self._site + super().file(path)

    def link(self, href: str) -> str:
        """A page to go to."""
        made = super().link(href)
        return made if made.startswith("#") or ":" in made else self._site + made

    @property
    def root(self) -> str:
        """The folder of the site."""
        return self._site


class InCopy(Addresses):
    """The addresses of a page in the copy of a lesson, which is opened from a folder."""

    def __init__(
        self, pages: Mapping[str, str], read: Callable[[str], bytes], published: str
    ) -> None:
        """Addresses in a folder that holds all pages side by side.

        Args:
            pages: name in the copy of each page that is in it, by its path from the site's root.
            read: gives what a file of the site holds.
            published: address of the published site, ending in a slash; empty where it has none.
        """
        super().__init__()
        self.policy = content_policy(media="data:")
        self._pages, self._read, self._published = pages, read, published

    def file(self, path: str) -> str:
        """A file that the page shows or loads; it lies in the copy for being asked for."""
        self._needs.add(path)
        return name_in_copy(path)

    def fetched(self, path: str) -> str:  # noqa: ARG002  # nothing can be fetched, whatever it is
        """Nothing: browsers give a script no file of a folder."""
        return ""

    def track(self, path: str) -> str:
        """The captions themselves (RFC 2397): Chromium loads no caption file from a folder."""
        self.file(path)  # for players outside a browser
        return f"data:text/vtt;base64,{b64encode(self._read(path)).decode()}"

    def link(self, href: str) -> str:
        """A page beside this one, or one of the published site, or nothing where there is no such site."""
        path, sign, place = href.partition("#")
        if not path or ":" in path:
            return href
        if path in self._pages:
            return f"{self._pages[path]}{sign}{place}"
        return self._published and self._published + href

    @property
    def root(self) -> str:
        """The copy's own folder."""
        return ""


def name_in_copy(path: str) -> str:
    """Where a file lies in a copy: what all lessons share in ``assets``, all else beside the page."""
    return path if path.startswith("assets/") else path.rpartition("/")[2]


def seen_from(path: str, folder: str) -> str:
    """A path as seen from a folder, both from the site's root and without detours."""
    here, there = folder.split("/") if folder else [], path.split("/")
    shared = 0
    while shared < len(here) and here[shared] == there[shared] and shared < len(there) - 1:
        shared += 1
    return "/".join([*([".."] * (len(here) - shared)), *there[shared:]])
