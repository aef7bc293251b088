"""A straightedge across a joint finds the whole step."""

from __future__ import annotations

from fractions import Fraction

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.governing_ride import (
    step_governs_straightedge,
    straightedge_finds_steps,
)
from specwriter.reconcile.relation import Linear, Relation, Unassured
from specwriter.reconcile.relations.ride import WHY_STEPS
from specwriter.reconcile.roughness_of_parts import STEP

_AT_LEAST = Linear({"straightedge.tolerance": 1, STEP: -1}, Interval(Fraction(0), None))
_EQUAL = Linear({"straightedge.tolerance": 1, STEP: -1})


def _relation(judged: bool) -> Relation:
    """With ``judged`` a step at its limit is looked at too, because it opens the widest gap."""

    def applies(job: Job, area: Area) -> bool:
        finds = straightedge_finds_steps(job, area)
        return finds and step_governs_straightedge(job, area) is judged

    return Relation(
        slug="straightedge-across-a-joint",
        title="a step at a joint that is allowed fails the straightedge",
        statement="the gap under a straightedge across a joint is at least the step left there",
        shape=_AT_LEAST,
        nominal=_EQUAL if judged else None,
        why=WHY_STEPS,
        source=(
            "geometry: the edge lies on the high slab and stands off the low one by the step; "
            "Iowa DOT Standard Specifications, section 2317, April 2009: straightedge along and "
            "across"
        ),
        validity=(
            "a straightedge that is laid across joints; where joints are left out of its test, "
            "say so in the place of the test"
        ),
        assures=_UNASSURED if judged else None,
        applies=applies,
    )


_UNASSURED = Unassured(
    slug="step-fails-the-straightedge",
    title="a step at a joint that is allowed fails the straightedge",
)
RELATIONS = [_relation(judged) for judged in (True, False)]
