"""A texture depth whose figure does not fit its unit.

Looks at
    The limits on texture depth.

Why it matters
    0.8 mm is a usual limit, 0.8 in is deeper than any groove. Carried over with the wrong unit
    the limit is empty or impossible.

Conflict
    areas.mainline.texture_depth:
      measure: MTD
      at_least: 0.03 mm
      method: ASTM E965
      edition: "2015"

Settled
    areas.mainline.texture_depth:
      measure: MTD
      at_least: 0.03 in
      method: ASTM E965
      edition: "2015"

How to settle it
    Give the figure with the unit in which it was set; 1 in is 25.4 mm.

Sources
    UK Specification for the Reinstatement of Openings in Highways, table S2.5, undated: 0.6-1.5
    project calculation: the range that is believed, 0.15 to 3.8 mm, is wider on both sides
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import UNITS, Quantity, show
from specwriter.rules.rule import Rule, evidence
from specwriter.rules.texture_depth._depth import depths

RULE = Rule(
    title="the figure of the texture depth does not fit its unit",
    grade=Grade.CAUTION,
    basis="published",
    needs=("texture_depth",),
)

_KEYS = ("at_least", "at_most", "single_at_least", "end_of_life_at_least")
_LOW, _HIGH = Fraction("0.00015"), Fraction("0.0038")
_USUAL_LOW, _USUAL_HIGH = Fraction("0.0003"), Fraction("0.0025")


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area, at the first limit outside the range that is believed."""
    for area, depth in depths(job):
        for key in _KEYS:
            limit: Quantity | None = getattr(depth, key)
            if limit is None or _LOW <= limit.amounts[-1].base <= _HIGH:
                continue
            says = (
                f"{limit} is {'deeper' if limit.amounts[-1].base > _HIGH else 'shallower'} than "
                "the texture of any pavement; limits lie between 0.15 mm and 3.8 mm."
            )
            at = [evidence(depth, key, "texture depth")]
            yield RULE.finding(area, says, at, tuple(_ways(limit)))
            break


def _ways(limit: Quantity) -> Iterator[str]:
    amount = limit.amounts[-1]
    other = "mm" if amount.unit.system == "us" else "in"
    if _USUAL_LOW <= UNITS[other].to_base(amount.value) <= _USUAL_HIGH:
        yield f"{amount.text} {other}, if that was meant"
    if _USUAL_LOW <= amount.base / 10 <= _USUAL_HIGH:
        yield f"{show(amount.base / 10, amount.unit, 3)}, if a decimal point slipped"
    yield "give the figure with the unit in which it was set"
