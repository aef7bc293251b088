"""A spacing that looks like the clear gap between grooves.

Looks at
    The groove spacing of runways and of longitudinal grooving, where spacing and groove width
    together make the spacing that is published.

Why it matters
    Texts that say only "spacing" mean either centre to centre or the clear gap. Read the wrong
    way, grooves come a sixth closer or farther apart than anybody wanted.

Conflict
    areas.runway.groove.spacing: 1-1/4 in

Settled
    areas.runway.groove.spacing: 1-1/2 in

How to settle it
    Give the spacing centre to centre, or write the clear gap as clear_gap.

Sources
    UFC 3-260-02, ch. 21, 2001: 1-1/2 in (38 mm) centre to centre
    California DOT Standard Specifications 42-2, 2015: 3/4 in centre to centre
    Brazilian senate press record, 2007 (second-hand): 3 cm between grooves for a 38 mm spacing
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.rules.rule import Rule, evidence, given

_PITCH = {
    "runway_grooving": (Fraction("1.5") * Fraction("0.0254"), "1-1/2 in (38 mm)"),
    "longitudinal_grooving": (Fraction("0.75") * Fraction("0.0254"), "3/4 in (19 mm)"),
}
"""UFC 3-260-02, ch. 21, 2001; California DOT Standard Specifications 42-2, 2015."""

_NEAR = Fraction("0.0005")
"""Half a millimetre: the inch and the metric column of a source differ by less."""

RULE = Rule(
    title="the spacing looks like the clear gap",
    grade=Grade.CAUTION,
    basis="published",
    needs=("groove.width", "groove.spacing"),
    applies_to=("runway_grooving", "longitudinal_grooving"),
    base="runway_grooving",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each spacing that becomes the published one with the groove width added."""
    for area in job.areas.values():
        groove = given(area.groove)
        width, spacing = given(groove.width), given(groove.spacing)
        if spacing.nominal is None or width.nominal is None or _even(spacing.nominal):
            continue
        pitch, written = _PITCH[area.texture]
        if abs(spacing.nominal + width.nominal - pitch) > _NEAR:
            continue
        says = (
            f"The spacing is {spacing}; with the groove width of {width} added it is the {written} "
            "that is published from centre to centre."
        )
        at = [
            evidence(groove, "spacing", "groove spacing"),
            evidence(groove, "width", "groove width"),
        ]
        settle = (f"a spacing of {written}, centre to centre", f"a clear gap of {spacing}")
        yield RULE.finding(area, says, at, settle)


def _even(spacing: Fraction) -> bool:
    """True for spacings that are used from centre to centre: 3/8, 1/2, 5/8, 3/4, 1, 1-3/8 in."""
    eighths = spacing / Fraction("0.0254") * 8
    return eighths in (3, 4, 5, 6, 8, 11)
