"""The land is the spacer less what the rims overhang their cores, and less if the cut is wider."""

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


def _is_most(job: Job, area: Area) -> bool:
    return cut_is_stated(area)


_SUM = {"land.width": 1, "blade.spacer": -1, "blade.segment": 1, "blade.core": -1}
_EQUAL = Relation(
    slug="land-of-the-blades",
    title="land and blade set disagree",
    statement="land width = spacer - (cutting segment - core)",
    shape=Linear(_SUM),
    why=WHY,
    source="geometry: the rim overhangs the core on both sides",
    validity="a head with one kind of blade and one kind of spacer; no width of the cut is stated",
    sentence=(
        "A spacer of {blade_spacer} between cores of {blade_core} with segments of "
        "{blade_segment} leaves a land of {found}, not {land_width}."
    ),
    about=("blade.segment", "blade.core", "blade.spacer"),
    applies=_is_all,
)
_AT_MOST = replace(
    _EQUAL,
    statement="land width is at most spacer - (cutting segment - core)",
    shape=Linear(_SUM, Interval(None, Fraction(0))),
    validity="a head with one kind of blade and one kind of spacer",
    applies=_is_most,
)
RELATIONS = [_EQUAL, _AT_MOST]
