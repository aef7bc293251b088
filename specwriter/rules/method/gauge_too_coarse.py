"""A gauge that cannot tell a pass from a failure.

Looks at
    The step to which a gauge is read, where a test states it, against the band of the limit that
    it judges.

Why it matters
    A depth that may lie between 5/32 and 7/32 in is judged on steps of 1/64 in four times; on
    steps of 1/16 in once, and the inspector guesses the rest. Each guess is a dispute.

Conflict
    areas.runway.groove.depth: 1/4 in ± 1/16 in
    areas.runway.testing.groove_depth: {method: depth gauge read to 1/16 in}

Settled
    areas.runway.groove.depth: 1/4 in ± 1/16 in
    areas.runway.testing.groove_depth: {method: depth gauge read to 1/64 in}

How to settle it
    Name a gauge that is read to a quarter of the band or finer.

Sources
    common practice, no source: a gauge reads to a quarter of the tolerance band, better to a tenth
    arithmetic: the step of the gauge against the band
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import suppress

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job
from specwriter.model.results import Test
from specwriter.quantity import Quantity, ValueFault, parse
from specwriter.rules.completeness._properties import properties, read
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="the gauge is too coarse for the limit",
    grade=Grade.CAUTION,
    basis="practice",
    base="runway_grooving",
)

_STEP = re.compile(
    r"(?:read(?:s|ing)?|graduated|accurate|marked|resolution)\s+(?:to|in|of)\s+(?:the nearest\s+)?"
    r"(\d[\d./-]*\s*(?:in|mm))\b",
    re.IGNORECASE,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each test whose gauge steps are wider than a quarter of a band."""
    for area in job.areas.values():
        for each in properties(area):
            test, limits = read(area, each.test), list(_bands(area, each.limits))
            if not isinstance(test, Test) or len(limits) != 1:
                continue
            for at, step in _steps(test):
                place, limit = limits[0]
                band = limit.reading
                if band.low is None or band.high is None or band.high == band.low:
                    continue
                if 4 * step.amounts[0].base <= band.high - band.low:
                    continue
                says = f"The gauge is read to {step}; the {each.title} is {limit}."
                settle = ("a gauge read to a quarter of the band or finer",)
                yield RULE.finding(area, says, [at, place], settle)


def _bands(area: Area, limits: tuple[tuple[str, str], ...]) -> Iterator[tuple[Evidence, Quantity]]:
    """The lengths that a property is limited to; a step says nothing about several of them."""
    for keys, label in limits:
        value = read(area, keys)
        if isinstance(value, Quantity) and value.dimension == "length":
            yield Evidence(path=f"{area.path}.{keys}", label=label, written=value.text), value


def _steps(test: Test) -> Iterator[tuple[Evidence, Quantity]]:
    for key in ("method", "device"):
        found = _STEP.search(getattr(test, key) or "")
        with suppress(ValueFault):
            if found:
                yield evidence(test, key, "gauge"), parse(found[1])
