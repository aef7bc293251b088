"""A list that is not closed.

Looks at
    Texts of the job: etc., and so on, such as, including but not limited to.

Why it matters
    An open list has a price for what stands in it and a dispute for what does not. In payment
    text it decides who pays.

Conflict
    pay_items.grinding.includes: ["water, blades, etc."]

Settled
    pay_items.grinding.includes: [water, blades, residue haul]

How to settle it
    Write the whole list.

Sources
    FHWA Technical Advisory HIAM-20, Attachment 3, 2010: the inspector can tell from the text alone
    common practice, no source: the words of the list are taught to be avoided
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.word_list import flagged

RULE = Rule(
    title="a list is not closed",
    grade=Grade.OPEN,
    basis="wording",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each word, with every text that uses it."""
    for words, (flag, places) in flagged(job, ("list",)).items():
        says = f"“{words}”: {flag.reason}."
        yield RULE.finding(None, says, places, (flag.better,))
