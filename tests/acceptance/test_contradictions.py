"""Contradictions of several requirements: found, smallest, and ended by each of their moves.

The judge is arithmetic by hand, beside each case; that a set is smallest is held against the SMT
solver too where all relations are exact.
"""

from __future__ import annotations

from copy import deepcopy
from pathlib import Path
from typing import Any

import pytest
import yaml

from specwriter.diagnostic import Grade
from specwriter.reconcile import findings_of, reconcile
from specwriter.reconcile.registry import relations_by_topic
from specwriter.reconcile.solve import solve
from specwriter.reconcile.system import System, system_of
from specwriter.reconcile.verdict import Verdict
from tests.laws.judge import Judge
from tests.support import job

CASES: dict[str, dict[str, Any]] = yaml.safe_load(
    Path(__file__).with_name("contradictions.yaml").read_text(encoding="utf-8")
)
TOPICS = {topic: set(some) for topic, some in relations_by_topic().items()}
NOT_ALONE = {"groove.least_spacing", "groove.greatest_spacing", "wet.texture"}
PARAMS = [pytest.param(case, id=name) for name, case in CASES.items()]


def looked_at(case: dict[str, Any]) -> tuple[System, list[Verdict]]:
    built = job(case["base"], deepcopy(case["set"]))
    (area,) = built.areas.values()
    verdicts = [each for each in reconcile(built).verdicts if each.clash]
    return system_of(built, area), verdicts


@pytest.mark.parametrize("case", PARAMS)
def test_the_smallest_set_is_named(case: dict[str, Any]) -> None:
    _, verdicts = looked_at(case)
    found = [sorted(one.variable for one in each.clash.members) for each in verdicts if each.clash]
    grades = [
        each.grade for each in findings_of(reconcile(job(case["base"], deepcopy(case["set"]))))
    ]

    assert found == [sorted(case["clash"])]
    assert grades == [Grade(case.get("grade", "conflict"))]


@pytest.mark.parametrize("case", PARAMS)
def test_without_any_one_member_the_rest_can_be_built(case: dict[str, Any]) -> None:
    system, verdicts = looked_at(case)
    for verdict in verdicts:
        assert verdict.clash is not None
        members, proved = verdict.clash.members, verdict.clash.is_proof
        relations = system.exact if proved else system.relations
        assert verdict.clash.is_smallest
        assert solve(members, relations).refuted
        for each in members:
            rest = [one for one in members if one is not each]
            assert solve(rest, relations).solution is not None
            if proved:
                judge = Judge(rest, relations)
                assert judge.verdict((one.variable, one.reading) for one in rest) == "sat"


@pytest.mark.parametrize("case", PARAMS)
def test_each_member_moved_to_its_range_ends_the_clash(case: dict[str, Any]) -> None:
    _, verdicts = looked_at(case)
    for verdict in verdicts:
        assert verdict.clash is not None
        members, relations = verdict.clash.members, verdict.clash.relations
        assert verdict.clash.moves
        for move in verdict.clash.moves:
            moved = [each.narrowed(move.to) if each is move.member else each for each in members]
            assert solve(moved, relations).solution is not None


@pytest.mark.parametrize("case", PARAMS)
def test_each_way_out_settles_the_job_as_it_is_printed(case: dict[str, Any]) -> None:
    """The ends of a random pattern stand under one key: neither can be put in alone. The texture
    that a film needs is another requirement than the one that the grooves can give."""
    _, verdicts = looked_at(case)
    for verdict in verdicts:
        assert verdict.clash is not None
        for move in verdict.clash.moves:
            member = move.member
            if member.variable in NOT_ALONE:
                continue
            patches = deepcopy(case["set"])
            patches[member.path] = member.moved(move.to)
            left = findings_of(reconcile(job(case["base"], patches)))
            assert [each.says for each in left if "assured" not in each.slug] == []


@pytest.mark.parametrize("case", PARAMS)
def test_the_repaired_twin_is_silent(case: dict[str, Any]) -> None:
    repaired = reconcile(job(case["base"], deepcopy(case["set"] | case["repair"])))

    assert [each.says for each in findings_of(repaired)] == []


def test_in_every_topic_three_clash_of_which_each_two_go_together() -> None:
    """Sets of three and more: that fewer go together is held above, for each of them."""
    found: set[str] = set()
    for case in CASES.values():
        _, verdicts = looked_at(case)
        (clash,) = (each.clash for each in verdicts)
        assert clash is not None
        if len(clash.members) >= 3:
            used = {part for each in clash.relations for part in (each, *each.parts)}
            found |= {topic for topic, some in TOPICS.items() if used.intersection(some)}

    assert found >= {
        "groove",
        "blade",
        "coverage",
        "removal",
        "ride",
        "texture",
        "friction",
        "wet",
    }


def test_the_cases_take_three_four_and_five_requirements_and_every_texture() -> None:
    sizes = [len(case["clash"]) for case in CASES.values()]

    assert len(CASES) >= 40
    assert {3, 4, 5} <= set(sizes)
    assert len({case["base"] for case in CASES.values()}) == 5
