"""So many blades at their spacing fill a cutting head."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from specwriter.quantity import Interval
from specwriter.reconcile.relation import Function, Linear, Relation
from specwriter.reconcile.relations.blade import WHY

STACK, COUNT, SPACING = "blade.stack", "blade.per_head", "groove.spacing"
_SOURCE = (
    "geometry; DOT/FAA/TC-TN12/7, page 26, 2012: 20 blades at 1-1/2 in on about 30 in, 10 at "
    "2-1/4 in on about 22 in"
)


def _signs(at: Mapping[str, Interval]) -> dict[str, int | None]:
    return {COUNT: 1, SPACING: 1}


RELATIONS = [
    Relation(
        slug="blades-on-the-head",
        title="blades, spacing and width of the head do not go together",
        statement="width of the blade stack = blades per head x groove spacing",
        shape=Function(
            output=STACK,
            inputs=(COUNT, SPACING),
            value=lambda at: at[COUNT] * at[SPACING],
            signs=_signs,
            inverses={
                COUNT: lambda stack, at: stack / at[SPACING],
                SPACING: lambda stack, at: stack / at[COUNT],
            },
        ),
        why=WHY,
        source=_SOURCE,
        about=(COUNT,),
        validity="one blade a groove",
    ),
    Relation(
        slug="blades-on-the-head",
        title="the blades do not fit on the head",
        statement="width of the head is at least that of the blade stack, less one spacing",
        shape=Linear(
            {"equipment.head_width": 1, STACK: -1, SPACING: 1}, Interval(Fraction(0), None)
        ),
        why=WHY,
        source=_SOURCE,
        about=(COUNT,),
        validity="one blade a groove; less than one spacing is left over at the ends",
    ),
    Relation(
        slug="blades-on-the-head",
        title="the blades do not fill the head",
        statement="width of the head is at most that of the blade stack and one spacing",
        shape=Linear(
            {"equipment.head_width": 1, STACK: -1, SPACING: -1}, Interval(None, Fraction(0))
        ),
        why=WHY,
        source=_SOURCE,
        about=(COUNT,),
        validity="one blade a groove; less than one spacing is left over at the ends",
    ),
]
