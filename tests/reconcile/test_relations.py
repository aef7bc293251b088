"""What every relation carries: a source, a validity, a kind that fits them, and executed cases."""

from __future__ import annotations

from collections.abc import Iterator
from copy import deepcopy
from typing import Any

import pytest

from specwriter.reconcile import reconcile
from specwriter.reconcile.registry import all_relations
from specwriter.reconcile.relation import Relation
from tests.acceptance.test_contradictions import CASES as CONTRADICTIONS
from tests.reconcile.test_cases import CASES
from tests.reconcile.test_surface import CASES as OF_THE_SURFACE
from tests.support import job

RELATIONS = [pytest.param(each, id=each.slug) for each in all_relations()]


def jobs() -> Iterator[tuple[str, dict[str, Any]]]:
    """Every small job in which a relation is at work, with what is changed in it."""
    for case in CASES:
        yield case.values[0]["base"], case.values[0]["set"]
    for one in CONTRADICTIONS.values():
        yield one["base"], one["set"]
    for base, patches, _ in OF_THE_SURFACE:
        area = "runway" if base == "runway_grooving" else "mainline"
        yield base, {key.replace("mainline", area): each for key, each in patches.items()}


def told() -> set[str]:
    """Slugs of the relations behind every clash, result and idle limit of those jobs."""
    found: set[str] = set()
    for base, patches in jobs():
        made = reconcile(job(base, deepcopy(patches)))
        for verdict in made.verdicts:
            if verdict.clash:
                relations = verdict.clash.relations
                found |= {part.slug for each in relations for part in (each, *each.parts)}
            if verdict.result:
                found.add(verdict.result.relation.slug)
    return found


# Two caps on one surface never clash: it is what makes a cap idle (see the law on half-cars).
_NEVER_TOLD = {"half-car-at-most-mean"}


def test_every_relation_is_at_work_in_an_executed_case() -> None:
    assert {each.slug for each in all_relations()} - told() == _NEVER_TOLD


@pytest.mark.parametrize("relation", RELATIONS)
def test_a_relation_names_its_source_and_where_it_holds(relation: Relation) -> None:
    assert relation.source
    assert relation.validity
    assert relation.statement
    assert relation.kind == "exact" or relation.validity != "always"


READINGS = {"one-blade-thickness", "one-flush-grind-thickness"}
"""Exact as soon as one thickness is read as both; that it is read so is said in the finding."""


@pytest.mark.parametrize("relation", RELATIONS)
def test_what_is_known_from_memory_or_by_practice_alone_can_not_prove(relation: Relation) -> None:
    weak = ("memory", "no source", "project calculation", "second-hand")
    leans = any(word in relation.source for word in weak)

    if relation.kind == "exact" and relation.slug not in READINGS:
        assert not leans or relation.source.startswith("geometry")


def test_a_half_car_limit_above_the_mean_limit_is_idle() -> None:
    ride = {"index": "MRI", "limit": "at most 60 in/mi"}
    other = {"in": "sheet 4", "smoothness": {"index": "HRI", "limit": "at most 70 in/mi"}}
    made = reconcile(
        job(
            "diamond_grinding",
            {"areas.mainline.smoothness": ride, "areas.mainline.also_stated": [other]},
        )
    )
    (half,) = [
        row
        for area in made.areas
        for row in area.table
        if row.requirement.variable == "ride.half_car"
    ]

    assert half.outcome == "idle"
