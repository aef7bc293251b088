"""A pay schedule that leaves out what turns it into money.

Looks at
    Smoothness pay tables: rows, cap, what one row pays for, the segment that is the lot, the time
    of the test, excluded places, and the certification of the instrument.

Why it matters
    Money is computed from the table to the cent, so each of these will be asked for. Without the
    base nobody knows what "98 percent" is a share of; without a cap the bonus has no end;
    without exclusions a manhole frame costs the contractor a segment. Who settles a difference
    between two tests stands in the clause on acceptance.

Conflict
    areas.mainline.smoothness.certification: null
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 60.0 in/mi, pay: $200}
        - {index: 60.1 in/mi to 75.0 in/mi, pay: $0}
      after_correction: no_bonus
      applies_to: each segment of 0.1 mi in each lane
    areas.mainline.smoothness.test.pay_effect: by the pay schedule

Settled
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 60.0 in/mi, pay: $200}
        - {index: 60.1 in/mi to 75.0 in/mi, pay: $0}
      cap: $8,000
      after_correction: no_bonus
      applies_to: each segment of 0.1 mi in each lane
    areas.mainline.smoothness.test.pay_effect: by the pay schedule

How to settle it
    State what is missing, or say that pay is not adjusted.

Sources
    FHWA review guide on pavement smoothness, 1999: device, tester, turnaround and disputes
    common practice, no source: an adjustment has index, device, lot, time, table, cap, exclusions
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.model.results import PayAdjustment, Smoothness
from specwriter.rules.places import rides
from specwriter.rules.prose import listed
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the pay schedule is not complete",
    grade=Grade.OPEN,
    basis="practice",
    needs=("smoothness.pay_adjustment",),
    gap=True,
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pay schedule with everything that it does not say."""
    for area, ride in rides(job):
        pay = given(ride.pay_adjustment)
        if pay.schedule != "table" and not pay.bands:
            continue
        missing = list(_missing(ride, pay))
        if not missing:
            continue
        says = f"Pay is adjusted by a table, and the job does not state {listed(missing)}."
        key = "schedule" if pay.schedule else "bands"
        at = [evidence(pay, key, "pay schedule")] if pay.schedule else []
        at.append(evidence(ride, "index", "smoothness index"))
        settle = ("state what is missing", "smoothness.pay_adjustment.schedule: none")
        yield RULE.finding(area, says, at, settle)


def _missing(ride: Smoothness, pay: PayAdjustment) -> Iterator[str]:
    """What the schedule needs and the job does not give, with the key it belongs under."""
    if not pay.bands:
        yield "the rows of the table (bands)"
    if pay.cap is None:
        yield "the most that may be added or taken off (cap)"
    if pay.applies_to is None:
        yield "what one row pays for (applies_to)"
    if ride.segment is None:
        yield "the segment (segment)"
    if ride.measured is None and (ride.test is None or ride.test.when is None):
        yield "the time of the test (test.when)"
    if ride.exclusions is None:
        yield "the places that are left out (exclusions)"
    if ride.certification is None:
        yield "the certification of the instrument (certification)"
