"""What the general provisions say already, or a price pays for.

Looks at
    Texts of the job: at no additional cost, at the Contractor's expense, no direct payment, as
    shown on the plans, in writing, at the Contractor's option.

Why it matters
    Where one clause says that work is at no additional cost, a reader asks whether the work of
    the other clauses is. What holds for everything is said once, and what costs money is paid
    somewhere.

Conflict
    areas.mainline.testing.texture.remedy: regrind the lot at no additional cost

Settled
    areas.mainline.testing.texture.remedy: regrind the lot once
    pay_items.grinding.includes: [regrinding of lots that fail]

How to settle it
    Name the pay item whose price includes the work, or the sheet, or leave the words out.

Sources
    FHWA plain-language peer conference report, appendix E, 2008: "in writing" and its like repeat
    UFGS 32 01 26.71, 2008: repeats provisions of the contract; the sources differ
    common practice, no source: one phrase for what has no pay item of its own
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.word_list import flagged

RULE = Rule(
    title="a text repeats what the general provisions or the price settle",
    grade=Grade.NOTE,
    basis="wording",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each phrase, with every text that uses it."""
    for words, (flag, places) in flagged(job, ("repeat",)).items():
        says = f"“{words}”: {flag.reason}."
        yield RULE.finding(None, says, places, (flag.better,))
