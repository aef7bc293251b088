"""A straightedge on a surface that just meets the roughness index: a screen."""

from __future__ import annotations

from specwriter.model import Area, Job
from specwriter.model.results import Straightedge
from specwriter.quantity import Interval
from specwriter.reconcile.governing_ride import (
    GAP_PER_ROUGHNESS,
    SURFACE,
    step_governs_straightedge,
)
from specwriter.reconcile.readers.ride import ROUGHNESS
from specwriter.reconcile.relation import Linear, Relation, Unassured
from specwriter.reconcile.relations.ride import WHY_TWO_LIMITS
from specwriter.reconcile.requirement import sources
from specwriter.reconcile.stated_ride import lies_within, most
from specwriter.trade.ride import FOOT

_FACTORS = {"straightedge.tolerance": 1, ROUGHNESS: -GAP_PER_ROUGHNESS}


def _applies(job: Job, area: Area) -> bool:
    """A 10 ft edge along the lane, and a limit of the roughness index."""
    return _both(job, area) and all(map(_is_known, _edges(area)))


def _aside(job: Job, area: Area) -> str:
    along = [each for each in _edges(area) if each.direction != "transverse"]
    if not _both(job, area) or all(map(_is_known, along)):
        return ""
    return "a surface is held here against a resting straightedge of 10 ft only"


def _both(job: Job, area: Area) -> bool:
    """A straightedge on the surface, not governed by joints, and a limit of the index."""
    return (
        bool(_edges(area))
        and not step_governs_straightedge(job, area)
        and most(job, area, ROUGHNESS) is not None
    )


def _edges(area: Area) -> list[Straightedge]:
    return [each.straightedge for each in sources(area) if each.straightedge is not None]


def _is_known(edge: Straightedge) -> bool:
    return (
        lies_within(edge.length, 9.8 * FOOT, 10.2 * FOOT)
        and edge.kind != "rolling"
        and edge.direction != "transverse"
    )


RELATION = Relation(
    slug="straightedge-on-the-surface",
    title="the straightedge asks for more than the roughness index",
    statement=(
        f"one placement in a hundred of a 10 ft straightedge finds {SURFACE.gap_99[0]} in or more "
        f"on a random surface of {SURFACE.mri} in/mi, in proportion to the index"
    ),
    shape=Linear(
        {"straightedge.tolerance": 1, ROUGHNESS: -GAP_PER_ROUGHNESS}, Interval(None, None)
    ),
    nominal=Linear({"straightedge.tolerance": 1, ROUGHNESS: -GAP_PER_ROUGHNESS}),
    why=WHY_TWO_LIMITS,
    source="project calculation on random surfaces of three spectra",
    validity=(
        "a screen: straightedge and index answer different waves, and neither implies the other; "
        "a resting edge of 10 ft along the lane"
    ),
    kind="model",
    assures=Unassured(
        slug="straightedge-not-assured-by-the-index",
        title="a surface that meets the roughness index fails the straightedge",
    ),
    applies=_applies,
    aside=_aside,
)
