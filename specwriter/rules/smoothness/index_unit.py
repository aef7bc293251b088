"""A smoothness limit whose figure does not fit its unit.

Looks at
    The smoothness limit and the limit on localized roughness.

Why it matters
    60 in/mi and 60 m/km differ by a factor of 63. A figure carried over with the wrong unit
    makes the limit empty or impossible, and the first reading starts the dispute.

Conflict
    areas.mainline.smoothness.index: IRI
    areas.mainline.smoothness.limit: at most 60 m/km

Settled
    areas.mainline.smoothness.index: IRI
    areas.mainline.smoothness.limit: at most 60 in/mi

How to settle it
    Give the figure with the unit in which it was set; 1 m/km is 63.36 in/mi.
    A figure counted over 0.1 mi must be multiplied by ten before it is given per mile.

Sources
    arithmetic: 1 m/km = 63,360/1,000 in/mi
    23 CFR 490.313, as cited in FHWA HIF-18-022, 2018: below 95 in/mi is good, above 170 is poor
    project calculation: the range that is believed, 15 to 400 in/mi (PI to 150), is far wider
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.model.results import Smoothness
from specwriter.quantity import UNITS, Quantity, show
from specwriter.rules.places import INCH_PER_MILE, rides
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the figure of the limit does not fit its unit",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("smoothness.index",),
    quiet_after=("index-instrument",),
    slip=True,
)

_SEGMENT = (15, 400)
_LOCALIZED = (15, 1000)
_PROFILE_INDEX = (0, 150)
_LIKELY = (30, 200)
"""in/mi; where limits of the other unit or of a tenth of a mile land when that was the slip."""


def check(job: Job) -> Iterator[Finding]:
    """One finding for each ride limit outside the range that is believed."""
    for area, ride in rides(job):
        at = [evidence(ride, "limit", "smoothness limit")]
        segment = _PROFILE_INDEX if ride.index == "PI" else _SEGMENT
        if ride.limit is not None and (says := _slip(ride.limit, segment)):
            yield RULE.finding(area, says, at, _settle(ride, ride.limit))
        local = ride.localized
        if (
            local
            and local.limit
            and ride.index != "PI"
            and (says := _slip(local.limit, _LOCALIZED))
        ):
            at = [evidence(local, "limit", "localized limit")]
            yield RULE.finding(area, says, at, _settle(ride, local.limit))


def _slip(limit: Quantity, believed: tuple[int, int]) -> str:
    figure = limit.interval.low if limit.form == "at_least" else limit.interval.high
    if figure is None:
        return ""
    inches = figure / INCH_PER_MILE
    low, high = believed
    if low <= inches <= high:
        return ""
    way = "rougher" if inches > high else "smoother"
    shown = show(figure, UNITS["in/mi"], 1)
    same = "" if limit.unit.symbol == "in/mi" else f" is {shown},"
    return (
        f"{limit.amounts[-1].text} {limit.unit.symbol}{same or ' is'} far {way} than any limit on "
        f"a new texture; limits lie between {low} and {high} in/mi."
    )


def _settle(ride: Smoothness, limit: Quantity) -> list[str]:
    """The readings of the same figure that would make sense, then the general way out."""
    figure = limit.amounts[-1].value
    other = "m/km" if limit.unit.symbol == "in/mi" else "in/mi"
    ways = []
    if _is_likely(UNITS[other].to_base(figure)):
        ways.append(f"{limit.amounts[-1].text} {other}, if that was meant")
    if limit.unit.symbol == "in/mi" and _is_likely(limit.amounts[-1].base / 10):
        tenth = show(limit.amounts[-1].base / 10, limit.unit, 1)
        ways.append(f"{tenth}, if a figure per mile was taken for one per 0.1 mi")
    return [*ways, "give the figure with the unit in which it was set"]


def _is_likely(base: Fraction) -> bool:
    return _LIKELY[0] <= base / INCH_PER_MILE <= _LIKELY[1]
