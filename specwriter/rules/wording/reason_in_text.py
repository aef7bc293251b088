"""A reason in a text of the contract.

Looks at
    Texts of the job that explain: because, the purpose of, in order to ensure and their like.

Why it matters
    A contract orders and does not explain. A reason is read as a condition: where the reason
    falls away, the duty is argued about. Reasons belong in the memo that goes with the job.

Conflict
    areas.mainline.testing.texture.remedy: regrind the lot because the lands are noisy

Settled
    areas.mainline.testing.texture.remedy: regrind the lot

How to settle it
    Take the reason out of the text and give it under reasons, which the rationale memo prints.

Sources
    FHWA Technical Advisory HIAM-20, Attachment 4, 2010: no explanations in the specification
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.word_list import flagged

RULE = Rule(
    title="a reason stands in the text",
    grade=Grade.NOTE,
    basis="wording",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each word, with every text that uses it."""
    for words, (flag, places) in flagged(job, ("reason",)).items():
        says = f"“{words}”: {flag.reason}."
        yield RULE.finding(None, says, places, (flag.better,))
