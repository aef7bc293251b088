"""No height sensor named for a surface whose grooves run along the lane.

Looks at
    Profilers that are to measure IRI, MRI or HRI on a texture cut along the direction of travel.

Why it matters
    A profiler with a point laser reads such grooves as bumps. When the contract names no
    sensor, either kind may be brought, and the two can disagree by more than a pay band.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.instrument: inertial_profiler

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.instrument: inertial_profiler
    areas.mainline.smoothness.sensor: line_laser

How to settle it
    Name the sensor: a line laser about 4 in wide.

Sources
    UCD-ITS-RR-22-71, 2022: texture can raise the IRI read by a point laser; a wide spot is required
    AASHTO R 56-14(2018): a line laser is read across the travel direction, about 4 in long
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.model.results import PROFILERS
from specwriter.rules.places import LONGITUDINAL, ROUGHNESS_INDEXES, rides, words
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the sensor of the profiler is not stated",
    grade=Grade.OPEN,
    basis="published",
    needs=("smoothness.index", "smoothness.instrument"),
    # A ride clause that must be rewritten anyhow is reported for its fault, not for this gap.
    quiet_after=(
        "blanking-band-with-roughness-index",
        "grooving-does-not-improve-ride",
        "index-instrument",
        "index-unit",
        "localized-base-missing",
        "localized-below-segment-limit",
        "mean-index-needs-both-wheel-paths",
        "measured-before-texturing",
        "ride-limit-already-met",
    ),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each longitudinal texture measured by a profiler of unknown sensor."""
    for area, ride in rides(job):
        profiled = ride.index in ROUGHNESS_INDEXES and ride.instrument in PROFILERS
        if not profiled or area.texture not in LONGITUDINAL or ride.sensor is not None:
            continue
        if ride.measured == "before_texturing":
            continue
        says = (
            f"{ride.index} is to be measured on {words(area.texture)}, and the job does not say "
            "with which sensor; a point laser would read the grooves as bumps."
        )
        at = [evidence(ride, "instrument", "instrument"), evidence(area, "texture", "texture")]
        yield RULE.finding(area, says, at, ("name the sensor: a line laser about 4 in wide",))
