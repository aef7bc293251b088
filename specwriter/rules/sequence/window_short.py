"""A work window too short for the work of a shift.

Looks at
    The length of each work window, against the shortest window of the house, or without such a
    setting against 3 h.

Why it matters
    A shift is closing, setting up, cutting, cleaning, testing, drying and opening. In a short
    window most of it is not cutting, and a square yard costs more.

Conflict
    conditions.work_windows: [{days: daily, start: "23:00", end: "03:00"}]
    settings.shortest_window: 6 h

Settled
    conditions.work_windows: [{days: daily, start: "21:00", end: "05:00"}]
    settings.shortest_window: 6 h

How to settle it
    Lengthen the window, or accept the finding with the reason.

Sources
    common practice, no source: the shortest window that works is a matter of the house
    common practice, no source: in less than 3 h hardly an hour of cutting is left
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import UNITS, parse, show
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.times import hours

_LEAST = parse("3 h")
"""Common practice, no source."""

RULE = Rule(
    title="a work window is short",
    grade=Grade.CAUTION,
    basis="practice",
    needs=("conditions.work_windows",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding that names the windows shorter than the setting, or than 3 h."""
    setting = job.settings.shortest_window if job.settings else None
    least = setting or _LEAST
    short = [
        each
        for each in job.conditions.work_windows
        if each.start and each.end and hours(each) * 3600 < least.amounts[0].base
    ]
    if not short:
        return
    length = show(hours(short[0]) * 3600, UNITS["h"])
    against = f"the setting shortest_window is {setting}" if setting else f"{least} is little"
    says = f"The window from {short[0].start} to {short[0].end} lasts {length}; {against}."
    at = [evidence(each, "start", "start of the window") for each in short]
    if setting:
        at.append(evidence(given(job.settings), "shortest_window", "setting shortest_window"))
    yield RULE.finding(None, says, at, (f"a window of {least} or more",))
