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

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.quantity import Quantity, other_system, show_like
from specwriter.rules.measures import Measure, apart, measures
from specwriter.rules.rule import Rule

_SHARE = Fraction(4, 100)
"""A pair of rounded figures may differ by 25.0 against 25.4 mm, not by 6 against 6.35 mm."""

RULE = Rule(
    title="the two unit systems do not say the same",
    grade=Grade.CAUTION,
    basis="published",
    needs=("also_stated",),
    quiet_after=("unit-system-decides-texture-depth",),
    echo=True,
    base="transverse_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each value restated in the other system beyond its rounding."""
    for area in job.areas.values():
        own = {each.name: each for each in measures(area)}
        for statement in area.also_stated:
            for other in measures(statement):
                mine = own.get(other.name)
                if mine is None or not apart(mine, other):
                    continue
                if differences := _differences(mine, other):
                    yield RULE.finding(area, *_words(job, mine, other, differences))


def _words(
    job: Job, mine: Measure, other: Measure, differences: str
) -> tuple[str, list[Evidence], tuple[str, ...]]:
    governing = "US customary" if job.project.governing_units == "us" else "metric"
    says = (
        f"The {mine.label} is {mine.value} and {other.value}; {differences}. "
        f"In this job the {governing} value governs (project.governing_units)."
    )
    leading = mine if mine.system == job.project.governing_units else other
    settle = (f"{other_system(leading.value)} beside {leading.value}",)
    return says, [mine.evidence, other.evidence], settle


def _differences(mine: Measure, other: Measure) -> str:
    """In words, how the two values, or the ends of their ranges, differ beyond their rounding."""
    found = _ends(mine, other)
    if found and {mine.value.form, other.value.form} == {"value"}:
        return f"{mine.value} is {other_system(mine.value)}"
    return found


def _ends(mine: Measure, other: Measure) -> str:
    return " and ".join(
        f"the {name} end is {show_like(left, mine.value)} and {show_like(right, other.value)}"
        for end, name in enumerate(("low", "high"))
        if (left := getattr(mine.value.interval, name)) is not None
        and (right := getattr(other.value.interval, name)) is not None
        and _beyond(left, right, max(_place(mine.value, end), _place(other.value, end)))
    )


def _beyond(left: Fraction, right: Fraction, rounding: Fraction) -> bool:
    difference = abs(left - right)
    return difference > rounding or difference > _SHARE * max(abs(left), abs(right))


def _place(value: Quantity, end: int) -> Fraction:
    """Half of the last written place of decimals and metric numbers; the others are exact.

    Each end of a range has its own; the rounding of a value and that of its tolerance add up.
    """
    amounts = value.amounts[end : end + 1] if value.form == "range" else value.amounts
    rounded = [
        each.step * each.unit.factor / 2
        for each in amounts
        if each.value and (each.unit.system == "si" or "." in each.text)
    ]
    together = sum(set(rounded[:1])) + sum(set(rounded[1:]))
    return Fraction(together) if value.form == "tolerance" else max(rounded, default=Fraction(0))
