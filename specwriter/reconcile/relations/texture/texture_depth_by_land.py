"""Texture depth once more, by groove and land width instead of groove width and spacing.

Width and spacing are not free of each other, so the range that they give is too wide; width and
land are, and the ends of theirs give just what the dimensions allow.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from specwriter.quantity import Interval
from specwriter.reconcile.relation import Function, Relation
from specwriter.reconcile.relations.texture import texture_depth
from specwriter.reconcile.relations.texture.texture_depth import BOTTOM, DEPTH, LAND, WIDTH

LAND_WIDTH = "land.width"


def value(at: Mapping[str, Any]) -> Any:
    """Cross-section of groove and land over what both take; of one without an end its own depth."""
    if LAND_WIDTH not in at:
        return at[LAND]
    if WIDTH not in at:
        return at[DEPTH] / 2 if BOTTOM in at else at[DEPTH]
    spacing = at[WIDTH] + at[LAND_WIDTH]
    return (texture_depth.mean_width(at) * at[DEPTH] + at[LAND_WIDTH] * at[LAND]) / spacing


def signs(at: Mapping[str, Interval]) -> dict[str, int | None]:
    """Deeper grooves and rougher lands add; what wider grooves or lands do, the rest decides."""
    return {name: int(name in (DEPTH, LAND)) for name in at}


def _depth(depth: Any, at: Mapping[str, Any]) -> Any:
    whole = depth * (at[WIDTH] + at[LAND_WIDTH])
    return (whole - at[LAND_WIDTH] * at[LAND]) / texture_depth.mean_width(at)


def _land(depth: Any, at: Mapping[str, Any]) -> Any:
    whole = depth * (at[WIDTH] + at[LAND_WIDTH])
    return (whole - texture_depth.mean_width(at) * at[DEPTH]) / at[LAND_WIDTH]


def _by_land(shape: Function) -> Function:
    bottom = (BOTTOM,) if BOTTOM in shape.inputs else ()
    return replace(
        shape,
        inputs=(WIDTH, *bottom, DEPTH, LAND_WIDTH, LAND),
        value=value,
        signs=signs,
        inverses={DEPTH: _depth, LAND: _land},
    )


def _relation(given: Relation) -> Relation:
    assert isinstance(given.shape, Function)
    nominal = given.nominal
    return replace(
        given,
        shape=_by_land(given.shape),
        nominal=_by_land(nominal) if isinstance(nominal, Function) else None,
        about=(given.output,),
    )


RELATIONS = [_relation(each) for each in texture_depth.RELATIONS]
