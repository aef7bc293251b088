"""A quantity written into the text of a pay item.

Looks at
    Measuring rules and lists of included or excluded work that hold a quantity of work.

Why it matters
    Quantities stand in the bid schedule and change with every plan sheet. One in the text is
    changed by nobody, and then two numbers claim to be the contract.

Conflict
    pay_items.grinding.measured_as: the 14,080 square yards between the stations, each area once

Settled
    pay_items.grinding.measured_as: plan area between the stations, each area once

How to settle it
    Take the number out, and give it as the quantity of the pay item.

Sources
    Minnesota DOT Contract Administration Manual, 5-591.420, undated: quantities are in the estimate
    common practice, no source: the text says how it is measured, the schedule how much
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.texts import texts

RULE = Rule(
    title="a quantity is written into the text",
    grade=Grade.CAUTION,
    basis="wording",
)

_QUANTITY = re.compile(
    r"\b(?<![$.])(\d{1,3}(?:,\d{3})+|\d{3,})(?:\.\d+)?\s*"
    r"(?:SY|SF|m2|LF|square (?:yards?|feet|met(?:re|er)s?)|(?:linear )?(?:feet|ft)|tons?)\b",
    re.IGNORECASE,
)
_LENGTHS = re.compile(r"\b(?:each|every|per|in any|within|over)\s+(?:\w+\s+)?$", re.IGNORECASE)
"""Before a number: it is the size of a lot or of a window, and no quantity of work."""


def check(job: Job) -> Iterator[Finding]:
    """One finding for each text of a pay item that holds a quantity."""
    for text in texts(job):
        found = _QUANTITY.search(text.words) if text.path.startswith("pay_items.") else None
        if found is None or _LENGTHS.search(text.words[: found.start()]):
            continue
        says = f"The text holds the quantity {found.group()}."
        settle = ("take it out of the text", "give it as the quantity of the pay item")
        yield RULE.finding(None, says, [text.evidence(found.start())], settle)
