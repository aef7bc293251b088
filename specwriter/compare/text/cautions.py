"""What is easily overlooked in a change of text: a unit, an edition, a blanking band, the pay."""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.compare.values import judge_values
from specwriter.compare.wording import numbers_in

_METHOD = re.compile(
    r"\b((?:ASTM|AASHTO|ISO|EN|DIN|BS)\s+[A-Z]{0,2}\s?\d+(?:-\d+(?=:))?)"
    r"((?:[-:]\d{2,4}[a-z]?\d*)?(?:\s*\((?:19|20)\d\d\))?)"
)
_UNPAID = re.compile(
    r"\b(incidental|subsidiary|no (?:separate|additional|direct) payment|not (?:be )?paid)\b", re.I
)
_BAND = re.compile(r"^\W*(?:wide\s+)?blanking|blanking band(?:\s+\w+){0,3}\W*$", re.I)


def cautions(old: str, new: str) -> Iterator[str]:
    """One sentence for each such change; ``old`` or ``new`` is empty where the other is alone."""
    yield from _values(old, new)
    yield from _editions(old, new)
    gone, come = (set(map(str.lower, _UNPAID.findall(text))) for text in (old, new))
    for words in sorted(come - gone):
        yield f'Payment may turn on "{words}": check which item now bears the cost.'
    for words in sorted(gone - come):
        yield f'Payment may turn on "{words}", which is gone: check what is now paid for.'


def _values(old: str, new: str) -> Iterator[str]:
    was, now = numbers_in(old), numbers_in(new)
    if len(was.values) != len(now.values):
        return
    frames = was.frame.split("#")
    for place, (a, b) in enumerate(zip(was.values, now.values, strict=True)):
        if a.text == b.text:
            continue
        if warning := judge_values(a, b, "unordered").warning:
            yield warning
        if _BAND.search(frames[place]) or _BAND.search(frames[place + 1]):
            yield "The blanking band changed: the same limit of the index binds otherwise."


def _editions(old: str, new: str) -> Iterator[str]:
    was, now = (dict(_METHOD.findall(text)) for text in (old, new))
    for method, edition in was.items():
        if method in now and now[method] != edition:
            gone, come = (each.lstrip("-: ") or "none" for each in (edition, now[method]))
            yield (
                f"The edition of {method} went from {gone} to {come}: "
                "it may measure and judge differently."
            )
