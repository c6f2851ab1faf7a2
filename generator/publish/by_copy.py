"""A publication to a folder or a server of her own: checked, built, shown, asked, recorded, put there whole."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from generator.model.publish_to import PublishTo
from generator.publish.going_out import GoingOut, Steps, is_recorded, moment, publication
from generator.publish.kept_record import forget_cut_off, taken_back
from generator.publish.record import append_publication
from generator.publish.refused import NotPublishedError
from generator.publish.shown import told_changes
from generator.publish.talk import Talk
from generator.publish.to_folder import place_of, put_into, refuse_foreign
from generator.publish.to_server import put_on, refuse_unready_server, server_of


@dataclass(frozen=True, slots=True)
class _Target:
    kind: str
    """``folder`` or ``server``, as the record has it."""
    called: str
    ready: Callable[[], None]
    put: Callable[[Path], None]


def publish_by_copy(root: Path, to: PublishTo, steps: Steps, note: str, talk: Talk) -> None:
    """Publish the site without a forge.

    Args:
        root: folder of the site.
        to: where it goes.
        steps: checks and builds.
        note: what she says of it, or nothing.
        talk: says what is done, and asks.

    Raises:
        NotPublishedError: it did not go out; what stands there is as it was.
        LessonError: something must be put right before.
    """
    target = _target(root, to)
    forget_cut_off(root, frozenset())
    target.ready()
    steps.check()
    going = steps.build()
    talk.tell(told_changes(steps, going))
    if not talk.ask(f"Put this in the place of what stands at {target.called}?"):
        raise NotPublishedError("nothing was published", "publish again whenever you want to")
    _put(root, target, steps, going, note)
    where = f" It is at {going.site.address}" if going.site.address else ""
    talk.tell(f"The whole site is at {target.called} now.{where}")


def _put(root: Path, target: _Target, steps: Steps, going: GoingOut, note: str) -> None:
    """With its line in the record, which some of its pages show."""
    if is_recorded(going) and not note:
        target.put(going.folder)
        return
    line = publication(going, moment(going.past), target.kind, note)
    with taken_back(root, line.at):
        append_publication(root, line, going.states)
        target.put(steps.build().folder)


def _target(root: Path, to: PublishTo) -> _Target:
    if to.folder:
        place = place_of(root, to.folder)
        return _Target(
            "folder", str(place), lambda: refuse_foreign(place), lambda site: put_into(site, place)
        )
    server = server_of(to.server)
    return _Target(
        "server",
        to.server,
        lambda: refuse_unready_server(server),
        lambda site: put_on(site, server),
    )
