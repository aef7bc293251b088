"""An index of both wheel paths, measured in one.

Looks at
    MRI and HRI, and the wheel paths that are to be measured.

Why it matters
    MRI is the mean of the IRI of the two wheel paths, HRI the index of their mean profile.
    One wheel path gives neither, and the two paths of a lane often differ.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.wheel_paths: right

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.wheel_paths: both

How to settle it
    Measure both wheel paths, or limit the IRI of the wheel path that is measured.

Sources
    AASHTO R 43-13(2017), section 3.1.1: roughness is the mean of the two wheel paths
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="an index of two wheel paths from one",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("smoothness.index", "smoothness.wheel_paths"),
    quiet_after=("index-instrument",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each MRI or HRI that is measured in one wheel path."""
    for area, ride in rides(job):
        if ride.index not in ("MRI", "HRI") or ride.wheel_paths == "both":
            continue
        path = "one" if ride.wheel_paths == "one" else f"the {ride.wheel_paths} one"
        says = f"{ride.index} is made of two wheel paths, and only {path} is measured."
        at = [
            evidence(ride, "index", "smoothness index"),
            evidence(ride, "wheel_paths", "wheel paths"),
        ]
        settle = ("wheel paths: both", "make the index IRI and set its limit anew")
        yield RULE.finding(area, says, at, settle)
