"""Each blade leaves one cut, as wide as its segment or a little wider, and one land."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.relation import Linear, Relation
from specwriter.reconcile.relations.blade import WHY
from specwriter.reconcile.requirement import cut_is_stated


def _is_all(job: Job, area: Area) -> bool:
    """True where nothing but the segment says how wide the cut is."""
    return not cut_is_stated(area)


def _is_least(job: Job, area: Area) -> bool:
    return cut_is_stated(area)


_SUM = {"groove.spacing": 1, "blade.segment": -1, "land.width": -1}
_EQUAL = Relation(
    slug="segment-land-spacing",
    title="cutting segment, land and spacing disagree",
    statement="spacing = cutting segment + land width",
    shape=Linear(_SUM),
    why=WHY,
    source="geometry: the cutting segment, not the core, cuts the groove",
    validity="a head with one kind of blade and one kind of spacer; no width of the cut is stated",
    sentence=(
        "A segment of {blade_segment} and a land of {land_width} repeat every {found}, "
        "not every {groove_spacing}."
    ),
    about=("blade.segment", "blade.core", "blade.spacer"),
    applies=_is_all,
)
_AT_LEAST = replace(
    _EQUAL,
    statement="spacing is at least cutting segment + land width",
    shape=Linear(_SUM, Interval(Fraction(0), None)),
    validity="a head with one kind of blade and one kind of spacer",
    sentence=(
        "A segment of {blade_segment} and a land of {land_width} need {found}, and the spacing is "
        "{groove_spacing}."
    ),
    applies=_is_least,
)
RELATIONS = [_EQUAL, _AT_LEAST]
