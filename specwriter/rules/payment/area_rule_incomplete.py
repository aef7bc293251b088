"""A measuring rule for area that is silent on overlaps or margins.

Looks at
    Measuring rules of texture items that are paid by area: whether an area that is cut in two
    passes counts once, and whether margins and offsets that stay uncut are deducted.

Why it matters
    Four passes of a 4 ft head over a 12 ft lane cut a quarter of it twice. A margin of 12 in on
    both sides of a 24 ft roadway is 8 percent of the price. Where the rule is silent, both sides
    bid and claim the reading that suits them.

Conflict
    pay_items.grinding.measured_as: plan area ground and accepted

Settled
    pay_items.grinding.measured_as: plan area ground and accepted, each area once

How to settle it
    Say that each area counts once, and whether margins, joints and fixtures are deducted.

Sources
    Nevada DOT measurement guideline, undated: how area items are measured
    project calculation: 12 in on each side of 24 ft are 8.3 percent
    common practice, no source: overlaps are not paid twice; margins are deducted or not, in words
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job
from specwriter.model.contract import PayItem
from specwriter.rules.payment._areas import paid_areas
from specwriter.rules.payment._units import pay_unit
from specwriter.rules.prose import listed
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the measuring rule is silent on overlaps or margins",
    grade=Grade.OPEN,
    basis="practice",
    gap=True,
    quiet_after=("pay-unit-against-measurement",),
    base="complete/diamond_grinding",
)

_OVERLAPS = re.compile(r"\b(once|overlap\w*|however often|each pass|regardless of passes)\b", re.I)
_MARGINS = re.compile(
    r"margin|edge|gross|\bnet\b|deduct|between the outer|full width|within the limits", re.I
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each pay item by area whose rule leaves overlaps or margins open."""
    for item in job.pay_items.values():
        areas, unit = paid_areas(job, item.id), pay_unit(item.unit)
        if not areas or item.measured_as is None or unit is None or unit.dimension != "area":
            continue
        margins = list(_margins(areas))
        silent = list(_silent(item, margins))
        if silent:
            says = f"{item.name} is measured as {item.measured_as}; not said: {listed(silent)}."
            at = [evidence(item, "measured_as", "measured as"), *margins]
            yield RULE.finding(None, says, at, ("add it to measured_as",))


def _silent(item: PayItem, margins: list[Evidence]) -> Iterator[str]:
    rule = given(item.measured_as)
    if not _OVERLAPS.search(rule):
        yield "whether an area that is cut twice counts once"
    if margins and not _MARGINS.search(rule):
        yield "whether margins that stay uncut are deducted"


def _margins(areas: tuple[Area, ...]) -> Iterator[Evidence]:
    for area in areas:
        if area.coverage is not None and area.coverage.edge_offset is not None:
            yield evidence(area.coverage, "edge_offset", "margin at the edge")
