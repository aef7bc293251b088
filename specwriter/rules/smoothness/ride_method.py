"""A ride standard that does not give the index, or is not about the instrument.

Looks at
    The smoothness index, the instrument, and the documents named as method of the test.

Why it matters
    AASHTO R 54 and its companions are written for inertial profilers and their IRI, ASTM E1274
    for the profilograph. Followed to the letter the wrong one gives no index at all.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.test.method: ASTM E1274

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.test.method: AASHTO R 54

How to settle it
    Name the standard of the index and of the instrument.

Sources
    AASHTO R 54-14(2018), section 1: ride quality by inertial profilers, IRI is the measure
    ASTM E1274-03(2012), scope 1.1: the profilograph
    ASTM E2955-13(2019): simulating a profilograph from a measured profile
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.model.results import Smoothness
from specwriter.rules.places import rides, words
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.standards import Standard, named_in

RULE = Rule(
    title="the ride standard is not that of the index",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("smoothness.index", "smoothness.test.method"),
    quiet_after=("index-instrument", "method-of-another-property"),
)

_NO_PROFILER = ("profilograph", "straightedge", "rod_and_level")


def check(job: Job) -> Iterator[Finding]:
    """One finding for each ride whose named standards all give another index."""
    for area, ride in rides(job):
        named = [each for each in named_in(ride) if each[0].of == "smoothness"]
        if not named or any(_fits(standard, ride) for standard, _ in named):
            continue
        standard, place = named[0]
        if ride.index not in standard.gives:
            gives = " or ".join(standard.gives)
            says = f"{standard.name} ({standard.title}) gives {gives}, not {ride.index}."
            at = [place, evidence(ride, "index", "smoothness index")]
        else:
            says = (
                f"{standard.name} is about {standard.title}, not about a {words(ride.instrument)}."
            )
            at = [place, evidence(ride, "instrument", "instrument")]
        settle = ("name the standard of the index", f"set a limit in {standard.gives[0]}")
        yield RULE.finding(area, says, at, settle)


def _fits(standard: Standard, ride: Smoothness) -> bool:
    if ride.index == "PI" and ride.simulated:
        return True  # the profile is measured by one document and reduced by another
    for_profilers = standard.name in ("AASHTO R 54", "AASHTO R 57")
    return ride.index in standard.gives and not (for_profilers and ride.instrument in _NO_PROFILER)
