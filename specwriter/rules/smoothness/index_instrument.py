"""A smoothness index that the named instrument cannot give.

Looks at
    The smoothness index and the instrument that is to measure it.

Why it matters
    IRI, MRI and HRI are computed from a measured profile. A profilograph and a straightedge
    do not record one, so nobody can tell whether the limit was met. A profile index is what
    a profilograph draws; from a profiler it can only be simulated, and the contract must say
    so, because real and simulated traces differ.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 60 in/mi
    areas.mainline.smoothness.instrument: profilograph

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 60 in/mi
    areas.mainline.smoothness.instrument: inertial_profiler
    areas.mainline.smoothness.sensor: line_laser

How to settle it
    Name an instrument that gives the index, or an index that the instrument gives.
    A limit does not carry over from one index to the other: set it anew.

Sources
    AASHTO R 43-13(2017), section 3.1.3: IRI is computed from a wheel-path profile
    ASTM E1274-03(2012), scope 1.1: what a profilograph is
    ASTM E2955-13(2019): simulating a profilograph from a measured profile
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.results import Smoothness
from specwriter.rules.places import ROUGHNESS_INDEXES, rides, words
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the instrument cannot give the smoothness index",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("smoothness.index", "smoothness.instrument"),
)

_NO_PROFILE = ("profilograph", "straightedge")


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose instrument cannot give its index."""
    for area, ride in rides(job):
        if ride.index in ROUGHNESS_INDEXES and ride.instrument in _NO_PROFILE:
            says = (
                f"{ride.index} is computed from a measured profile; a {words(ride.instrument)} "
                "records none, so the limit can be neither met nor missed."
            )
            settle = (
                f"keep {ride.index} and measure with an inertial profiler",
                "keep the instrument and set a limit of its own kind",
            )
            yield RULE.finding(area, says, _at(ride), settle)
        elif ride.index == "PI" and ride.instrument == "straightedge":
            says = "A profile index comes from a profilograph trace; a straightedge draws none."
            settle = ("name a profilograph", "set a straightedge tolerance instead of the PI")
            yield RULE.finding(area, says, _at(ride), settle)
        elif ride.index == "PI" and ride.instrument != "profilograph" and not ride.simulated:
            says = (
                f"A {words(ride.instrument)} measures a profile, not a profilograph trace; it "
                "gives a PI only by simulation, and the job does not say that the PI is simulated."
            )
            ways = (
                "state that the PI is simulated (simulated: true), by ASTM E2955",
                "name a profilograph",
                "set an MRI limit",
            )
            yield RULE.finding(area, says, _at(ride), ways)


def _at(ride: Smoothness) -> list[Evidence]:
    at = [
        evidence(ride, "index", "smoothness index"),
        evidence(ride, "instrument", "instrument"),
    ]
    return [*at, evidence(ride, "simulated", "simulated")] if ride.simulated is False else at
