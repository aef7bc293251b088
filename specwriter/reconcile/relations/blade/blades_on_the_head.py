"""So many blades at their spacing fill a cutting head."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any, Literal

from specwriter.quantity import Interval
from specwriter.reconcile.relation import Function, Relation
from specwriter.reconcile.relations.blade import WHY

HEAD, COUNT, SPACING = "equipment.head_width", "blade.per_head", "groove.spacing"


def _shape(more: int, bound: Literal["at_least", "at_most"]) -> Function:
    """The head against so many spacings more than it has blades."""

    def value(at: Mapping[str, Any]) -> Any:
        return (at[COUNT] + more) * at[SPACING]

    def signs(at: Mapping[str, Interval]) -> dict[str, int | None]:
        return {COUNT: 1, SPACING: int((at[COUNT].low or 0) + more >= 0)}

    return Function(
        output=HEAD,
        inputs=(COUNT, SPACING),
        value=value,
        signs=signs,
        inverses={
            COUNT: lambda head, at: head / at[SPACING] - more,
            SPACING: lambda head, at: head / (at[COUNT] + more),
        },
        bound=bound,
    )


FIT = Relation(
    slug="blades-on-the-head",
    title="the blades do not fit on the head",
    statement="width of the head is at least (blades per head - 1) x groove spacing",
    shape=_shape(-1, "at_least"),
    why=WHY,
    source=(
        "geometry; DOT/FAA/TC-TN12/7, page 26, 2012: 20 blades at 1-1/2 in on about 30 in, 10 at "
        "2-1/4 in on about 22 in"
    ),
    about=(COUNT,),
    validity="one blade a groove; less than one spacing is left over at the ends",
)
FILL = replace(
    FIT,
    title="the blades do not fill the head",
    statement="width of the head is at most (blades per head + 1) x groove spacing",
    shape=_shape(1, "at_most"),
)
RELATIONS = [FIT, FILL]
