"""A roughness index on a stretch too short for it.

Looks at
    Each stretch of an area with a limit on IRI, MRI or HRI, against 0.1 mi (528 ft).

Why it matters
    On short lengths the index scatters: on equal roughness it varies by about 5 percent over
    528 ft, 12 percent over 100 ft and 16 percent over 50 ft. The same surface passes or fails by
    where the stretch begins.

Conflict
    areas.mainline.limits: [{from: 10+00, to: 11+00, width: 24 ft}]
    areas.mainline.smoothness: {index: MRI, limit: at most 75 in/mi}

Settled
    areas.mainline.limits: [{from: 10+00, to: 62+80, width: 24 ft}]
    areas.mainline.smoothness: {index: MRI, limit: at most 75 in/mi}

How to settle it
    Judge short stretches by straightedge, or say how a partial segment is treated.
    A house that has its own length gives it as the setting shortest_ride_length.

Sources
    project calculation: the coefficient of variation falls with the root of the length
    Transportation Research Record 2641, undated: in Texas a straightedge below 2,500 ft
    Iowa DOT Standard Specifications 2317, 2009: sections under 50 ft are left out
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job, Limits
from specwriter.quantity import show
from specwriter.rules.places import ROUGHNESS_INDEXES, rides, stretch_length
from specwriter.rules.rule import Rule, evidence, given

_SEGMENT = Fraction(528) * Fraction("0.3048")
"""0.1 mi in metres: below it the index scatters, by project calculation."""

RULE = Rule(
    title="a roughness index is asked for on a short stretch",
    grade=Grade.CAUTION,
    basis="published",
    needs=("smoothness.index", "smoothness.limit"),
    quiet_after=("index-instrument", "index-unit", "runway-roughness-index"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area with a stretch that is short for its roughness index."""
    for area, ride in rides(job):
        if ride.index not in ROUGHNESS_INDEXES or ride.partial_segment is not None:
            continue
        short = [each for each in area.limits if 0 < _length(each) < _least(job)]
        if not short:
            continue
        setting = job.settings and job.settings.shortest_ride_length
        against = (
            f"the setting shortest_ride_length, {setting}"
            if setting
            else "the 528 ft of a full segment"
        )
        length = show(_length(short[0]), given(short[0].start).unit)
        says = (
            f"{ride.index} {ride.limit} is asked of a stretch from {short[0].start} to "
            f"{short[0].end} ({length}), which is shorter than {against}."
        )
        at = [evidence(ride, "limit", "smoothness limit")]
        at += [evidence(each, "start", "start of the stretch") for each in short]
        settle = ("a straightedge on short stretches", "a rule for partial segments")
        yield RULE.finding(area, says, at, settle)


def _length(stretch: Limits) -> Fraction:
    return stretch_length(stretch) or Fraction(0)


def _least(job: Job) -> Fraction:
    own = job.settings and job.settings.shortest_ride_length
    return own.amounts[0].base if own else _SEGMENT
