"""Night work said or denied against the hours of the windows.

Looks at
    Whether the work is done at night, against the clock hours of the work windows.

Why it matters
    Lighting, noise, dew and the reading of gauges follow from night work. Hours that say the
    opposite leave the bidder to choose, and the inspector without lamps.

Conflict
    conditions.night_work: false
    conditions.work_windows: [{days: Monday to Thursday, start: "21:00", end: "05:30"}]

Settled
    conditions.night_work: true
    conditions.work_windows: [{days: Monday to Thursday, start: "21:00", end: "05:30"}]

How to settle it
    Correct the hours, or say that the work is done at night.

Sources
    arithmetic: a window that ends before it starts runs through midnight
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.model.conditions import WorkWindow
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.times import crosses_midnight

RULE = Rule(
    title="night work and work windows disagree",
    grade=Grade.CONFLICT,
    basis="arithmetic",
    needs=("conditions.night_work", "conditions.work_windows"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for windows through midnight without night work, or the other way round."""
    conditions = job.conditions
    timed = [each for each in conditions.work_windows if each.start and each.end]
    nights = [each for each in timed if crosses_midnight(each)]
    wrong = nights if not conditions.night_work else _days(timed, nights)
    if not wrong:
        return
    says = (
        "The windows run through midnight, and the work is said not to be done at night."
        if nights
        else "The work is said to be done at night, and every window lies in the day."
    )
    at = [evidence(conditions, "night_work", "night work")]
    at += [evidence(each, "start", "start of the window") for each in wrong]
    yield RULE.finding(None, says, at, ("correct the hours", "correct night_work"))


def _days(timed: list[WorkWindow], nights: list[WorkWindow]) -> list[WorkWindow]:
    """The windows, when each lies between 06:00 and 20:00."""
    day = all("06:00" <= given(each.start) < given(each.end) <= "20:00" for each in timed)
    return timed if timed and not nights and day else []
