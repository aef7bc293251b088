"""A standard named without its year.

Looks at
    Texts of the job that name a standard, outside the method of a test, which has a key for its
    edition.

Why it matters
    A number without a year is whatever was printed last. The clause of one edition can be about
    something else in the next.

Conflict
    areas.mainline.testing.texture.where: places chosen by ASTM D3665

Settled
    areas.mainline.testing.texture.where: places chosen by ASTM D3665-12

How to settle it
    Add the year.
    Where the general provisions fix the edition at advertisement, say so with the setting
    undated_references.

Sources
    Iowa DOT Standard Specifications, 2008 and 2009: section 2317 is about decks, then pavements
    common practice, no source: a reference has a date, or one rule fixes all dates
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.texts import texts

_STANDARD = re.compile(r"\b(?:ASTM|AASHTO|ISO(?:/TS)?|EN|ACI)\s+(?:[A-Z]{1,2}\s?)?\d+")
_DATED = re.compile(r"(?:-\d+)*?(?:[-:]\d{2,4}|\s*\(?,?\s*\d{4})")

RULE = Rule(
    title="a standard is named without its year",
    grade=Grade.OPEN,
    basis="wording",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each undated standard, with every text that names it."""
    if job.settings is not None and job.settings.undated_references == "edition_at_advertisement":
        return
    places: dict[str, list[Evidence]] = {}
    for text in texts(job):
        if text.label == "method":
            continue
        for found in _STANDARD.finditer(text.words):
            if not _DATED.match(text.words, found.end()):
                at = text.evidence(found.start())
                places.setdefault(" ".join(found.group().split()), []).append(at)
    for name, some in places.items():
        says = f"{name} is named without its year."
        if job.settings is not None and job.settings.undated_references:
            says += " The setting undated_references is refused."
        settle = ("add the year", "undated_references: edition_at_advertisement")
        yield RULE.finding(None, says, some, settle)
