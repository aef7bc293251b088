"""Which clauses, tables and figures have another number, and what only follows such a number."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence

from specwriter.compare.text.pairs import Clause, Match, Rewritten
from specwriter.compare.text.words import Span
from specwriter.reading import Paragraph

CAPTION = re.compile(r"^(?:Table|Figure)\s+\S+?(?=[.:]?\s|$)")
_TYPED = re.compile(r"\s*(?:Section|Article|Part|Clause)?\s*(\d+(?:\.\d+)*)[.)]?\s+(?=\S)")
"""A number typed before the words of a heading."""

_REFERS = re.compile(
    r"(?:^|\b(?:section|subsection|clause|article|part|paragraph|item|table|figure)s?\s+)$", re.I
)
"""What stands before a number that names a clause or table, and counts nothing."""

_KIND = re.compile(r"\b(table|figure)s?\s+(?:[\w.]+(?:,? and |, | to ))*$", re.I)
"""What makes a number that of a table or figure; it may stand before several."""


def renumbered(clauses: Iterable[Clause]) -> dict[str, str]:
    """Old name → new name of what stands in both: ``3.1``, ``Table 2``, ``Figure 4``."""
    found: dict[str, str] = {}
    for clause in clauses:
        for part in clause.parts:
            if not isinstance(part, Match | Rewritten):
                continue
            was, now = _number(part.old), _number(part.new)
            if was and now and was != now:
                found[was] = now
    return found


def _number(paragraph: Paragraph) -> str:
    if paragraph.heading:
        typed = _TYPED.match(paragraph.text)
        return bare(paragraph.label) or (typed[1] if typed else "")
    caption = CAPTION.match(paragraph.text)
    return " ".join(caption[0].split()) if caption else ""


def bare(label: str) -> str:
    """A number without the full stop behind it."""
    return label.strip().rstrip(".")


def only_follows(spans: Sequence[Span], numbers: Mapping[str, str]) -> bool:
    """True when each change is an old number that became the new number of the same thing."""
    changed = [place for place, span in enumerate(spans) if span.kind != "equal"]
    pairs = list(zip(changed[::2], changed[1::2], strict=False))
    if len(changed) % 2 or not changed:
        return False
    return all(
        (spans[a].kind, spans[b].kind) == ("removed", "added")
        and _follows("".join(s.text for s in spans[:a]), spans[a].text, spans[b].text, numbers)
        for a, b in pairs
    )


def _follows(before: str, old: str, new: str, numbers: Mapping[str, str]) -> bool:
    """Whether a number names a clause or a table: ``3`` alone may as well count readings."""
    kind = _KIND.search(before)
    name = f"{kind[1].capitalize()} " if kind else ""
    refers = name or "." in bare(old) or _REFERS.search(before.lstrip())
    return bool(refers) and numbers.get(f"{name}{bare(old)}") == f"{name}{bare(new)}"
