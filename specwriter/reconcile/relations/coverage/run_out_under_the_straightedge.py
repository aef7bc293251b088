"""A cut that runs out to the surface beside it, under a straightedge laid across the run-out."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from specwriter.quantity import Interval
from specwriter.reconcile.readers.run_out import EDGE, RUN_OUT
from specwriter.reconcile.relation import Function, Relation
from specwriter.trade import coverage

GAP, CUT = "straightedge.tolerance", "removal.depth"


def _value(at: Mapping[str, Any]) -> Any:
    return coverage.gap_of_run_out(at[CUT], at[RUN_OUT], at[EDGE])


def _signs(at: Mapping[str, Interval]) -> dict[str, int | None]:
    return {CUT: 1, RUN_OUT: -1, EDGE: 1}


def _run_out(gap: Any, at: Mapping[str, Any]) -> Any:
    """The run-out of a gap: of more than half the depth only where it is short."""
    if 2 * gap >= at[CUT]:
        return at[EDGE] * (1 - gap / at[CUT])
    return at[CUT] * at[EDGE] / (4 * gap)


def _edge(gap: Any, at: Mapping[str, Any]) -> Any:
    if 2 * gap >= at[CUT]:
        return at[RUN_OUT] / (1 - gap / at[CUT]) if gap < at[CUT] else None
    return 4 * gap * at[RUN_OUT] / at[CUT]


RELATION = Relation(
    slug="run-out-under-the-straightedge",
    title="the cut runs out more steeply than the straightedge allows",
    statement=coverage.GAP_OF_RUN_OUT.text,
    shape=Function(
        output=GAP,
        inputs=(CUT, RUN_OUT, EDGE),
        value=_value,
        signs=_signs,
        inverses={
            CUT: lambda gap, at: gap / coverage.gap_of_run_out(1, at[RUN_OUT], at[EDGE]),
            RUN_OUT: _run_out,
            EDGE: _edge,
        },
        bound="at_least",
    ),
    why=(
        "At inlets and ends the cut runs out to the surface beside it. Where it runs out over a "
        "short length, a straightedge laid there fails work that was cut as it is written."
    ),
    source=coverage.GAP_OF_RUN_OUT.source,
    validity=coverage.GAP_OF_RUN_OUT.validity,
    kind="model",
    about=(RUN_OUT,),
)
