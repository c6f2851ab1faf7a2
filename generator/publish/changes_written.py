"""What changed in a site, written: as text, as Markdown for a pull request, as JSON for another program."""

from __future__ import annotations

import json
import re
from dataclasses import asdict

from generator.model.published import PublishedNumber
from generator.present.updates.said import said
from generator.present.words.say import Say, digits
from generator.publish.changes import Compared
from generator.publish.changes_told import headline, sections
from generator.publish.compare import Files, LessonChanges
from generator.publish.whom import Told, to_be_told

_LONGEST = 60_000
"""Signs; a comment of a pull request takes 65,536 on the forge that most use (from memory, status M)."""
_SIGNS = re.compile(r"([\\`*_\[\]<>|#])")


def as_text(compared: Compared, *, everything: bool) -> str:
    """Short, what matters most first."""
    say = Say(compared.words)
    parts = [headline(compared)]
    parts += [
        "\n".join([one.heading, *(f"  {line}" for line in one.lines)])
        for one in sections(compared, say, everything=everything)
    ]
    parts += [f"{note}." for note in compared.notes]
    return "\n\n".join(parts)


def as_markdown(compared: Compared, *, everything: bool) -> str:
    """The same for a comment below a pull request; cut where that would not take it, which is said."""
    say = Say(compared.words)
    parts = [f"**{_plain(headline(compared))}**"]
    for one in sections(compared, say, everything=everything):
        lines = "\n".join(f"- {_plain(line)}" for line in one.lines)
        parts.append(f"### {_plain(one.heading)}" + (f"\n\n{lines}" if lines else ""))
    parts += [f"*{_plain(note)}.*" for note in compared.notes]
    whole = "\n\n".join(parts)
    if len(whole) <= _LONGEST:
        return whole
    short = whole[:_LONGEST].rpartition("\n")[0]
    return f"{short}\n\n*The rest is left out for its length: python3 generator changes --all*"


def as_json(compared: Compared) -> str:
    """Everything, as one object."""
    changes, say = compared.changes, Say(compared.words)
    told = {
        "against": compared.against,
        "notes": list(compared.notes),
        "files_known": changes.files_known,
        "lessons": [_lesson(one, say) for one in changes.lessons],
        "pages": _files(changes.pages),
        "look": _files(changes.look),
        "told": _told(to_be_told(changes)),
    }
    return json.dumps(told, ensure_ascii=True, indent=1)


def _lesson(one: LessonChanges, say: Say) -> dict[str, object]:
    return {
        "lesson": one.lesson,
        "language": one.language,
        "title": one.title,
        "renamed_from": one.renamed,
        "changes": [
            {
                "kind": each.kind.value,
                "stop": each.stop,
                "name": each.name,
                "was": _number(each.old) or each.was,
                "now": _number(each.new) or each.now,
                "says": said(each, one.headings.get(each.stop, ""), say),
            }
            for each in one.differences
        ],
        "texts": [
            {"path": each.path, "for": each.whom.value, "was": each.was, "now": each.now}
            for each in one.texts
        ],
        "film": [
            {
                "at": each.at,
                "filmed": digits(each.filmed),
                "now": None if each.now is None else digits(each.now),
                "what": each.what,
            }
            for each in one.film
        ],
        "files": _files(one.files),
    }


def _number(number: PublishedNumber | None) -> dict[str, str]:
    if number is None:
        return {}
    return {
        "value": digits(number.value),
        "unit": number.unit,
        "kind": number.kind.value,
        "of": number.of,
    }


def _files(files: Files) -> dict[str, list[str]]:
    return {kind: list(names) for kind, names in asdict(files).items()}


def _told(told: Told) -> dict[str, object]:
    return {
        "families": [
            {
                "lesson": one.lesson.lesson,
                "language": one.lesson.language,
                "sheet": one.sheet,
                "was": one.was,
                "now": one.now,
            }
            for one in told.families
        ],
        "teachers": [
            {
                "lesson": one.lesson.lesson,
                "language": one.lesson.language,
                "lost": [each.kind.value for each in one.lost],
                "answers": one.answers,
            }
            for one in told.teachers
        ],
        "film": [one.lesson.lesson for one in told.film],
    }


def _plain(text: str) -> str:
    """Words of an educator's that Markdown reads as nothing but words."""
    return _SIGNS.sub(r"\\\1", " ".join(text.split()))
