"""A smoothness limit without what gives it a meaning.

Looks at
    Smoothness limits, and whether index, instrument, wheel paths, segment and the time of the
    test are stated, and for an index of a profiler how the profiler is certified.

Why it matters
    75 in/mi of MRI is a smooth road, of profile index a very rough one. Over 0.1 mi the limit is
    met easily, over 25 ft hardly anywhere. Each of these changes the limit itself.

Conflict
    areas.mainline.smoothness.wheel_paths: null

Settled
    areas.mainline.smoothness.wheel_paths: both

How to settle it
    State what is missing.

Sources
    AASHTO R 54-14(2018), section 1: a ride specification names index, segment and equipment
    AASHTO R 56-14(2018): profilers are certified
    FHWA review guide on pavement smoothness, 1999: device type, tester and time
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.model.results import PROFILERS, Smoothness
from specwriter.rules.places import rides
from specwriter.rules.prose import listed
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the smoothness requirement is not complete",
    grade=Grade.OPEN,
    basis="published",
    needs=("smoothness.limit",),
    gap=True,
    base="complete/diamond_grinding",
)

_NEEDED = {
    "index": "index",
    "instrument": "instrument",
    "wheel_paths": "wheel paths",
    "segment": "segment",
    "measured": "stage of the work at which it is measured",
    "certification": "certification of the profiler",
}


def check(job: Job) -> Iterator[Finding]:
    """One finding for each smoothness limit with everything that it needs and lacks."""
    for area, ride in rides(job):
        missing = {key: name for key, name in _NEEDED.items() if not _stated(ride, key)}
        if not missing:
            continue
        says = (
            f"The smoothness limit is {ride.limit}, and the job does not say: "
            f"{listed([*missing.values()])}."
        )
        at = [evidence(ride, "limit", "smoothness limit")]
        yield RULE.finding(area, says, at, (f"state under smoothness: {', '.join(missing)}",))


def _stated(ride: Smoothness, key: str) -> bool:
    if key == "measured" and ride.test is not None and ride.test.when is not None:
        return True
    if key == "certification" and not _is_certified_here(ride):
        return True
    return getattr(ride, key) is not None


def _is_certified_here(ride: Smoothness) -> bool:
    """A pay table has a rule of its own that asks for it: pay-schedule-incomplete."""
    pay = ride.pay_adjustment
    return ride.instrument in PROFILERS and not (pay and pay.schedule == "table")
