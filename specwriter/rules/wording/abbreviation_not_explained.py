"""An abbreviation that nothing explains.

Looks at
    Capital letters in texts of the job that are no unit, no issuer of documents, no abbreviation
    of the provision, and are not explained in the text that holds them.

Why it matters
    ALR is a localized roughness to one reader and an agreed lane restriction to another. What a
    bidder does not understand is priced as a risk, or not at all.

Conflict
    areas.mainline.testing.texture.remedy: regrind each ALR

Settled
    areas.mainline.testing.texture.remedy: regrind each area of localized roughness (ALR)

How to settle it
    Write the words, or the words once with the abbreviation behind them.

Sources
    Missouri DOT guidelines to writing specifications, undated: abbreviations are defined ones
    common practice, no source: an abbreviation is explained where it first stands
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.texts import texts

RULE = Rule(
    title="an abbreviation is not explained",
    grade=Grade.NOTE,
    basis="wording",
)

_COMMON = (
    "AC ACI AM AASHTO ANSI ASTM AWG CFR CMS CRCP DC DOT EA EN EPA FAA FHWA FOD GPS HRI ICAO ID IRI "
    "ISO LED LF LS MPD MRI MTD ETD NCHRP NOTAM OBSI OSHA PCC PE PH PI PM PSI PVC QA QC QR RPM SF "
    "SN SP SRTT SY US USA USDA UFC UFGS UV VHF"
)
"""Units, issuers of documents and words that the trade writes in capitals (common practice)."""

_KNOWN = frozenset(_COMMON.split())
_CAPITALS = re.compile(r"(?<![\w.&/-])[A-Z]{2,5}(?![\w&/-])(?!\s?-?\d)")


def check(job: Job) -> Iterator[Finding]:
    """One finding for each abbreviation, with every text that uses it."""
    places: dict[str, list[Evidence]] = {}
    explained: set[str] = set()
    for text in texts(job):
        if text.words.isupper():
            continue
        for found in _CAPITALS.finditer(text.words):
            around = text.words[max(found.start() - 1, 0) : found.end() + 1]
            if around.startswith("(") and around.endswith(")"):
                explained.add(found[0])
            elif found[0] not in _KNOWN:
                places.setdefault(found[0], []).append(text.evidence(found.start()))
    for name, some in places.items():
        if name not in explained:
            settle = ("write the words", "explain it where it first stands")
            yield RULE.finding(None, f"{name} is not explained.", some, settle)
