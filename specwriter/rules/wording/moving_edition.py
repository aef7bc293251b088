"""A document that changes without the contract.

Looks at
    Texts of the job and the editions of its methods: latest edition, current version, applicable
    standards, industry standards.

Why it matters
    The requirement of the day of the bid and that of the day of the test are two. Which one holds
    is then a matter of luck.

Conflict
    areas.mainline.testing.texture.method: the latest edition of the test manual

Settled
    areas.mainline.testing.texture.method: the test manual of 2024

How to settle it
    Name the document with its year.

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
    title="a document changes without the contract",
    grade=Grade.OPEN,
    basis="wording",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each word, with every text that uses it."""
    for words, (flag, places) in flagged(job, ("edition",), names=True).items():
        says = f"“{words}”: {flag.reason}."
        yield RULE.finding(None, says, places, (flag.better,))
