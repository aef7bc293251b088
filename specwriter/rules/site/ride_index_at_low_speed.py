"""A roughness index where traffic is slow.

Looks at
    A limit on IRI, MRI or HRI on a ramp, or under a posted speed below 45 mph, without a list of
    the places left out.

Why it matters
    The index stands for the ride at 50 mph. Slow streets and ramps have castings, junctions, kerbs
    and warped sections that count as roughness, and a profiler cannot hold its speed on them.

Conflict
    conditions.posted_speed: 30 mph
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi

Settled
    conditions.posted_speed: 30 mph
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.limit: at most 75 in/mi
    areas.mainline.smoothness.exclusions: 25 ft on each side of a casting or a junction

How to settle it
    Name the places that are left out, or judge the slow lengths by straightedge.
    A house that has its own speed gives it as the setting lowest_ride_speed.

Sources
    Iowa DOT smoothness schedules, undated: a schedule of their own at 45 mph and below
    Minnesota DOT smoothness notes, 2006-2008, as presented: no index below 50 mph, later 42 mph
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import AIRFIELD, ROUGHNESS_INDEXES, rides
from specwriter.rules.rule import Rule, evidence

_SLOW = Fraction(45) * Fraction("1609.344") / 3600
"""45 mph in m/s: the Iowa DOT schedules (undated) treat slower roads apart."""

RULE = Rule(
    title="a roughness index is asked for where traffic is slow",
    grade=Grade.CAUTION,
    basis="published",
    needs=("smoothness.index", "smoothness.limit"),
    quiet_after=("index-instrument", "index-unit", "runway-roughness-index"),
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each slow area with an index limit and no exclusions."""
    speed, least = job.conditions.posted_speed, _least(job)
    for area, ride in rides(job):
        if ride.index not in ROUGHNESS_INDEXES or ride.exclusions or area.place in AIRFIELD:
            continue
        at = [evidence(ride, "limit", "smoothness limit")]
        if area.place == "ramp":
            at.append(evidence(area, "place", "place"))
        elif speed is not None and speed.amounts[-1].base < least:
            at.append(evidence(job.conditions, "posted_speed", "posted speed"))
        else:
            continue
        says = (
            f"{ride.index} {ride.limit} is asked for, the {at[1].label} is {at[1].written}, and "
            "no place is left out."
        )
        if job.settings and job.settings.lowest_ride_speed and area.place != "ramp":
            says += f" The setting lowest_ride_speed is {job.settings.lowest_ride_speed}."
            at.append(evidence(job.settings, "lowest_ride_speed", "setting lowest_ride_speed"))
        settle = ("name the places that are left out", "a straightedge for the slow lengths")
        yield RULE.finding(area, says, at, settle)


def _least(job: Job) -> Fraction:
    """The speed of the house in m/s, or without one that of the published schedules."""
    own = job.settings.lowest_ride_speed if job.settings else None
    return own.amounts[0].base if own else _SLOW
