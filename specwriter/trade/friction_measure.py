"""What a written friction measure means: kind of number, speed and tyre in its name.

``SN40R`` is the skid number at 40 mph with the ribbed tyre (practice; ASTM E524-08, scope: the
smooth tyre has a standard of its own).
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from specwriter.trade.friction import Tyre

_SKID = re.compile(r"(?:SN|FN)[ (]*(\d{2,3})?[ )]*([RS])?$|(?:skid|friction) number\b", re.I)
_KINDS: tuple[tuple[str, str], ...] = (
    (r"\bDFT|dynamic friction", "dynamic friction"),
    (r"\bBPN\b|\bPTV\b|pendulum", "pendulum number"),
    (r"\bF60\b|\bIFI\b|friction index", "friction index"),
    (r"^mu\b|μ|\bCFME\b|continuous friction|coefficient", "coefficient"),
)
_TYRES: dict[str, Tyre] = {"R": "ribbed", "S": "smooth"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Measure:
    """A friction measure; ``speed`` and ``tyre`` only where its name holds them (SN40R)."""

    kind: str
    speed: int | None = None
    tyre: Tyre | None = None


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
