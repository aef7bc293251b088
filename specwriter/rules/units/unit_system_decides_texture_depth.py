"""A texture depth that the grooves of one unit system give, and those of the other do not.

Looks at
    Width, depth and spacing of the grooves in each unit system, where documents of the contract
    state all three in both as single values, against the texture depth that is asked for.

Why it matters
    A rounded conversion takes a tenth of the groove away. Where the target lies between the two
    patterns, the same grooves pass by one drawing and fail by the other, and no cutting mends it:
    which system governs decides what is accepted and paid.

Conflict
    areas.runway.groove: {width: 1/4 in, depth: 1/4 in, spacing: 1-1/2 in}
    areas.runway.also_stated: [{in: plans, groove: {width: 6 mm, depth: 6 mm, spacing: 38 mm}}]
    areas.runway.texture_depth: {measure: MTD, at_least: 1.0 mm, surface: over_grooves}

Settled
    areas.runway.groove: {width: 1/4 in, depth: 1/4 in, spacing: 1-1/2 in}
    areas.runway.also_stated:
      - {in: plans, groove: {width: 6.35 mm, depth: 6.35 mm, spacing: 38.1 mm}}
    areas.runway.texture_depth: {measure: MTD, at_least: 1.0 mm, surface: over_grooves}

How to settle it
    Let one system govern and write the other as its exact conversion, or set a target that both
    patterns meet.

Sources
    arithmetic: cross-section of the groove over the spacing, and what the lands add
    UFC 3-260-02, ch. 21, 2001: 6 mm by 6 mm at 38 mm beside 1/4 in by 1/4 in at 1-1/2 in
    ICAO Annex 14, 3.1.24, as quoted on a study page, undated: 1.0 mm on a new runway (second-hand)
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job
from specwriter.model.texture import Groove
from specwriter.quantity import Quantity, show_like
from specwriter.rules.rule import Rule, evidence, given
from specwriter.trade.texture_depth import texture_depth

RULE = Rule(
    title="the unit system decides whether the texture depth is met",
    grade=Grade.CAUTION,
    basis="arithmetic",
    needs=("texture_depth.at_least", "also_stated"),
    base="runway_grooving",
)

_KEYS = ("width", "depth", "spacing")


@dataclass(frozen=True, slots=True, kw_only=True)
class _Pattern:
    """The grooves of one document, all in one unit system, and the texture depth they give."""

    system: str
    groove: Groove
    gives: Fraction

    @property
    def words(self) -> str:
        """Width, depth and spacing as they are written."""
        width, depth, spacing = (getattr(self.groove, key) for key in _KEYS)
        return f"{width} by {depth} at {spacing}"

    @property
    def evidence(self) -> list[Evidence]:
        """Where the three stand."""
        return [evidence(self.groove, key, f"groove {key}") for key in _KEYS]


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose target lies between the patterns of two unit systems."""
    for area in job.areas.values():
        depth = given(area.texture_depth)
        target = given(depth.at_least)
        if depth.measure != "MTD" or depth.surface == "between_grooves":
            continue
        patterns = sorted(_patterns(area), key=lambda each: each.gives)
        if not patterns or patterns[0].system == patterns[-1].system:
            continue
        fails, passes = patterns[0], patterns[-1]
        if not fails.gives < target.amounts[0].base <= passes.gives:
            continue
        says = (
            f"Grooves of {passes.words} give a texture depth of "
            f"{show_like(passes.gives, target)}, grooves of {fails.words} give "
            f"{show_like(fails.gives, target)}; {target} is asked for."
        )
        at = [evidence(depth, "at_least", "texture depth"), *passes.evidence, *fails.evidence]
        settle = (
            f"the pattern {passes.words} in both systems, converted exactly in the other one",
            f"a texture depth of at most {show_like(fails.gives, target, 'down')}",
        )
        yield RULE.finding(area, says, at, settle)


def _patterns(area: Area) -> Iterator[_Pattern]:
    """The patterns of rectangular grooves that the area and other documents state in full."""
    land = given(area.texture_depth).land_texture
    rough = land.interval.low if land is not None else None
    for groove in (area.groove, *(each.groove for each in area.also_stated)):
        if groove is None or groove.width_at_bottom is not None:
            continue
        values: list[Quantity | None] = [getattr(groove, key) for key in _KEYS]
        single = [each for each in values if each is not None and each.form == "value"]
        systems = {each.unit.system for each in single}
        if len(single) < len(_KEYS) or len(systems) != 1:
            continue
        width, deep, spacing = (each.amounts[0].base for each in single)
        gives = texture_depth(width, width, deep, spacing, rough or Fraction(0))
        yield _Pattern(system=systems.pop(), groove=groove, gives=gives)
