"""A document that another one has replaced, cited as if it were in force.

Looks at
    Every text of the job that names a document by its number.

Why it matters
    A laboratory follows the document in force, an expert the one in the contract. Where they
    differ, results cannot be held against the limit that was set for the other.

Conflict
    areas.mainline.noise:
      measure: OBSI
      at_most: 102 dB(A)
      speed: 60 mph
      test: {method: AASHTO TP 76, when: in dry weather at a stated air temperature}

Settled
    areas.mainline.noise:
      measure: OBSI
      at_most: 102 dB(A)
      speed: 60 mph
      test: {method: AASHTO T 360, when: in dry weather at a stated air temperature}

How to settle it
    Cite the document that replaced it, with its edition, and look whether the limit still holds.

Sources
    FHWA T 5040.36, item 2, 2005: replaces T 5140.10 of 1979
    AASHTO R 56-10: was PP 49
    AASHTO T 360-16(2020): was TP 76
    AASHTO M 328, R 54 and R 57 for MP 11, PP 51 and PP 50; PP 68 on images: memory, unverified
    ASTM E1960-03e1, note e1, August 2005: its equations correct those of the first print of 2003
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.texts import texts

RULE = Rule(
    title="a superseded document",
    grade=Grade.CAUTION,
    basis="published",
)

_REPLACED: tuple[tuple[str, str, str], ...] = (
    (r"\bT ?5140\.10\b", "FHWA T 5040.36", "was cancelled in 2005"),
    (r"\bTP ?76\b", "AASHTO T 360", "was a provisional number"),
    (r"\bPP ?49\b", "AASHTO R 56", "was a provisional number"),
    (r"\bPP ?50\b", "AASHTO R 57", "was a provisional number (memory, unverified)"),
    (r"\bPP ?51\b", "AASHTO R 54", "was a provisional number (memory, unverified)"),
    (r"\bMP ?11\b", "AASHTO M 328", "was a provisional number (memory, unverified)"),
    (
        r"\bPP ?68\b",
        "AASHTO R 56",
        "is about images of pavement distress, not about ride (memory, unverified)",
    ),
    (r"\bE ?1960-03(?!e)", "ASTM E1960-07(2015)", "was printed with wrong equations before 03e1"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each text that names a replaced document."""
    for text in texts(job):
        for pattern, now, why in _REPLACED:
            if match := re.search(pattern, text.words, re.IGNORECASE):
                says = f"{match[0]} {why}; {now} takes its place."
                area = job.areas.get(text.area or "")
                settle = (f"cite {now} with its edition",)
                yield RULE.finding(area, says, (text.evidence(),), settle)
