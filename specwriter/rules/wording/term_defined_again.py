"""A term of the provision that a text defines once more.

Looks at
    Texts of the job that say what a term means, where the provision defines that term itself: lot,
    land, pass, residue, segment, shift, spacing and their like.

Why it matters
    Two definitions of one word are two contracts. A lot of one shift and a lot of 1,000 ft fail on
    different readings, and each side quotes the definition that suits it.

Conflict
    areas.mainline.testing.texture.lot: each shift (a lot means 1000 ft of lane)

Settled
    areas.mainline.testing.texture.lot: each 1,000 ft of lane

How to settle it
    Take the second definition out, or use another word for the other thing.

Sources
    FHWA Technical Advisory HIAM-20, Attachment 3, 2010: one term for one thing
    common practice, no source: a term is defined once
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.texts import texts

RULE = Rule(
    title="a term is defined a second time",
    grade=Grade.CAUTION,
    basis="wording",
)

DEFINED = (
    "agency",
    "area",
    "contractor",
    "day",
    "groove",
    "groove depth",
    "groove width",
    "land",
    "lane",
    "lot",
    "pass",
    "residue",
    "segment",
    "shift",
    "spacing",
    "standard specifications",
    "stretch",
)
"""The terms that the clause on definitions explains; a test holds the two together."""

_MEANS = re.compile(
    rf"\b({'|'.join(sorted(DEFINED, key=len, reverse=True))})\W{{0,3}}"
    r"\s*(?:(?:shall |will )?means?|(?:is|are) defined as|is understood to be)\b",
    re.IGNORECASE,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each text that defines a term of the provision."""
    for text in texts(job):
        if found := _MEANS.search(text.words):
            says = f"The text defines {found[1].lower()}, which the provision defines itself."
            settle = ("take the second definition out", "use another word for the other thing")
            area = job.areas.get(text.area or "")
            yield RULE.finding(area, says, [text.evidence(found.start())], settle)
