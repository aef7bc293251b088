"""An order for something that the agency does.

Looks at
    Texts of the job in which a sentence begins with what the agency alone does: pay, accept,
    approve, reject, deduct, withhold; and measure, in the text of a pay item. An effect on the pay
    is left out: it stands under its own heading.

Why it matters
    A sentence in the imperative orders the contractor. "Measure and pay by the square yard" makes
    the contractor the one who measures.

Conflict
    pay_items.grinding.measured_as: Measure the area between the lane lines once

Settled
    pay_items.grinding.measured_as: area between the lane lines, measured once

How to settle it
    Say that the Agency does it, or name the thing: "area between the lane lines".

Sources
    FHWA plain-language peer conference report, appendix F, 2008: no imperative for the agency
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule
from specwriter.rules.texts import texts

RULE = Rule(
    title="an order for something that the agency does",
    grade=Grade.CAUTION,
    basis="published",
)

_THING = r"\s+(?:for|the|a|an|each|all|every|no|any|only|one|per|by|and|or|\d)\b"
_BEGIN = r"(?:^|[.;]\s+)"
_ANYWHERE = rf"{_BEGIN}(pay|accept|approve|reject|deduct|withhold){_THING}"
_PAYMENT = rf"{_BEGIN}(pay|accept|approve|reject|deduct|withhold|measure){_THING}"


def check(job: Job) -> Iterator[Finding]:
    """One finding for each text that orders what the agency does."""
    for text in texts(job):
        if text.path.endswith(".pay_effect"):
            continue
        pattern = _PAYMENT if text.path.startswith("pay_items.") else _ANYWHERE
        if found := re.search(pattern, text.words, re.IGNORECASE):
            verb = found[1].lower()
            says = f"“{verb}” at the beginning of a sentence orders the contractor to {verb}."
            settle = ("say that the Agency does it", "name the thing instead of the deed")
            area = job.areas.get(text.area or "")
            yield RULE.finding(area, says, [text.evidence(found.start(1))], settle)
