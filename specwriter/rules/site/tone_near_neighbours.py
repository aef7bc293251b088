"""Evenly spaced transverse grooves beside neighbours who hear them.

Looks at
    Transverse grooves of one spacing where noise-sensitive neighbours are near.

Why it matters
    A tyre strikes evenly spaced transverse grooves at one rate, which people hear as a whine. The
    same grooves at random spacings spread it over many rates, and longitudinal ones have none.

Conflict
    conditions.noise_sensitive_neighbours: true
    conditions.posted_speed: 55 mph
    areas.mainline.groove.pattern: uniform

Settled
    conditions.noise_sensitive_neighbours: true
    conditions.posted_speed: 55 mph
    areas.mainline.groove.pattern: random

How to settle it
    Space the grooves at random, or cut them along the lane.

Sources
    NCHRP Report 634, p. 92, 2009: texture and noise of concrete surfaces
    arithmetic: tone = speed / spacing
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import Quantity
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="evenly spaced transverse grooves whine near neighbours",
    grade=Grade.CAUTION,
    basis="published",
    needs=("conditions.noise_sensitive_neighbours", "groove.pattern", "groove.spacing"),
    applies_to=("transverse_grooving",),
    base="transverse_grooving",
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each uniform transverse pattern near noise-sensitive neighbours."""
    conditions = job.conditions
    if not conditions.noise_sensitive_neighbours:
        return
    for area in job.areas.values():
        groove = given(area.groove)
        if groove.pattern != "uniform":
            continue
        says = (
            f"Transverse grooves of one spacing, {groove.spacing}, give a tone"
            f"{_tone(job, given(groove.spacing))}, and people whom noise disturbs are near."
        )
        at = [
            evidence(groove, "pattern", "pattern"),
            evidence(groove, "spacing", "groove spacing"),
            evidence(conditions, "noise_sensitive_neighbours", "noise-sensitive neighbours"),
        ]
        yield RULE.finding(area, says, at, ("a random pattern", "longitudinal grooves"))


def _tone(job: Job, spacing: Quantity) -> str:
    """The rate at which a tyre strikes the grooves, where the speed is known."""
    speed, step = job.conditions.posted_speed, spacing.nominal
    if speed is None or speed.nominal is None or not step:
        return ""
    return f" of about {round(speed.nominal / step, -1)} Hz at {speed}"
