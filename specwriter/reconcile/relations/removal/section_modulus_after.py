"""Share of the section modulus of the slab that is left after grinding."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from math import sqrt
from typing import Any

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.cutting import is_ground, removal_is_stated
from specwriter.reconcile.relation import Function, Linear, Relation, Unassured

SLAB, CUT = "conditions.slab_thickness", "removal.depth"


def _value(at: Mapping[str, Any]) -> Any:
    left = at[SLAB] - at[CUT]
    if isinstance(left, Fraction | float) and left < 0:
        # A corner of the ranges that WITHIN cuts off: nothing is left.
        return Fraction(0)
    return (left / at[SLAB]) * (left / at[SLAB])


def _signs(at: Mapping[str, Interval]) -> dict[str, int | None]:
    return {SLAB: 1, CUT: -1}


def _slab(share: Any, at: Mapping[str, Any]) -> Any:
    return at[CUT] / (1 - Fraction(sqrt(share))) if share < 1 else None


def _cut(share: Any, at: Mapping[str, Any]) -> Any:
    return at[SLAB] * (1 - Fraction(sqrt(share)))


def _applies(job: Job, area: Area) -> bool:
    return is_ground(area)


WITHIN = Relation(
    slug="removal-within-the-slab",
    title="more is to be removed than the slab is thick",
    statement="depth of removal is at most the slab thickness",
    shape=Linear({SLAB: 1, CUT: -1}, Interval(Fraction(0), None)),
    why=(
        "A machine cannot remove more than is there. A figure of this size is mostly a "
        "slip of the unit or of the decimal point."
    ),
    source="geometry",
    applies=_applies,
)
SHARE = Relation(
    slug="section-modulus-out-of-reach",
    title="the section modulus of the slab cannot be kept",
    statement=(
        "section modulus left = ((slab thickness - depth of removal) / slab thickness) squared"
    ),
    shape=Function(
        output="removal.section_modulus_after",
        inputs=(SLAB, CUT),
        value=_value,
        signs=_signs,
        inverses={SLAB: _slab, CUT: _cut},
        # The square root is a float; its rounding is granted.
        scatter=Fraction(1, 10**12),
    ),
    why=(
        "The bending strength of a slab falls with the square of its thickness, so a "
        "tenth less thickness is nearly a fifth less strength. A cap on removal that "
        "allows it shortens the life of the pavement without anybody having decided so."
    ),
    source="mechanics: the section modulus of a rectangle goes with the square of its height",
    validity="a plain slab of even thickness; not the capacity of the pavement",
    applies=lambda job, area: removal_is_stated(area),
    assures=Unassured(
        slug="section-modulus-not-assured",
        title="the cap on removal does not keep the section modulus of the slab",
    ),
)
UNCAPPED = replace(
    SHARE,
    applies=lambda job, area: is_ground(area) and not removal_is_stated(area),
    assures=None,
)
"""Without a cap the share that must be left is the limit on removal itself."""

RELATIONS = [WITHIN, SHARE, UNCAPPED]
