"""A strip left unground that takes more than the share of the window.

Looks at
    The widest strip that may stay unground between passes, against the width of the window in
    which the share of the ground surface is judged.

Why it matters
    A strip runs along the whole window. One of 6 in leaves 17 percent of a window of 3 ft bare,
    where 95 percent is to be ground: the strip passes one clause and fails the other.

Conflict
    areas.mainline.coverage.unground_strip: at most 6 in

Settled
    areas.mainline.coverage.unground_strip: at most 1 in

How to settle it
    Narrow the strip, or lower the share.

Sources
    arithmetic: the bare share is the strip over the width of the window
    California DOT Standard Specifications 42-2, 2015: a share within a window of 2 ft
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import UNITS, Quantity, show
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="the strip left unground and the share do not go together",
    grade=Grade.CAUTION,
    basis="arithmetic",
    needs=("coverage.share", "coverage.window_width", "coverage.unground_strip"),
    quiet_after=("limit-turned-round",),
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose strip takes more of the window than may stay bare."""
    for area in job.areas.values():
        coverage = given(area.coverage)
        share = given(coverage.share).amounts[0].base
        window = given(coverage.window_width).interval.low
        strip = given(coverage.unground_strip)
        if not window or _bare(strip, window) <= 1 - share:
            continue
        bare = show(_bare(strip, window), UNITS["percent"], 0)
        says = (
            f"A strip of {strip} may stay unground, which is {bare} of a window "
            f"of {coverage.window_width}; {coverage.share} is to be ground."
        )
        at = [
            evidence(coverage, "unground_strip", "strip left unground"),
            evidence(coverage, "share", "share to be textured"),
            evidence(coverage, "window_width", "width of the window"),
        ]
        most = show((1 - share) * window, strip.unit, 1)
        yield RULE.finding(area, says, at, (f"a strip of at most {most}",))


def _bare(strip: Quantity, window: Fraction) -> Fraction:
    """The share of the window that the widest strip leaves bare; a strip without limit is none."""
    return (strip.interval.high or Fraction(0)) / window
