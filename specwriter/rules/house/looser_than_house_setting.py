"""A requirement looser than what the house has settled.

Looks at
    Overlap, head width, wheelbase, match at joints and the strip along kerbs, against the
    settings of the job.

Why it matters
    Published documents disagree on these figures: overlap 1 or 2 in, head 3 or 4 ft, wheelbase 12
    or 25 ft. A house that has chosen one wants to know when a job departs from it.

Conflict
    settings.overlap: at most 1 in
    areas.mainline.coverage.overlap: at most 2 in

Settled
    settings.overlap: at most 2 in
    areas.mainline.coverage.overlap: at most 2 in

How to settle it
    Use the figure of the house, or accept the finding with the reason for the departure.

Sources
    Maryland Standard Specifications 509, undated: overlap 2 in, head 3 ft, wheelbase 12 ft
    Iowa DOT Standard Specifications 2532, 2008: overlap 1 in
    Ohio CMS 257.02, 2010: head 3 ft, wheelbase 12 ft
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import Quantity
from specwriter.rules.rule import Rule, evidence, given

_COMPARED = (
    ("overlap", "coverage", "overlap", "overlap", "at_most"),
    ("head_width", "equipment", "head_width", "head width", "at_least"),
    ("wheelbase", "equipment", "wheelbase", "wheelbase", "at_least"),
    ("joint_match", "", "joint_match", "joint match", "at_most"),
    ("curb_setback", "coverage", "edge_offset", "strip along the edge", "reaches"),
)
"""Setting, noun and field of the area, its name, and the side on which the setting binds."""

RULE = Rule(
    title="looser than the house setting",
    grade=Grade.CAUTION,
    basis="published",
    needs=("settings",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each requirement that allows what the setting of the house does not."""
    settings = given(job.settings)
    for area in job.areas.values():
        for key, owner, field, label, side in _COMPARED:
            setting = getattr(settings, key)
            node = getattr(area, owner) if owner else area
            value = getattr(node, field) if node is not None else None
            if setting is None or value is None or not _looser(value, setting, side):
                continue
            says = f"The {label} is {value}; the setting {key} is {setting}."
            at = [evidence(node, field, label), evidence(settings, key, f"setting {key}")]
            yield RULE.finding(area, says, at, (f"{label} {setting}", "accept the departure"))


def _looser(value: Quantity, setting: Quantity, side: str) -> bool:
    """True when the value allows more than the setting, on the side that binds."""
    bound = setting.amounts[-1 if side == "at_most" else 0].base
    if side == "at_most":
        return value.interval.high is not None and value.interval.high > bound
    if side == "at_least":
        return value.interval.low is not None and value.interval.low < bound
    return value.interval.high is not None and value.interval.high < bound
