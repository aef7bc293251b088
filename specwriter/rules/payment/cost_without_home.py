"""A cost that the job brings and no price holds.

Looks at
    Traffic control, night lighting, slab repairs, joint resealing, marking, loops, markers,
    feathering and the tests of the contractor, where the facts of the job bring them; and whether
    a list of included or excluded work or a pay item names them.

Why it matters
    Every cost has exactly one home: its own pay item, the price of another, or a section that pays
    elsewhere. A cost without one is bid by nobody and claimed by the one who had to do the work.

Conflict
    conditions.loop_detectors: true

Settled
    conditions.loop_detectors: true
    pay_items.grinding.includes: [water, residue, tests, protection of detector loops]

How to settle it
    Name each cost in the includes or the excludes of a pay item, or give it an item of its own.

Sources
    Texas DOT PS&E specification checklist, undated: all work is called by an item
    common practice, no source: the list of costs that often have no home
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.payment._areas import paid_areas
from specwriter.rules.payment._costs import Cost, costs
from specwriter.rules.prose import listed
from specwriter.rules.rule import Rule

RULE = Rule(
    title="costs without a home",
    grade=Grade.OPEN,
    basis="practice",
    gap=True,
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for all costs that no pay item names."""
    prices = [item for item in job.pay_items.values() if paid_areas(job, item.id)]
    if not prices or not all(item.includes for item in prices):
        return  # A price or its list is missing and reported; what it will name cannot be known.
    homeless = [cost for cost in costs(job) if not _has_home(job, cost)]
    if not homeless:
        return
    names = listed([cost.name for cost in homeless])
    says = f"The job brings these costs, and no pay item includes or excludes them: {names}."
    at = [cost.because for cost in homeless]
    settle = (
        "name each under the includes or the excludes of a pay item",
        "give it a pay item of its own",
    )
    yield RULE.finding(None, says, at, settle)


def _has_home(job: Job, cost: Cost) -> bool:
    return any(
        cost.named_in(text)
        for item in job.pay_items.values()
        for text in (item.name, *item.includes, *item.excludes)
    )
