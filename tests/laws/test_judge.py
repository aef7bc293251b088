"""The engine and an SMT solver must come to the same verdict.

Outside check: z3 (see ``judge``), exact over the reals.
"""

from __future__ import annotations

from typing import Any

from hypothesis import given

from specwriter.model import Job
from specwriter.quantity import Interval
from specwriter.reconcile import reconcile
from specwriter.reconcile.assure import beyond, sides
from specwriter.reconcile.box import box_of, rough
from specwriter.reconcile.propagate import propagate
from specwriter.reconcile.rest import rest_of
from specwriter.reconcile.solve import solve
from specwriter.reconcile.system import System, system_of
from tests.laws.count import cases
from tests.laws.judge import Judge
from tests.laws.systems import areas, contracts, machines, patches
from tests.support import job


def made(keys: dict[str, Any]) -> tuple[Job, System]:
    built = job("longitudinal_grooving", patches(keys))
    return built, system_of(built, built.areas["mainline"])


def judged_alike(system: System) -> None:
    """Each judge comes to the verdict of the other; what the judge decides, the engine does."""
    answer = solve(system.requirements, system.exact)
    verdict = Judge(system.requirements, system.exact).verdict(
        (each.variable, each.reading) for each in system.requirements
    )

    assert not (answer.refuted and verdict == "sat")
    assert not (answer.solution is not None and verdict == "unsat")
    assert verdict == "unknown" or answer.refuted or answer.solution is not None, "not decided"


@cases(400)
@given(contracts())
def test_grooves_and_blades_are_judged_alike(keys: dict[str, Any]) -> None:
    judged_alike(made(keys)[1])


@cases(300)
@given(areas())
def test_whole_areas_are_judged_alike(drawn: tuple[str, dict[str, Any]]) -> None:
    built = job(*drawn)

    judged_alike(system_of(built, built.areas["mainline"]))


@cases(100)
@given(machines())
def test_heads_passes_and_what_is_left_are_judged_alike(patched: dict[str, Any]) -> None:
    built = job("next_generation_concrete_surface", patched)

    judged_alike(system_of(built, built.areas["mainline"]))


@cases(100)
@given(contracts())
def test_the_solution_satisfies_the_other_judge(keys: dict[str, Any]) -> None:
    _, system = made(keys)
    answer = solve(system.requirements, system.exact)
    if answer.solution is None:
        return
    points = ((name, Interval(at, at)) for name, at in answer.solution.items())

    judge = Judge(system.requirements, system.exact)

    assert judge.verdict((name, point) for name, point in points if name in judge.terms) == "sat"


@cases(100)
@given(contracts())
def test_floating_point_loses_nothing_that_exact_arithmetic_keeps(keys: dict[str, Any]) -> None:
    _, system = made(keys)
    box = box_of(system.requirements)
    if box is None:
        return
    exact, quick = propagate(box, system.exact), propagate(rough(box), system.exact)
    if quick is None:
        assert solve(system.requirements, system.exact).refuted
    elif exact is not None and (point := solve(system.requirements, system.exact).solution):
        for name, at in point.items():
            interval = quick.get(name, Interval(None, None))
            assert interval.low is None or float(interval.low) <= float(at) * (1 + 1e-9)
            assert interval.high is None or float(interval.high) >= float(at) * (1 - 1e-9)


@cases(100)
@given(contracts())
def test_every_result_is_judged_alike(keys: dict[str, Any]) -> None:
    built, system = made(keys)
    verdicts = reconcile(built).verdicts
    if any(each.clash for each in verdicts):
        return
    for verdict in verdicts:
        if verdict.result is None or verdict.result.target.variable != "texture_depth":
            continue
        target = verdict.result.target
        rest = rest_of(target, system.requirements, system.relations)
        judge = Judge(system.requirements, rest.relations)
        stated = [
            (each.variable, each.interval if rest.exact else each.reading)
            for each in rest.requirements
        ]
        failing = [
            judge.verdict([*stated, (target.variable, beyond(side, limit))])
            for side, limit, _ in sides(target.interval, Interval(None, None))
        ]
        if verdict.outcome == "assured":
            assert "sat" not in failing
        elif verdict.outcome == "not assured":
            assert failing != ["unsat"] * len(failing)
            point = [(name, Interval(at, at)) for name, at in verdict.result.witness]
            known = [(name, at) for name, at in point if name in judge.terms]
            assert judge.verdict([*stated, *known]) == "sat"
