"""A blank or a placeholder in a text.

Looks at
    Texts, names, numbers and dates of the job: TBD, XX, underscores, empty brackets, insert and
    their like.

Why it matters
    A blank that goes out for bids is filled by whoever gains by it.

Conflict
    residue.disposal_site: TBD

Settled
    residue.disposal_site: the county landfill at Mill Road

How to settle it
    Write the value, or take the key out: the draft then shows it as an open decision.

Sources
    UFGS 32 01 26.71, 2014: brackets and unused choices are taken out before the bid
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.texts import matches

_BLANK = re.compile(
    r"^\W*$|\b(?:TBD|TBA|TBC|tbd|tba|tbc|TODO|X{2,}|x{3,})\b|_{2,}|\?{2,}|\.{4,}"
    r"|\[[^\]]*\]|<[A-Za-z][^<>\d]*>|\b(?:insert|fill in) (?:\w+ )?here\b"
    r"|\bto be (?:determined|decided|confirmed|announced|advised)\b"
    r"(?! (?:by|from|with|to|in|on|at)\b)"
)

RULE = Rule(
    title="a text holds a blank or a placeholder",
    grade=Grade.OPEN,
    basis="wording",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding that names every text with a placeholder."""
    if places := matches(job, _BLANK, names=True):
        says = "The text is not finished."
        yield RULE.finding(None, says, places, ("write what is meant, or take the key out",))
