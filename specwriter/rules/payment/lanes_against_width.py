"""A width that does not hold the lanes.

Looks at
    The lanes that a stretch names, the width of a lane, and the width of the stretch.

Why it matters
    The lanes say what is cut, the width says what is paid. Where a lane was added to the one and
    not to the other, the quantity is wrong by that lane. A width that holds more than the lanes is
    left alone: shoulders and gores are cut with them.

Conflict
    areas.mainline.limits.0.lanes: 1 to 3

Settled
    areas.mainline.limits.0.lanes: 1 and 2

How to settle it
    Correct the lanes, the width of the stretch or that of a lane.

Sources
    arithmetic: lanes x width of a lane, less half a lane
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job, Limits
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the width does not hold the lanes",
    grade=Grade.CAUTION,
    basis="arithmetic",
    needs=("conditions.lane_width", "limits"),
    by_site=True,
    quiet_after=("quantity-against-limits", "stretch-of-no-length"),
    base="complete/diamond_grinding",
)

_RANGE = re.compile(r"(\d+) (?:to|through) (\d+)|(\d+)[-–](\d+)")


def check(job: Job) -> Iterator[Finding]:
    """One finding for each stretch that is too narrow for its lanes."""
    lane = given(job.conditions.lane_width)
    for area in job.areas.values():
        for stretch in area.limits:
            lanes = _lanes(stretch)
            if not lanes or stretch.width is None or _fits(stretch, lanes, lane.nominal):
                continue
            says = (
                f"The stretch is {stretch.width} wide and names {lanes} lanes; "
                f"the lane width is {lane}."
            )
            at = [
                evidence(stretch, "lanes", "lanes"),
                evidence(stretch, "width", "width"),
                evidence(job.conditions, "lane_width", "lane width"),
            ]
            yield RULE.finding(area, says, at, ("correct the lanes", "correct the width"))


def _lanes(stretch: Limits) -> int:
    """How many lanes the text numbers; 0 for none."""
    text = stretch.lanes or ""
    named = {int(each) for each in re.findall(r"\d+", text)}
    for found in _RANGE.findall(text):
        first, last = (int(each) for each in found if each)
        named |= set(range(first, last + 1))
    return len(named)


def _fits(stretch: Limits, lanes: int, lane: Fraction | None) -> bool:
    width = given(stretch.width).nominal
    if width is None or lane is None:
        return True
    return width >= lane * (2 * lanes - 1) / 2
