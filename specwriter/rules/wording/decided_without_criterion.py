"""A decision without a criterion.

Looks at
    Texts of the job that leave a limit to somebody: as directed, to the satisfaction of, or equal.

Why it matters
    Whoever bids must price what somebody else will decide. The careful bidder adds money, the
    others add claims, and the inspector has nothing to point to.

Conflict
    areas.mainline.testing.texture.remedy: regrind as directed by the Agency

Settled
    areas.mainline.testing.texture.remedy: regrind the lot once within the depth limit

How to settle it
    Give the limit, the places or the quantity by which it is decided.

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
    title="somebody decides, and no criterion is given",
    grade=Grade.OPEN,
    basis="wording",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each word, with every text that uses it."""
    for words, (flag, places) in flagged(job, ("decision",)).items():
        says = f"“{words}”: {flag.reason}."
        yield RULE.finding(None, says, places, (flag.better,))
