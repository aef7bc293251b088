"""A highway roughness index on a runway or taxiway.

Looks at
    The smoothness index of areas on a runway or taxiway.

Why it matters
    IRI, MRI and HRI stand for a car at 50 mph. Aircraft answer to other and longer waves, and
    airfield work is accepted with a straightedge or a profilograph. A highway limit on a
    runway shows nothing about the ride of an aircraft.

Conflict
    areas.runway.smoothness.index: IRI
    areas.runway.smoothness.limit: at most 60 in/mi

Settled
    areas.runway.straightedge: {length: 12 ft, tolerance: at most 1/4 in, kind: resting}

How to settle it
    Set a straightedge tolerance or a profile index as the airfield standard has them.

Sources
    UFGS 02753: airfield concrete is accepted with a straightedge or a profilograph
    AASHTO R 56-14(2018), section 3.1.2: the simulated vehicle is a car at 50 mph
    FAA AC 150/5370-10G, item P-501; memory, unverified: 1/4 in in 12 ft
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import AIRFIELD, ROUGHNESS_INDEXES, rides
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="a highway roughness index on an airfield",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("smoothness.index",),
    quiet_after=("index-instrument", "index-unit"),
    base="runway_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each runway or taxiway that is to meet a highway index."""
    for area, ride in rides(job):
        if area.place not in AIRFIELD or ride.index not in ROUGHNESS_INDEXES:
            continue
        says = f"{ride.index} is the answer of a car at 50 mph; it does not judge a {area.place}."
        at = [evidence(ride, "index", "smoothness index"), evidence(area, "place", "place")]
        settle = ("a straightedge tolerance", "a profile index of the airfield standard")
        yield RULE.finding(area, says, at, settle)
