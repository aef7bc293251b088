"""A bonus for smoothness, corrective work allowed, and no word on what corrected segments earn.

Looks at
    Pay tables with a bonus, and the remedy of the smoothness test.

Why it matters
    A segment that failed, was ground again and then measures smooth may or may not earn the
    bonus. Contracts differ, and bidders price it either way.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.test.remedy: regrind the segment once
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 45.0 in/mi, pay: $150}
        - {index: at least 45.1 in/mi, pay: $0}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.test.remedy: regrind the segment once
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      after_correction: no_bonus
      bands:
        - {index: at most 45.0 in/mi, pay: $150}
        - {index: at least 45.1 in/mi, pay: $0}

How to settle it
    State in after_correction whether a corrected segment earns the row of its new result or no
    bonus.

Sources
    common practice, no source: contracts answer the question both ways
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.pay_schedule._table import NEEDS, tables
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="whether corrected segments earn a bonus is not stated",
    grade=Grade.OPEN,
    basis="practice",
    needs=("smoothness.test.remedy", *NEEDS),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each table with a bonus whose segments may be corrected."""
    for table in tables(job):
        test = given(table.ride.test)
        bonus = [row for row in table.rows if row.pay and row.pay[0] > 0]
        decided = table.pay.after_correction is not None
        if decided or not bonus or given(test.remedy).strip().lower() == "none":
            continue
        says = (
            f"Row {bonus[0].number + 1} pays {table.bands[bonus[0].number].pay}; a segment that "
            f"fails is corrected ({test.remedy}), and the job does not say whether it then earns "
            "the bonus."
        )
        at = [
            *table.at(bonus[:1], "pay"),
            evidence(test, "remedy", "remedy of the smoothness test"),
        ]
        settle = (
            "after_correction: no_bonus",
            "after_correction: new_result, if the new result earns its row",
        )
        yield RULE.finding(table.area, says, at, settle)
