"""The dimensions of one cut in two unit systems.

Looks at
    Groove, land, ridge and blade of an area: the unit system of each value.

Why it matters
    One head cuts all of them, and one drawing shows them. Inches beside millimetres force
    everybody to convert, and the rounding of each is taken for a tolerance.

Conflict
    areas.mainline.groove: {width: 3.2 mm, depth: 1/16 in}
    areas.mainline.land.width: 0.100 in

Settled
    areas.mainline.groove: {width: 1/8 in, depth: 1/16 in}
    areas.mainline.land.width: 0.100 in

How to settle it
    Write the dimensions of a cut in the governing system; the other one is printed beside it.

Sources
    Indiana DOT Standard Specifications 109.01, 2010: one system applies unless another is stated
    common practice, no source: one drawing, one system
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.measures import Measure, measures
from specwriter.rules.rule import Rule

_CUT = ("groove", "land", "ridge", "blade", "flush_grind")
"""Nouns whose values one cutting head realises together."""

RULE = Rule(
    title="the dimensions of one cut are in two unit systems",
    grade=Grade.CAUTION,
    basis="practice",
    quiet_after=("unit-slip",),
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose cut is dimensioned in both systems."""
    for area in job.areas.values():
        cut = [each for each in measures(area) if each.name.split(".")[0] in _CUT]
        lengths = [each for each in cut if each.value.dimension == "length"]
        us, si = ([each for each in lengths if each.system == system] for system in ("us", "si"))
        if not us or not si:
            continue
        few, many = sorted((us, si), key=len)
        says = (
            f"{_names(few)} {'is' if len(few) == 1 else 'are'} in {few[0].value.unit.symbol}, "
            f"and {_names(many)} in {many[0].value.unit.symbol}."
        )
        at = [each.evidence for each in (*few, *many)]
        governing = "US customary" if job.project.governing_units == "us" else "metric"
        settle = (f"all of them in {governing} units, which govern (project.governing_units)",)
        yield RULE.finding(area, says[0].upper() + says[1:], at, settle)


def _names(some: list[Measure]) -> str:
    return " and ".join(each.label for each in some)
