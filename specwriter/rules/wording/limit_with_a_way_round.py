"""A limit with a way round it.

Looks at
    Texts of the job: unless otherwise directed, except as approved and their like.

Why it matters
    A limit that holds unless somebody says otherwise is no limit that can be priced. Where an
    exception is known, it has a name and a place.

Conflict
    areas.mainline.testing.texture.remedy: "regrind, unless otherwise directed"

Settled
    areas.mainline.testing.texture.remedy: "regrind, but not within 25 ft of a bridge joint"

How to settle it
    Name the exception, or take the words out.

Sources
    FHWA plain-language peer conference report, App. E, undated: no authorised exception to a limit
    common practice, no source: an exception is named
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.word_list import flagged

RULE = Rule(
    title="a limit has a way round it",
    grade=Grade.CAUTION,
    basis="wording",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each word, with every text that uses it."""
    for words, (flag, places) in flagged(job, ("exception",)).items():
        says = f"“{words}”: {flag.reason}."
        yield RULE.finding(None, says, places, (flag.better,))
