"""A line laser too narrow to even out the groove pattern.

Looks at
    The width of the profiler's footprint and the groove spacing of a texture along the lane.

Why it matters
    A line laser evens out the pattern only when it covers several grooves at once. A narrow
    one still rises and falls with its share of grooves as the vehicle wanders.

Conflict
    areas.mainline.smoothness.sensor: line_laser
    areas.mainline.smoothness.sensor_width: 1 in

Settled
    areas.mainline.smoothness.sensor: line_laser
    areas.mainline.smoothness.sensor_width: 4 in

How to settle it
    Ask for a footprint of five spacings or more, or for a height that bridges the grooves.

Sources
    project calculation: below five spacings a false part of the IRI remains (upper bound)
    AASHTO R 56-14(2018): a line laser is read across the travel direction, about 4 in long
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import UNITS, show
from specwriter.rules.places import LONGITUDINAL, least_spacing, rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the sensor covers too few grooves",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("smoothness.sensor_width", "groove"),
    quiet_after=("index-instrument", "sensor-and-width", "sensor-on-longitudinal-texture"),
    base="longitudinal_grooving",
)

SPACINGS = 5
"""Spacings that the footprint must cover; project calculation, see Sources."""


def check(job: Job) -> Iterator[Finding]:
    """One finding for each longitudinal texture whose sensor covers fewer than five spacings."""
    for area, ride in rides(job):
        width = given(ride.sensor_width)
        pitch = least_spacing(area)
        if area.texture not in LONGITUDINAL or pitch is None or ride.measured == "before_texturing":
            continue
        spacing, where = pitch
        low = width.interval.low
        if low is None or low >= SPACINGS * spacing:
            continue
        needed = show(SPACINGS * spacing, width.unit if width.unit.partner else UNITS["in"])
        says = (
            f"A footprint of {width} covers {float(low / spacing):.1f} spacings; "
            f"{SPACINGS} spacings are {needed}."
        )
        at = [evidence(ride, "sensor_width", "sensor width"), *where]
        settle = (f"a sensor width of at least {needed}", "a height that bridges the grooves")
        yield RULE.finding(area, says, at, settle)
