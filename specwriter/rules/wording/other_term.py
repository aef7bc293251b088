"""A second word for a thing that the provision names otherwise.

Looks at
    Texts of the job that say slurry, test strip, fin or Engineer, where the clauses say residue,
    trial section, land and Agency.

Why it matters
    Two words are taken for two things. A role that the provision does not define can be anybody.

Conflict
    pay_items.grinding.includes: [slurry haul]

Settled
    pay_items.grinding.includes: [residue haul]

How to settle it
    Use the word of the provision, or define the other one in a clause of your own.

Sources
    FHWA Technical Advisory HIAM-20, Attachment 3, 2010: one term for one thing
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, given
from specwriter.rules.texts import matches

_TERMS = (
    (re.compile(r"\b(?:slurry|grindings|swarf)\b", re.IGNORECASE), "residue"),
    (re.compile(r"\b(?:test|control) (?:strip|section)s?\b", re.IGNORECASE), "trial section"),
    (re.compile(r"\bfins?\b", re.IGNORECASE), "land"),
    (
        re.compile(r"\bthe (?:engineer|department|owner|inspector)\b(?! of\b)", re.IGNORECASE),
        "the Agency",
    ),
)
"""Other words, and the term of the clause library."""

RULE = Rule(
    title="a second word is used for one thing",
    grade=Grade.NOTE,
    basis="wording",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each other word, with every text that uses it."""
    for pattern, term in _TERMS:
        at = matches(job, pattern)
        if not at:
            continue
        word = given(pattern.match(at[0].written, at[0].offset)).group()
        says = f"The texts say {word}; the clauses say {term}."
        yield RULE.finding(None, says, at, (f"write {term}",))
