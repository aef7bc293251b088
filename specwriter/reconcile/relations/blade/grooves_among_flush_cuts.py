"""The grooves of a next generation concrete surface lie several flush ground cuts apart."""

from __future__ import annotations

from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.relation import Linear, Relation

_CUTS = 2
"""Flush ground cuts that one groove spacing holds at the least; no source."""


def _applies(job: Job, area: Area) -> bool:
    return area.texture == "next_generation_concrete_surface"


RELATION = Relation(
    slug="grooves-as-close-as-the-flush-grind",
    title="the grooves lie as close as the cuts of the flush grind",
    statement=f"groove spacing is at least {_CUTS} x (core + spacer of the flush grind)",
    shape=Linear(
        {"groove.spacing": 1, "flush_grind.core": -_CUTS, "flush_grind.spacer": -_CUTS},
        Interval(Fraction(0), None),
    ),
    why=(
        "This surface has two spacings: that of the grinding blades, and that of the grooves cut "
        "through the ground surface. Where one figure is put in the place of the other, no land "
        "is left that could be flush and quiet."
    ),
    source=(
        "common practice, no source; as reported, grooves 12.5 to 16 mm apart in a surface of "
        "3.2 mm blades and 0.9 mm spacers (memory, unverified)"
    ),
    validity="next generation concrete surface, ground flush and then grooved",
    kind="experience",
    about=("flush_grind.core", "flush_grind.spacer"),
    applies=_applies,
)
