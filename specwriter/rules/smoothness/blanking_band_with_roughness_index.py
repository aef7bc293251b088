"""A blanking band beside an index that has none.

Looks at
    Areas that give a blanking band together with IRI, MRI or HRI.

Why it matters
    A blanking band belongs to the profile index. Beside a roughness index nobody can tell
    whether the band is a leftover or the index is the wrong one, and the limit with it.

Conflict
    areas.mainline.smoothness.index: IRI
    areas.mainline.smoothness.blanking_band: 0.2 in

Settled
    areas.mainline.smoothness.index: IRI

How to settle it
    Take the band out, or return to the profile index with a limit set for it.

Sources
    AASHTO R 43-13(2017), section 3.1.3: the definition of IRI has no blanking band
    Florida DOT Standard Specifications, section 400-15.2.5.5: the band belongs to the profile index
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import ROUGHNESS_INDEXES, rides
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="a blanking band beside an index that has none",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("smoothness.index", "smoothness.blanking_band"),
    quiet_after=("index-instrument",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each roughness index with a blanking band."""
    for area, ride in rides(job):
        if ride.index not in ROUGHNESS_INDEXES:
            continue
        at = [
            evidence(ride, "blanking_band", "blanking band"),
            evidence(ride, "index", "smoothness index"),
        ]
        says = (
            f"{ride.index} is computed without a blanking band; a band of {ride.blanking_band} "
            "belongs to a profile index (PI)."
        )
        settle = ("take the blanking band out", "make the index PI and set its limit anew")
        yield RULE.finding(area, says, at, settle)
