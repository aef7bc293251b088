"""The international friction index from a ribbed tyre.

Looks at
    The friction index (F60, IFI) or its standard, the edition, and the tyre of the test.

Why it matters
    Since 2003 the standard harmonises devices with smooth tread only. A number from a ribbed
    tyre put into its equations is no friction index.

Conflict
    areas.mainline.friction:
      measure: F60
      at_least: at least 0.3
      speed: 60 km/h
      tyre: ribbed
      test: {method: ASTM E1960, edition: "2007 (2015)"}
    areas.mainline.texture_depth: {measure: MPD, at_least: 0.8 mm, direction: across_lane}

Settled
    areas.mainline.friction:
      measure: F60
      at_least: at least 0.3
      speed: 60 km/h
      tyre: smooth
      test: {method: ASTM E1960, edition: "2007 (2015)"}
    areas.mainline.texture_depth: {measure: MPD, at_least: 0.8 mm, direction: across_lane}

How to settle it
    Test with the smooth tyre, or ask for the skid number of the ribbed tyre itself.

Sources
    ASTM E1960-03e1, scope 1.1, 2005: smooth tread
    ASTM E1960-07(2015), scope: smooth tread
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.friction._measure import frictions
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="a friction index cannot come from a ribbed tyre",
    grade=Grade.CONFLICT,
    basis="published",
    needs=("friction.measure", "friction.tyre"),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each friction index that a ribbed tyre is to give."""
    for area, friction, measure in frictions(job):
        edition = (friction.test and friction.test.edition) or ""
        if measure.kind != "friction index" or friction.tyre != "ribbed":
            continue
        if edition.startswith("1998"):  # the one edition whose scope has no such limit
            continue
        says = f"{friction.measure} is computed from tests with a smooth tyre; the tyre is ribbed."
        at = [
            evidence(friction, "tyre", "test tyre"),
            evidence(friction, "measure", "friction measure"),
        ]
        settle = ("tyre: smooth", "ask for the skid number of the ribbed tyre")
        yield RULE.finding(area, says, at, settle)
