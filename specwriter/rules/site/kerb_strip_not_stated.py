"""Grinding beside kerbs without a strip along them.

Looks at
    Ground areas bordered by kerbs, and the strip that may be left along the edge.

Why it matters
    A cutting head is wider than its blades: it cannot reach the kerb. Without a stated strip the
    demand for full coverage cannot be met, and whoever tries to meet it hits the kerb.

Conflict
    conditions.curbs: true

Settled
    conditions.curbs: true
    areas.mainline.coverage.edge_offset: at most 24 in

How to settle it
    Give the width of the strip along the kerb, and say how it drains.

Sources
    Pennsylvania Publication 408, 514.3(b), undated: no grinding within 2 ft of a kerb or barrier
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.places import AIRFIELD, GRINDING, words
from specwriter.rules.rule import Rule, evidence

RULE = Rule(
    title="no strip is allowed for along the kerb",
    grade=Grade.OPEN,
    basis="published",
    needs=("conditions.curbs",),
    applies_to=GRINDING,
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each ground road with kerbs and no strip along its edge."""
    if not job.conditions.curbs:
        return
    for area in job.areas.values():
        coverage = area.coverage
        if area.place in AIRFIELD or (coverage is not None and coverage.edge_offset is not None):
            continue
        says = (
            f"Kerbs border the area, and the job does not say how far from them "
            f"{words(area.texture)} may stop."
        )
        at = [
            evidence(area, "texture", "texture"),
            evidence(job.conditions, "curbs", "kerbs"),
        ]
        yield RULE.finding(area, says, at, ("give the strip along the edge or kerb",))
