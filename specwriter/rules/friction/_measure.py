"""What a written friction measure means: kind of number, speed and tyre in its name."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from specwriter.model import Area, Job
from specwriter.model.results import Friction
from specwriter.rules.rule import given

_SKID = re.compile(r"(?:SN|FN)[ (]*(\d{2,3})?[ )]*([RS])?$|(?:skid|friction) number\b", re.I)
_KINDS: tuple[tuple[str, str], ...] = (
    (r"\bDFT|dynamic friction", "dynamic friction"),
    (r"\bBPN\b|\bPTV\b|pendulum", "pendulum number"),
    (r"\bF60\b|\bIFI\b|friction index", "friction index"),
    (r"^mu\b|μ|\bCFME\b|continuous friction|coefficient", "coefficient"),
)
_TYRES = {"R": "ribbed", "S": "smooth"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Measure:
    """A friction measure; ``speed`` and ``tyre`` only where its name holds them (SN40R)."""

    kind: str
    speed: int | None = None
    tyre: str | None = None


def read_measure(text: str | None) -> Measure | None:
    """The measure that a text names; ``None`` for one that is not known here."""
    words = (text or "").strip()
    if found := _SKID.match(words):
        speed, tyre = found.groups()
        return Measure(
            kind="skid number",
            speed=int(speed) if speed else None,
            tyre=_TYRES.get((tyre or "").upper()),
        )
    kinds = (kind for pattern, kind in _KINDS if re.search(pattern, words, re.IGNORECASE))
    kind = next(kinds, None)
    return Measure(kind=kind) if kind else None


def frictions(job: Job) -> Iterator[tuple[Area, Friction, Measure]]:
    """Each area with its friction and the known measure; only for rules that need the measure."""
    for area in job.areas.values():
        friction = given(area.friction)
        if measure := read_measure(friction.measure):
            yield area, friction, measure
