"""A fact of the site that no road or airfield has.

Looks at
    Slab and asphalt thickness, joint spacing, cover, lane width, slopes, speed and what the old
    surface is like, against what is built.

Why it matters
    Thickness, cover and lane width decide how deep and how often may be cut. A wrong unit there
    makes every figure that follows from it wrong, and nothing else in the text shows it.

Conflict
    conditions.slab_thickness: 9 mm

Settled
    conditions.slab_thickness: 9 in

How to settle it
    Correct the number or its unit, or accept the finding with the reason.

Sources
    common practice, no source: what roads and airfields are built with, with room to either side
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.model import Job
from specwriter.quantity import UNITS, Interval, parse
from specwriter.rules.measures import measures
from specwriter.rules.places import AIRFIELD
from specwriter.rules.rule import Rule, given

_BUILT: dict[str, Interval] = {
    name: parse(text).interval
    for name, text in {
        "slab_thickness": "3 in to 30 in",
        "asphalt_thickness": "0.5 in to 30 in",
        "overlay_thickness": "1/4 in to 12 in",
        "joint_spacing": "4 ft to 100 ft",
        "joint_reservoir_depth": "1/4 in to 4 in",
        "cover_to_steel": "1/2 in to 10 in",
        "lane_width": "7 ft to 20 ft",
        "existing_faulting": "0 in to 2 in",
        "cross_slope": "0 percent to 12 percent",
        "grade": "-15 percent to 15 percent",
        "posted_speed": "10 mph to 90 mph",
        "existing_mri": "20 in/mi to 600 in/mi",
        "existing_texture_depth": "0 mm to 4 mm",
    }.items()
}
_OF_AIRCRAFT = {"posted_speed": parse("20 mph to 200 mph").interval}
"""On a runway the speed is that of aircraft."""

_OTHERS = {
    "length": ("mm", "in", "ft", "m"),
    "speed": ("mph", "km/h"),
    "roughness": ("in/mi", "m/km"),
}
"""Units that are mistaken for one another."""

RULE = Rule(
    title="a fact of the site is unlikely",
    grade=Grade.CAUTION,
    basis="practice",
    echo=True,
    slip=True,
    by_site=True,
)


def check(job: Job) -> Iterator[Finding]:
    """One finding for each fact outside what is built."""
    flown = any(area.place in AIRFIELD for area in job.areas.values())
    bounds = _BUILT | (_OF_AIRCRAFT if flown else {})
    for each in measures(job.conditions, "conditions"):
        built = bounds.get(each.name.removeprefix("conditions."))
        amount = each.value.amounts[0]
        if built is None or _fits(amount.base, built):
            continue
        says = f"The {each.label} is {each.value}, which no road or airfield has."
        others = [
            f"{amount.text} {unit}"
            for unit in _OTHERS.get(each.value.dimension, ())
            if _fits(UNITS[unit].to_base(amount.value), built)
        ]
        if others:
            says = f"{says} As {others[0]} it would be usual."
        settle = tuple(f"{other}, if that is meant" for other in others) or ("correct the number",)
        yield RULE.finding(None, says, [each.evidence], settle)


def _fits(base: Fraction, built: Interval) -> bool:
    return given(built.low) <= base <= given(built.high)
