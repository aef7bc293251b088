"""A duty written in another way than the house writes it.

Looks at
    Texts of the job against the setting duty_verb: shall, must, or the imperative. A duty of the
    contractor with will is written in none of these ways.

Why it matters
    Where shall, must and the imperative stand side by side, readers take them for three grades of
    duty.

Conflict
    settings.duty_verb: imperative
    areas.mainline.testing.texture.remedy: the Contractor shall regrind the lot

Settled
    settings.duty_verb: imperative
    areas.mainline.testing.texture.remedy: regrind the lot

How to settle it
    Write the duty as the house does.

Sources
    FHWA Technical Advisory HIAM-20, Attachments 3 and 4, 2010: active, imperative; shall for duties
    FHWA Technical Advisory HIAM-20, Attachment 4, 2010: will for what the agency does
    California DOT Standard Specifications 42-2, 2015: must for duties
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given
from specwriter.rules.texts import texts

_VERB = re.compile(r"\b(?:shall|must)\b|(?<=\bcontractor )will\b", re.IGNORECASE)

RULE = Rule(
    title="the duty is not written as the house writes it",
    grade=Grade.NOTE,
    basis="wording",
    needs=("settings.duty_verb",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding that names every text with another duty verb than that of the house."""
    settings = given(job.settings)
    house = given(settings.duty_verb)
    places = [each for each in texts(job) if _other_verbs(each.words, house)]
    if not places:
        return
    verbs = sorted({verb for each in places for verb in _other_verbs(each.words, house)})
    says = f"The texts say {' and '.join(verbs)}; the setting duty_verb is {house}."
    at = [each.evidence(given(_VERB.search(each.words)).start()) for each in places]
    at.append(evidence(settings, "duty_verb", "setting duty_verb"))
    yield RULE.finding(None, says, at, (f"write duties with {house}",))


def _other_verbs(text: str, house: str) -> set[str]:
    return {found.lower() for found in _VERB.findall(text)} - {house}
