"""Changes of text for the screen: a short stretch around what goes and what comes."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby

from specwriter.compare.change import Sense
from specwriter.compare.text import Span
from specwriter.compare.text.changes import TextChange
from specwriter.compare.text.judgement import judge_text
from specwriter.report.sentences import COMPARED_WIDTH, wrapped

_INDENT = "     "
_AROUND = 45
_LONGEST = 300
_NAMES = {"row added": "ROW ADDED", "row removed": "ROW REMOVED", "moved": "MOVED"}


def text_changes_text(changes: Sequence[TextChange]) -> str:
    """The changes clause by clause; references that follow a new number are only counted."""
    told = [change for change in changes if not change.follows]
    blocks = []
    for clause, group in groupby(told, key=clause_name):
        blocks.append(clause)
        blocks += ["\n".join(_change(change)) for change in group]
    if follow := len(changes) - len(told):
        many = "1 place follows" if follow == 1 else f"{follow} places follow"
        blocks.append(f"{many} the new number of a clause or table.")
    return "\n\n".join(blocks)


def clause_name(change: TextChange) -> str:
    """The clause that a change stands in, with both headings where they differ."""
    old, new = change.clause, change.new_clause
    if not old or not new or old == new:
        return old or new or "Before the first heading"
    return f"{old} → {new}"


def _change(change: TextChange) -> Iterator[str]:
    judged = judge_text(change)
    name = _NAMES.get(change.kind, judged.sense.value.upper())
    yield wrapped(f"{name}: {change.place}", "  ", "    ", width=COMPARED_WIDTH)
    if change.kind == "rewritten":
        yield _filled(excerpt(change.spans))
    elif change.kind == "moved":
        what = "It" if change.place == "the clause" else f'"{shortened(change.new)}"'
        yield _filled(f"{what} now follows {change.after or 'the beginning'}.")
    elif change.kind == "look":
        yield _filled(f'"{shortened(change.spans[0].text)}" was {change.old} and is {change.new}.')
    else:
        sign, text = ("−", change.old) if change.old else ("+", change.new)
        yield _filled(f"{sign} {shortened(text)}")
    if judged.difference and judged.sense is not Sense.REWORDED:
        yield _filled(judged.difference[0].upper() + judged.difference[1:] + ".")
    if judged.warning:
        yield _filled(f"Take care: {judged.warning}")


def _filled(text: str) -> str:
    return wrapped(" ".join(text.split()), _INDENT, width=COMPARED_WIDTH)


def shortened(text: str) -> str:
    """A text of one line, cut when it is long."""
    flat = " ".join(text.split())
    return flat if len(flat) <= _LONGEST else flat[: _LONGEST - 1].rstrip() + "…"


def excerpt(spans: Sequence[Span]) -> str:
    """What goes in ``[− −]`` and what comes in ``[+ +]``, with some words around."""
    parts = []
    for place, span in enumerate(spans):
        text = span.shown
        if span.kind == "removed":
            parts.append(f"[−{text}−]")
        elif span.kind == "added":
            parts.append(f"[+{text}+]")
        else:
            parts.append(_around(text, place == 0, place == len(spans) - 1))
    return "".join(parts)


def _around(text: str, first: bool, last: bool) -> str:
    if first and len(text) > _AROUND:
        return "… " + text[-_AROUND:].partition(" ")[2]
    if last and len(text) > _AROUND:
        return text[:_AROUND].rpartition(" ")[0] + " …"
    if len(text) > 2 * _AROUND + 3:
        before, after = text[:_AROUND].rpartition(" ")[0], text[-_AROUND:].partition(" ")[2]
        return f"{before} … {after}"
    return text
