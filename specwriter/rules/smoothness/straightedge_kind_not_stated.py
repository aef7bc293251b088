"""A straightedge that may rest or roll.

Looks at
    The straightedge and its kind.

Why it matters
    A straightedge at rest finds the gap under its two highest points. One that rolls measures
    at its middle, and is blind to waves of half its length.

Conflict
    areas.mainline.straightedge: {length: 10 ft, tolerance: at most 1/8 in, direction: transverse}

Settled
    areas.mainline.straightedge:
      length: 10 ft
      tolerance: at most 1/8 in
      direction: transverse
      kind: resting

How to settle it
    State the kind: resting or rolling.

Sources
    FHWA section 401.16 Type IV, supplement of August 2014: the gap between two contacts
    project calculation: at its middle a rolling 10 ft straightedge reads waves of 5 ft as flat
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import show_like
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the straightedge may rest or roll",
    grade=Grade.NOTE,
    basis="practice",
    needs=("straightedge.length", "straightedge.tolerance"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each straightedge of unknown kind."""
    for area in job.areas.values():
        edge = given(area.straightedge)
        length = given(edge.length)
        if edge.kind is not None or length.nominal is None:
            continue
        says = (
            f"A rolling straightedge of {length} is blind to waves of "
            f"{show_like(length.nominal / 2, length)}; one at rest does; the job names neither."
        )
        at = [evidence(edge, "length", "length of the straightedge")]
        yield RULE.finding(area, says, at, ("kind: resting", "kind: rolling"))
