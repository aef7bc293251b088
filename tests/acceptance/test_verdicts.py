"""Requirements that can be built: what is assured, what is not, what is idle, what is silent.

The judge is arithmetic by hand, beside each case.
"""

from __future__ import annotations

from copy import deepcopy
from pathlib import Path
from typing import Any

import pytest
import yaml

from specwriter.reconcile import findings_of, reconcile
from specwriter.reconcile.explain_result import result_finding, show_against
from specwriter.reconcile.verdict import Verdict
from tests.support import job

CASES: dict[str, dict[str, Any]] = yaml.safe_load(
    Path(__file__).with_name("verdicts.yaml").read_text(encoding="utf-8")
)
PARAMS = [pytest.param(case, id=name) for name, case in CASES.items()]
REPAIRED = [pytest.param(case, id=name) for name, case in CASES.items() if "repair" in case]


def verdicts_of(case: dict[str, Any]) -> tuple[Verdict, ...]:
    return reconcile(job(case["base"], deepcopy(case["set"]))).verdicts


@pytest.mark.parametrize("case", PARAMS)
def test_the_outcomes_are_those_of_the_arithmetic(case: dict[str, Any]) -> None:
    found = verdicts_of(case)
    expected = case.get("outcome", {})
    results = {each.result.target.variable: each.outcome for each in found if each.result}
    idle = {each.idle.requirement.variable: each.outcome for each in found if each.idle}

    assert [each for each in found if each.clash] == []
    assert {**idle, **results} | expected == {**idle, **results}
    told = {each.area: each.says for each in findings_of(reconcile(_job(case)))}
    assert bool(told) == ("not assured" in expected.values()), told


@pytest.mark.parametrize("case", PARAMS)
def test_the_witness_gives_the_worst_value(case: dict[str, Any]) -> None:
    checks = [each.result for each in verdicts_of(case) if each.result and each.result.witness]

    worst = [
        show_against(dict(one.witness)[one.target.variable], one.target.quantity) for one in checks
    ]
    assert [each for each in case.get("worst", []) if each not in worst] == []


@pytest.mark.parametrize("case", PARAMS)
def test_the_limit_that_is_offered_is_kept_by_every_choice(case: dict[str, Any]) -> None:
    for verdict in (each for each in verdicts_of(case) if each.outcome == "not assured"):
        assert verdict.result is not None
        target = verdict.result.target
        offered = result_finding(verdict.area, verdict.result).settle[-1]
        assert offered.startswith(f"{target.label} at ")
        patches = deepcopy(case["set"])
        patches[target.path] = offered.removeprefix(f"{target.label} ")
        again = reconcile(job(case["base"], patches)).verdicts
        failed = [
            each.result.target.path
            for each in again
            if each.result and each.outcome == "not assured"
        ]
        assert target.path not in failed


@pytest.mark.parametrize("case", REPAIRED)
def test_the_repaired_twin_is_silent(case: dict[str, Any]) -> None:
    repaired = reconcile(job(case["base"], deepcopy(case["set"] | case["repair"])))

    assert [each.says for each in findings_of(repaired)] == []


def _job(case: dict[str, Any]) -> Any:
    return job(case["base"], deepcopy(case["set"]))
