"""A large step of pay between two neighbouring results.

Looks at
    The change of pay from one row of the pay table to the next, where no correction follows.

Why it matters
    Two runs of one profiler over one lane differ by more than a tenth of an inch per mile.
    Where a tenth costs more than a tenth of the price, each segment near the step is a dispute.

Conflict
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 60.0 in/mi, pay: 103 percent}
        - {index: 60.1 in/mi to 80.0 in/mi, pay: 100 percent}
        - {index: at least 80.1 in/mi, pay: 75 percent}

Settled
    areas.mainline.smoothness.index: MRI
    areas.mainline.smoothness.pay_adjustment:
      schedule: table
      bands:
        - {index: at most 60.0 in/mi, pay: 103 percent}
        - {index: 60.1 in/mi to 80.0 in/mi, pay: 75 percent to 100 percent}
        - {index: at least 80.1 in/mi, pay: 75 percent}

How to settle it
    Put rows between the two, or let pay run on a line (75 percent to 100 percent).
    A house that has its own figure gives it as the setting pay_step.

Sources
    common practice, no source: a step of more than 10 percent or $200 a segment is disputed
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.pay_schedule._table import NEEDS, Table, tables
from specwriter.rules.rule import Rule, evidence
from specwriter.trade.pay_schedule import Step, steps

RULE = Rule(
    title="one tenth of the index moves a large sum",
    grade=Grade.CAUTION,
    basis="practice",
    needs=NEEDS,
    quiet_after=("pay-rises-with-roughness", "pay-rows-overlap", "pay-share-or-addition"),
)

_LARGE = {"percent": Fraction(1, 10), "money": Fraction(200)}


def check(job: Job) -> Iterator[Finding]:
    """One finding for the largest step of each table that is large."""
    own = job.settings.pay_step if job.settings else None
    limits = _LARGE | ({"percent": own.amounts[-1].base} if own else {})
    for table in tables(job):
        large = [step for step in steps(table.rows) if _is_large(table, step, limits)]
        if large:
            yield _finding(job, table, min(large, key=lambda step: step.change))


def _is_large(table: Table, step: Step, limits: Mapping[str, Fraction]) -> bool:
    if step.rougher.corrective or not table.same_kind(step):
        return False
    threshold = limits.get(_kind(table, step))
    return threshold is not None and -step.change > threshold


def _kind(table: Table, step: Step) -> str:
    return table.kind(step.rougher if step.after else step.smoother)


def _finding(job: Job, table: Table, step: Step) -> Finding:
    first, second = (table.bands[row.number].pay for row in (step.smoother, step.rougher))
    at = table.written(step.index, step.rougher)
    says = f"At {at} pay falls in one step, from {first} to {second}."
    settle = (
        "put rows between the two",
        "let pay run on a line within a row, such as 90 percent to 100 percent",
    )
    places = table.at((step.smoother, step.rougher), "pay")
    settings = job.settings
    if settings and settings.pay_step and _kind(table, step) == "percent":
        says += f" The setting pay_step is {settings.pay_step}."
        places = [*places, evidence(settings, "pay_step", "setting pay_step")]
    return RULE.finding(table.area, says, places, settle)
