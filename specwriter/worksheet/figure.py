"""One computed figure, and one that still waits for an input."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from specwriter.diagnostic import Evidence


@dataclass(frozen=True, slots=True, kw_only=True)
class Figure:
    """A value with all that it rests on; the registry adds the slug of the file it comes from.

    ``value`` is the text in the units of the job; ``low`` and ``high`` bound it in ``unit``, an
    open end being ``None`` (both are, where the value is words). ``alternative`` names the pattern
    of grooves that it is computed for, where that is not the area's own.
    """

    slug: str = ""
    area: str | None
    alternative: str | None = None
    title: str
    value: str
    low: Fraction | None = None
    high: Fraction | None = None
    unit: str = ""
    formula: str
    inputs: tuple[Evidence, ...]
    source: str
    validity: str
    note: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Waiting:
    """A figure that cannot be computed, and what it waits for; ``alternative`` as in a figure."""

    slug: str = ""
    area: str | None
    alternative: str | None = None
    title: str
    because: str


Line = Figure | Waiting
