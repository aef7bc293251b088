"""Texture depth of grooves and lands: mean depth of the surface below the tops of the lands."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.relation import Function, Relation, Unassured
from specwriter.reconcile.relations.groove.mean_spacing import is_random_pattern
from specwriter.reconcile.relations.groove.trapezoid import is_trapezoid
from specwriter.reconcile.relations.texture import WHY

WIDTH, BOTTOM, DEPTH = "groove.width", "groove.width_at_bottom", "groove.depth"
SPACING, LAND = "groove.spacing", "texture_depth.land_texture"
OUTPUTS = {
    "texture_depth": "texture depth",
    "texture_depth.single": "texture depth of a single test",
}


def _applies(output: str, trapezoid: bool, ground: bool) -> Any:
    """A single test reads a few spacings only: not the mean one of a random pattern."""

    def applies(job: Job, area: Area) -> bool:
        return (
            is_trapezoid(job, area) is trapezoid
            and (area.texture == "diamond_grinding") is ground
            and not (output.endswith("single") and is_random_pattern(job, area))
        )

    return applies


def mean_width(at: Mapping[str, Any]) -> Any:
    """The width at the top, or the mean of top and bottom."""
    return (at[WIDTH] + at[BOTTOM]) / 2 if BOTTOM in at else at[WIDTH]


def value(at: Mapping[str, Any]) -> Any:
    """Cross-section of the groove over the spacing, and the lands' own texture; without a spacing
    (one without an end) the lands' alone."""
    if SPACING not in at:
        return at[LAND]
    return (mean_width(at) * at[DEPTH] - at[WIDTH] * at[LAND]) / at[SPACING] + at[LAND]


def _deeper(at: Mapping[str, Interval], deep: int, shallow: int) -> int:
    """1 where the groove is at least ``deep`` times as deep as the land is rough, -1 where at
    most ``shallow`` times; 0 where it may be either."""
    depth, land = at[DEPTH], at[LAND]
    if depth.low is not None and land.high is not None and depth.low >= deep * land.high:
        return 1
    if depth.high is not None and depth.high <= shallow * (land.low or 0):
        return -1
    return 0


def signs(at: Mapping[str, Interval]) -> dict[str, int | None]:
    """Deeper grooves add, and rougher lands where there are lands; a wider groove or a closer
    spacing adds where the groove is deeper than the land is rough. Half of a trapezoid's width
    is at the bottom, which is not wider than the top."""
    twice = 2 if BOTTOM in at else 1
    width, spacing = at[WIDTH].high, at[SPACING].low
    has_lands = width is not None and spacing is not None and spacing >= width
    found: dict[str, int | None] = {
        WIDTH: _deeper(at, twice, twice),
        DEPTH: 1,
        SPACING: -_deeper(at, twice, 1),
        LAND: int(has_lands),
    }
    return found | ({BOTTOM: 1} if BOTTOM in at else {})


def _width(depth: Any, at: Mapping[str, Any]) -> Any:
    if BOTTOM in at:
        rest = (depth - at[LAND]) * at[SPACING] - at[BOTTOM] * at[DEPTH] / 2
        return rest / (at[DEPTH] / 2 - at[LAND])
    return (depth - at[LAND]) * at[SPACING] / (at[DEPTH] - at[LAND])


def _bottom(depth: Any, at: Mapping[str, Any]) -> Any:
    rest = (depth - at[LAND]) * at[SPACING] + at[WIDTH] * at[LAND]
    return 2 * rest / at[DEPTH] - at[WIDTH]


def _depth(depth: Any, at: Mapping[str, Any]) -> Any:
    rest = (depth - at[LAND]) * at[SPACING] + at[WIDTH] * at[LAND]
    return rest / mean_width(at)


def _spacing(depth: Any, at: Mapping[str, Any]) -> Any:
    # Wider lands only bring the depth nearer to that of the lands themselves: no spacing takes
    # it to the other side.
    found = (mean_width(at) * at[DEPTH] - at[WIDTH] * at[LAND]) / (depth - at[LAND])
    return found if found > 0 else None


def _land(depth: Any, at: Mapping[str, Any]) -> Any:
    rest = depth * at[SPACING] - mean_width(at) * at[DEPTH]
    return rest / (at[SPACING] - at[WIDTH])


def _shape(output: str, trapezoid: bool, bound: Literal["equal", "at_most"] = "equal") -> Function:
    inverses = {WIDTH: _width, DEPTH: _depth, SPACING: _spacing, LAND: _land}
    return Function(
        output=output,
        inputs=(WIDTH, *((BOTTOM,) if trapezoid else ()), DEPTH, SPACING, LAND),
        value=value,
        signs=signs,
        inverses=inverses | ({BOTTOM: _bottom} if trapezoid else {}),
        bound=bound,
    )


def _relation(output: str, trapezoid: bool, ground: bool) -> Relation:
    single = "single-" if output.endswith("single") else ""
    width = "mean groove width" if trapezoid else "groove width"
    shape = _shape(output, trapezoid)
    return Relation(
        slug=f"{single}texture-depth-out-of-reach",
        title=f"the dimensions cannot give the {OUTPUTS[output]}",
        statement=(
            f"texture depth = {width} x groove depth / spacing + (1 - groove width / spacing) x "
            "texture of the land"
        ),
        shape=_shape(output, trapezoid, "at_most") if ground else shape,
        nominal=shape if ground else None,
        why=WHY,
        source=(
            "geometry: cross-section of the groove over the spacing, and what the lands add"
            + ("; an upper bound, because ridges break (common practice, no source)" * ground)
        ),
        validity=(
            "texture depth over grooves and lands, measured by the volume of a patch; on a ground "
            "surface the value is an upper bound"
        ),
        applies=_applies(output, trapezoid, ground),
        assures=Unassured(
            slug=f"{single}texture-depth-not-assured",
            title=f"the dimensions do not assure the {OUTPUTS[output]}",
        ),
        optional=(LAND,),
    )


RELATIONS = [
    _relation(output, trapezoid, ground)
    for output in OUTPUTS
    for trapezoid in (False, True)
    for ground in (False, True)
]
