"""A bump limit of the profilograph taken from the other kind of pavement.

Looks at
    The height and base of bumps under a profile index, and the place of the area.

Why it matters
    Highway work has 0.3 in in 25 ft, military airfields 0.4 in. Each is tuned to its own limits,
    and the looser one on a highway lets bumps pass that its limits do not expect.

Conflict
    areas.mainline.smoothness.index: PI
    areas.mainline.smoothness.blanking_band: 0.2 in
    areas.mainline.smoothness.localized: {limit: at most 0.4 in, base: 25 ft}

Settled
    areas.mainline.smoothness.index: PI
    areas.mainline.smoothness.blanking_band: 0.2 in
    areas.mainline.smoothness.localized: {limit: at most 0.3 in, base: 25 ft}

How to settle it
    Take 0.3 in for roads and 0.4 in for airfields, both over 25 ft.

Sources
    Florida DOT Standard Specifications, section 400-15.2.5.5: 0.3 in from a 25 ft chord
    UFGS 02753: 0.4 in over 25 ft
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import parse
from specwriter.rules.places import AIRFIELD, rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the bump limit is that of another kind of pavement",
    grade=Grade.CAUTION,
    basis="published",
    needs=("smoothness.index", "smoothness.localized.limit"),
    quiet_after=("index-instrument",),
)

_HEIGHTS = {"road": "0.3 in", "airfield": "0.4 in"}


def check(job: Job) -> Iterator[Finding]:
    """One finding for each bump limit that is the usual one of the other kind."""
    for area, ride in rides(job):
        local = given(ride.localized)
        limit = given(local.limit)
        if ride.index != "PI" or limit.dimension != "length":
            continue
        kind, other = ("airfield", "road") if area.place in AIRFIELD else ("road", "airfield")
        if limit.interval.high != parse(_HEIGHTS[other]).interval.high:
            continue
        says = (
            f"{limit} is the bump limit of {'an' if other == 'airfield' else 'a'} {other}; "
            f"{'an' if kind == 'airfield' else 'a'} {kind} has {_HEIGHTS[kind]} in 25 ft."
        )
        at = [evidence(local, "limit", "bump limit"), evidence(area, "place", "place")]
        yield RULE.finding(area, says, at, (f"at most {_HEIGHTS[kind]} in 25 ft",))
