"""The part of the texture depth that the grooves alone give."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from specwriter.quantity import Interval
from specwriter.reconcile.relation import Function, Relation
from specwriter.reconcile.relations.texture.texture_depth import (
    BOTTOM,
    DEPTH,
    SPACING,
    WIDTH,
    is_trapezoid,
)

_SHARE = "texture_depth.of_grooves"


def _square(at: Mapping[str, Any]) -> Any:
    return at[WIDTH] * at[DEPTH] / at[SPACING]


def _trapezoid(at: Mapping[str, Any]) -> Any:
    return (at[WIDTH] + at[BOTTOM]) / 2 * at[DEPTH] / at[SPACING]


def _signs(at: Mapping[str, Interval]) -> dict[str, int | None]:
    return {name: -1 if name == SPACING else 1 for name in at}


def _relation(inputs: tuple[str, ...], value: Any, trapezoid: bool) -> Relation:
    return Relation(
        slug="share-of-grooves",
        title="texture depth of the grooves alone",
        statement="texture depth of the grooves alone = cross-section of the groove / spacing",
        shape=Function(output=_SHARE, inputs=inputs, value=value, signs=_signs),
        source="geometry; DOT/FAA/TC-TN12/7, page 29, 2012, for the trapezoidal cross-section",
        validity="parallel grooves",
        applies=lambda job, area: is_trapezoid(job, area) is trapezoid,
    )


RELATIONS = [
    _relation((WIDTH, DEPTH, SPACING), _square, False),
    _relation((WIDTH, BOTTOM, DEPTH, SPACING), _trapezoid, True),
]
