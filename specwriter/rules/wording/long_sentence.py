"""A sentence that holds more than one idea.

Looks at
    Sentences of more than 40 words in texts of the job.

Why it matters
    In a long sentence nobody knows how far the condition at its beginning reaches. The inspector
    remembers the end of it, and the contractor the part that suits.

Conflict
    areas.mainline.testing.texture.remedy: regrind the lot within seven days to the depth that the
        removal allows and test it again at ten other places and when the mean of the ten readings
        is below the limit again then take the lot out of the pay quantity and report it

Settled
    areas.mainline.testing.texture.remedy: Regrind the lot within seven days. Test it again at ten
        other places. Where the mean is below the limit again, the lot is not paid.

How to settle it
    Write one sentence for each thing that is to be done.

Sources
    FHWA Technical Advisory HIAM-20, Attachment 3, 2010: one idea in a sentence
    common practice, no source: the number of words
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.texts import texts

MOST_WORDS = 40
"""Words of a sentence that is still read at once: common practice, no source."""

RULE = Rule(
    title="a sentence holds more than one idea",
    grade=Grade.NOTE,
    basis="wording",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each text with a long sentence, at the first one."""
    for text in texts(job):
        for found in re.finditer(r"[^.;:]+(?:[.;:](?=\S)[^.;:]*)*", text.words):
            count = len(found.group().split())
            if count > MOST_WORDS:
                says = f"A sentence has {count} words; {MOST_WORDS} are read at once."
                area = job.areas.get(text.area or "")
                at = text.evidence(found.start())
                yield RULE.finding(area, says, [at], ("split it, one idea in a sentence",))
                break
