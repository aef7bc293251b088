"""What several rules ask of an area: its ride requirement, its grain, its groove spacing."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Evidence
from specwriter.model import Area, Job, Limits
from specwriter.model.results import Smoothness
from specwriter.quantity import Quantity, parse
from specwriter.rules.rule import evidence, given

ROUGHNESS_INDEXES = ("IRI", "MRI", "HRI")
"""Indexes that a quarter-car or half-car model gives from a measured profile."""

LONGITUDINAL = ("diamond_grinding", "longitudinal_grooving", "next_generation_concrete_surface")
GROOVING = ("longitudinal_grooving", "transverse_grooving", "runway_grooving")
GRINDING = ("diamond_grinding", "next_generation_concrete_surface")
AIRFIELD = ("runway", "taxiway")

REINFORCED = (
    "jointed_reinforced_concrete",
    "continuously_reinforced_concrete",
    "bridge_deck_concrete",
)
"""Pavements with steel near the surface that the blades could reach."""

ASPHALT = ("asphalt", "airfield_asphalt")

INCH_PER_MILE = Fraction("0.0254") / Fraction("1609.344")
"""1 in/mi as a slope: exact, from the international inch and mile."""


def rides(job: Job) -> Iterator[tuple[Area, Smoothness]]:
    """Each area with its ride requirement; only for rules that need ``smoothness``."""
    for area in job.areas.values():
        yield area, given(area.smoothness)


def outside(value: Quantity, low: str, high: str) -> bool:
    """True when nothing that the value allows lies between two written lengths."""
    return value.reading.meet(parse(f"{low} to {high}").interval).is_empty


def stretch_length(stretch: Limits) -> Fraction | None:
    """The length along the stations in metres; ``None`` while one of them is missing."""
    if stretch.start is None or stretch.end is None:
        return None
    return abs(stretch.end.amounts[0].base - stretch.start.amounts[0].base)


def words(text: str | None) -> str:
    """A fixed word of the job file in plain words."""
    return (text or "").replace("_", " ")


def least_spacing(area: Area) -> tuple[Fraction, tuple[Evidence, ...]] | None:
    """The smallest groove spacing that the area allows, in metres, and what gives it."""
    groove, land = area.groove, area.land
    if groove is None:
        return None
    if groove.spacing and groove.spacing.interval.low:
        return groove.spacing.interval.low, (evidence(groove, "spacing", "groove spacing"),)
    if groove.width and land and land.width:
        width, gap = groove.width.interval.low, land.width.interval.low
        if width is not None and gap is not None:
            return width + gap, (
                evidence(groove, "width", "groove width"),
                evidence(land, "width", "land width"),
            )
    if groove.per_foot and groove.per_foot.interval.high:
        return 1 / groove.per_foot.interval.high, (
            evidence(groove, "per_foot", "grooves per foot"),
        )
    return None
