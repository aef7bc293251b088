"""More runway than the windows allow to groove.

Looks at
    The area of the runway stretches, the hours of the work windows, the days allowed, and a
    published rate of one machine.

Why it matters
    A contract that cannot be finished in the closures it grants ends in claims, or in work at a
    speed at which nobody measures the grooves.

Conflict
    conditions.work_windows: [{days: daily, start: "23:00", end: "05:00"}]
    conditions.days_allowed: 5 days
    areas.runway.limits: [{from: 10+00, to: 110+00, width: 150 ft}]

Settled
    conditions.work_windows: [{days: daily, start: "23:00", end: "05:00"}]
    conditions.days_allowed: 40 days
    areas.runway.limits: [{from: 10+00, to: 110+00, width: 150 ft}]

How to settle it
    Allow more days, longer windows, or say that several machines work at once.

Sources
    DOT/FAA/TC-TN12/7, p. 42, 2012: one machine grooves about 1,000 square yards in an hour
    arithmetic: area / (rate x hours x days)
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from math import ceil

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job, Limits
from specwriter.quantity import UNITS, show
from specwriter.rules.places import stretch_length
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.times import hours

_RATE = 1000 * UNITS["SY"].factor
"""Square metres in an hour: DOT/FAA/TC-TN12/7, p. 42, 2012 (20 ft/min on 7.5 ft)."""

RULE = Rule(
    title="the windows are too short for the area",
    grade=Grade.CAUTION,
    basis="published",
    needs=("conditions.work_windows", "conditions.days_allowed"),
    applies_to=("runway_grooving",),
    base="runway_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for runways whose area one machine cannot groove in all the windows."""
    conditions = job.conditions
    days = given(conditions.days_allowed)
    area = sum(_area(each) for runway in job.areas.values() for each in runway.limits)
    timed = [each for each in conditions.work_windows if each.start and each.end]
    longest = max(map(hours, timed), default=Fraction(0))
    if not area or not longest:
        return
    needed = ceil(area / (_RATE * longest))
    allowed = days.amounts[-1].base / 86400
    if needed <= allowed:
        return
    says = (
        f"The stretches make {show(area, UNITS['SY'], 0)}; in windows of "
        f"{show(longest * 3600, UNITS['h'], 1)} one machine at 1,000 SY an hour needs "
        f"{needed} shifts without a stop, and {days} are allowed."
    )
    at = [
        evidence(conditions, "days_allowed", "days allowed"),
        *(evidence(each, "start", "start of the window") for each in timed),
    ]
    yield RULE.finding(None, says, at, ("more days", "longer windows", "several machines"))


def _area(stretch: Limits) -> Fraction:
    """Plan area of a stretch in square metres, 0 when a side is not given."""
    length = stretch_length(stretch)
    if length is None or stretch.width is None:
        return Fraction(0)
    return length * stretch.width.amounts[0].base
