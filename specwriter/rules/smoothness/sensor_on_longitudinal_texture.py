"""A point laser on a surface whose grooves run along the lane.

Looks at
    The height sensor of the profiler, on textures cut along the direction of travel.

Why it matters
    The spot drifts into and out of the grooves as the vehicle wanders. The slow change from
    groove bottom to land looks like long bumps, and the index rises although no tyre feels
    them. A surface that rides well then fails, and grinding it again does not help.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.instrument: inertial_profiler
    areas.mainline.smoothness.sensor: point_laser

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.instrument: inertial_profiler
    areas.mainline.smoothness.sensor: line_laser

How to settle it
    Ask for a line laser about 4 in wide that gives one bridged height.
    Or, for grooving, measure the ride before the grooves are cut.

Sources
    UCD-ITS-RR-22-71, 2022: texture can raise the IRI read by a point laser; a wide spot is required
    AASHTO R 56-14(2018): a line laser is read across the travel direction, about 4 in long
    project calculation: the false part may reach tens of in/mi (upper bound, no filtering)
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import LONGITUDINAL, rides, words
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the sensor reads the grooves as bumps",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("smoothness.sensor",),
    quiet_after=("index-instrument",),
    base="longitudinal_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each longitudinal texture that a point laser is to measure."""
    for area, ride in rides(job):
        if area.texture not in LONGITUDINAL or ride.sensor != "point_laser":
            continue
        if ride.measured == "before_texturing":
            continue
        says = (
            f"On {words(area.texture)} the spot of a point laser wanders between groove and "
            "land, and reads that as roughness which no tyre feels."
        )
        at = [evidence(ride, "sensor", "height sensor"), evidence(area, "texture", "texture")]
        settle = ["a line laser about 4 in wide"]
        if area.texture == "longitudinal_grooving":
            settle.append("measure before the grooves are cut (measured: before_texturing)")
        yield RULE.finding(area, says, at, settle)
