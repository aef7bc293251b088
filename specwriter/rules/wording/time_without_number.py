"""A time without a number.

Looks at
    Texts of the job: immediately, promptly, as soon as possible, periodically and their like.

Why it matters
    Promptly is an hour to the agency and a week to the contractor. Where a number stands, the
    clock decides.

Conflict
    areas.mainline.testing.texture.when: as soon as possible after grinding

Settled
    areas.mainline.testing.texture.when: within 24 hours after grinding

How to settle it
    Write the minutes, hours or days, and the event they count from.

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
    title="a time without a number",
    grade=Grade.CAUTION,
    basis="wording",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each word, with every text that uses it."""
    for words, (flag, places) in flagged(job, ("time",)).items():
        says = f"“{words}”: {flag.reason}."
        yield RULE.finding(None, says, places, (flag.better,))
