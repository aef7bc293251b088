"""The same requirement in two unit systems, and not the same.

Looks at
    Values that another document of the contract states in the other unit system.

Why it matters
    A hard conversion moves the limit: 12 ft is not 3.6 m, and 1/16 in is not 2 mm. Work that
    passes in one column fails in the other, and the contractor holds up the one that suits.

Conflict
    areas.mainline.groove.depth: 1/4 in ± 1/16 in
    areas.mainline.also_stated: [{in: plans, groove: {depth: 6 mm ± 2 mm}}]

Settled
    areas.mainline.groove.depth: 1/4 in ± 1/16 in
    areas.mainline.also_stated: [{in: plans, groove: {depth: 6.4 mm ± 1.6 mm}}]

How to settle it
    Convert exactly and round by one rule, or state one system as governing and drop the other.

Sources
    UFC 3-260-02, ch. 21, 2001: 6 mm ± 2 mm beside 1/4 in ± 1/16 in
    Iowa DOT Standard Specifications 2532, 2008: 1/4 in on 12 ft beside 6 mm on 3.6 m
    Ohio CMS 257, 2010: 12 ft beside 3.6 m
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job
from specwriter.model.area import Statement
from specwriter.quantity import other_system
from specwriter.rules.measures import Measure, apart, measures
from specwriter.rules.rule import Rule
from specwriter.rules.units._dual import SHARE, ends_apart

RULE = Rule(
    title="the two unit systems do not say the same",
    grade=Grade.CAUTION,
    basis="published",
    needs=("also_stated",),
    quiet_after=("unit-system-decides-texture-depth",),
    echo=True,
    base="transverse_grooving",
)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Pair:
    """One requirement in both systems, and how the two differ."""

    mine: Measure
    other: Measure
    differences: str


def check(job: Job) -> Iterator[Finding]:
    """One finding for each document that restates values in the other system beyond rounding."""
    for area in job.areas.values():
        for statement in area.also_stated:
            if pairs := list(_pairs(area, statement)):
                yield RULE.finding(area, *_words(job, pairs))


def _pairs(area: Area, statement: Statement) -> Iterator[_Pair]:
    own = {each.name: each for each in measures(area)}
    for other in measures(statement):
        mine = own.get(other.name)
        if mine is None or not apart(mine, other):
            continue
        if differences := _differences(mine, other):
            yield _Pair(mine=mine, other=other, differences=differences)


def _words(job: Job, pairs: Sequence[_Pair]) -> tuple[str, list[Evidence], tuple[str, ...]]:
    governing = "US customary" if job.project.governing_units == "us" else "metric"
    several = len(pairs) > 1
    says = [
        *(
            f"The {p.mine.label} is {p.mine.value} and {p.other.value}; {p.differences}."
            for p in pairs
        ),
        f"In this job the {governing} value{'s govern' if several else ' governs'} "
        "(project.governing_units).",
    ]
    leading = [p.mine if p.mine.system == job.project.governing_units else p.other for p in pairs]
    settle = tuple(f"{other_system(each.value)} beside {each.value}" for each in leading)
    places = [each.evidence for p in pairs for each in (p.mine, p.other)]
    return " ".join(says), places, settle


def _differences(mine: Measure, other: Measure) -> str:
    """In words, how the two values, or the ends of their ranges, differ beyond their rounding."""
    found = ends_apart(mine.value, other.value, _beyond)
    if found and {mine.value.form, other.value.form} == {"value"}:
        return f"{mine.value} is {other_system(mine.value)}"
    return found


def _beyond(difference: Fraction, rounding: Fraction, size: Fraction) -> bool:
    return difference > rounding or difference > SHARE * size
