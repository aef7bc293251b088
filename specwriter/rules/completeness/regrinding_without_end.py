"""A remedy that cuts again without end.

Looks at
    Remedies that cut until a limit is met or as often as it takes, in areas where the depth of
    removal, the cover or the depth of the groove is limited.

Why it matters
    One limit is met by breaking another. The contractor who stops at the depth limit has not done
    the remedy, and the one who does it has thinned the slab.

Conflict
    areas.mainline.smoothness.test.remedy: regrind until the limit is met

Settled
    areas.mainline.smoothness.test.remedy: regrind once within the depth limit

How to settle it
    Say how often it is cut again, that the depth limit holds, and what follows when both cannot
    be met.

Sources
    Maryland Standard Specifications 509, undated copy: a total depth of at most 1/2 in
    common practice, no source: a remedy keeps the other limits and has an end
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.texts import Text, texts

_CUTS = re.compile(r"\b(?:re-?)?(?:grind|saw|groove|cut|mill)\b", re.IGNORECASE)
_ENDLESS = re.compile(
    r"\buntil\b|\bas (?:often|many times) as\b|\brepeatedly\b|\bas needed to\b", re.IGNORECASE
)
_KEPT = re.compile(r"\b(?:depth|cover|removal)\b|\bat most\b|\bno more than\b", re.IGNORECASE)

RULE = Rule(
    title="the remedy cuts again without end",
    grade=Grade.CAUTION,
    basis="practice",
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each remedy without end in an area with a limit on what is cut."""
    for text in texts(job):
        if text.label != "remedy" or text.area is None or not _endless(text):
            continue
        area = job.areas[text.area]
        if limit := _limit(area):
            says = f"The remedy is to {text.words}, and the {limit.label} is {limit.written}."
            settle = ("once, within the limit on depth, and what follows when that is not enough",)
            yield RULE.finding(area, says, [text.evidence(), limit], settle)


def _endless(text: Text) -> bool:
    words = text.words
    return bool(_CUTS.search(words) and _ENDLESS.search(words)) and not _KEPT.search(words)


def _limit(area: Area) -> Evidence | None:
    removal, groove = area.removal, area.groove
    if removal is not None and removal.depth is not None:
        return evidence(removal, "depth", "depth of removal")
    if removal is not None and removal.cover_after is not None:
        return evidence(removal, "cover_after", "cover to steel after cutting")
    if groove is not None and groove.depth is not None:
        return evidence(groove, "depth", "groove depth")
    return None
