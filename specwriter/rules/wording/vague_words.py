"""Words without a measure.

Looks at
    Texts of the job: adequate, reasonable, as necessary, approximately, minor, should and so on.

Why it matters
    A word that two people read in two ways is settled by the one with more patience. A number,
    a place or a condition is settled by reading.

Conflict
    areas.mainline.testing.texture.remedy: regrind as necessary

Settled
    areas.mainline.testing.texture.remedy: regrind the lot once

How to settle it
    Write the number, the place or the condition that is meant.

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
    title="a word without a measure",
    grade=Grade.CAUTION,
    basis="wording",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each word, with every text that uses it."""
    for words, (flag, places) in flagged(job, ("vague", "effort")).items():
        says = f"“{words}”: {flag.reason}."
        yield RULE.finding(None, says, places, (flag.better,))
