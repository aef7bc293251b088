"""Words to delete and words to substitute that turn one paragraph into another."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from specwriter.compare.text.words import Span, tokens
from specwriter.reading.block import OBJECT

_MOST_EDITS = 4
"""A paragraph with more changes is given anew as a whole."""

_SHORT = 60
"""A paragraph or cell of no more characters is given anew where it changes twice."""

_MOST_CHANGED = 0.6
_CONTEXT = 8


@dataclass(frozen=True, slots=True)
class Edit:
    """Words to delete and words to put in their place; the first stand once in the paragraph."""

    delete: str
    substitute: str


def edits_of(spans: Sequence[Span]) -> tuple[Edit, ...]:
    """The edits that turn the old paragraph into the new one, carried out in this order.

    Empty when the paragraph is better given anew: it is short, too much of it changed, or a
    picture did.
    """
    old = "".join(span.text for span in spans if span.kind != "added")
    groups = list(_groups(spans))
    if len(groups) > 1 and len(old) <= _SHORT:
        return ()
    changed = sum(len(gone) for _, gone, _ in groups)
    if len(groups) > _MOST_EDITS or OBJECT in old or changed > _MOST_CHANGED * max(len(old), 1):
        return ()
    text, edits, moved = old, [], 0
    for start, gone, come in groups:
        edit, text = _edit(text, start + moved, gone, come)
        moved += len(come) - len(gone)
        if edit is None or OBJECT in edit.substitute:
            return ()
        edits.append(edit)
    return tuple(edits)


def _groups(spans: Sequence[Span]) -> Iterator[tuple[int, str, str]]:
    """Place in the old paragraph, words that go, words that come; neighbours as one."""
    place, gone, come = 0, "", ""
    for span in spans:
        if span.kind == "equal":
            if gone or come:
                yield place - len(gone), gone, come
            gone = come = ""
        if span.kind == "added":
            come += span.text
        else:
            place += len(span.text)
            gone += span.text if span.kind == "removed" else ""
    if gone or come:
        yield place - len(gone), gone, come


def _edit(text: str, start: int, gone: str, come: str) -> tuple[Edit | None, str]:
    """An edit whose words stand once in the text, with as little around them as that takes."""
    end = start + len(gone)
    new = text[:start] + come + text[end:]
    before, after = tokens(text[:start]), tokens(text[end:])
    for width in range(_CONTEXT * 2 + 1):
        left = "".join(before[len(before) - min(width, len(before)) :])
        right = "".join(after[: min(width, len(after))])
        if not gone and not (left + right).strip():
            continue
        delete = left + gone + right
        trimmed = delete.strip()
        if trimmed and _stands_once(delete, text) and _whole_words(text, start - len(left), delete):
            return Edit(delete, left + come + right), new
    return None, new


def _stands_once(part: str, text: str) -> bool:
    """Whether a part stands at one place; two may overlap, as " to " in "to to to" does."""
    first = text.find(part)
    return first >= 0 and text.find(part, first + 1) < 0


def _whole_words(text: str, start: int, part: str) -> bool:
    """Whether a part neither begins nor ends inside a word."""
    end = start + len(part)
    before, after = text[start - 1 : start], text[end : end + 1]
    begins = not (before.isalnum() and part[:1].isalnum())
    return begins and not (after.isalnum() and part[-1:].isalnum())
