"""Segments of a fixed length on a stretch that they do not fill.

Looks at
    The length of the smoothness segment, the length of each stretch of the area, and the rule
    for the piece that is left over.

Why it matters
    A piece of 90 ft holds a few joints and one manhole; its index says little and can cost a
    full segment. Editions of one and the same standard have joined pieces below 50, 100 and
    250 ft to the segment before, so a rule has to be written down.

Conflict
    areas.mainline.limits.0.to: 60+00
    areas.mainline.smoothness.partial_segment: null
    pay_items.grinding.quantity: 13,333 SY

Settled
    areas.mainline.limits.0.to: 60+00
    areas.mainline.smoothness.partial_segment: 250 ft
    pay_items.grinding.quantity: 13,333 SY

How to settle it
    State the length below which a last piece is joined to the segment before it.

Sources
    Iowa DOT Standard Specifications, section 2317, 2009: under 50 ft; 2019: at most 250 ft
    Iowa DOT Construction Manual, section 12.41, 2008: pieces under 250 ft are merged
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Area, Job
from specwriter.model.area import Limits
from specwriter.quantity import show_like
from specwriter.rules.places import rides
from specwriter.rules.rule import Rule, evidence, given

RULE = Rule(
    title="no rule for the piece that is left of the last segment",
    grade=Grade.OPEN,
    basis="published",
    needs=("smoothness.segment",),
    gap=True,
    base="complete/diamond_grinding",
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose stretches or exclusions leave part of a segment over."""
    for area, ride in rides(job):
        segment = given(ride.segment)
        if ride.partial_segment is not None or segment.nominal is None:
            continue
        rest = _rest(area, segment.nominal)
        if rest == 0 and ride.exclusions is None:
            continue
        if rest:
            left = f"leave a piece of {show_like(rest, segment)} over"
        else:
            left = "are cut by the places that are left out"
        says = f"Segments of {segment} {left}, and the job does not say what becomes of it."
        at = [evidence(ride, "segment", "segment")]
        if ride.exclusions is not None:
            at.append(evidence(ride, "exclusions", "places left out"))
        settle = ("state below which length a piece is joined to the segment before it",)
        yield RULE.finding(area, says, at, settle)


def _rest(area: Area, segment: Fraction) -> Fraction:
    """What the segments leave of the first stretch that they do not fill; 0 if they fill all."""
    rests = (_length(each) % segment for each in area.limits)
    return next((rest for rest in rests if rest), Fraction(0))


def _length(stretch: Limits) -> Fraction:
    ends = [each.nominal for each in (stretch.start, stretch.end) if each is not None]
    known = [end for end in ends if end is not None]
    return abs(known[1] - known[0]) if len(known) == 2 else Fraction(0)
