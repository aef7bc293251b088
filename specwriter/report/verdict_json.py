"""Verdicts as JSON values: places by path, computed values in the unit of what was written."""

from __future__ import annotations

from typing import Any

from specwriter.quantity import show_interval_like, show_like
from specwriter.reconcile import Verdict
from specwriter.reconcile.box import neat
from specwriter.reconcile.clash import Clash
from specwriter.reconcile.explain_result import show_against
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.verdict import Idle, ResultCheck, Standing
from specwriter.report.area_table import verdict_of


def verdict_json(verdict: Verdict) -> dict[str, Any]:
    """Keys ``area``, ``outcome`` and one of ``clash``, ``result`` and ``idle``."""
    return {
        "area": verdict.area,
        "outcome": verdict.outcome,
        "clash": None if verdict.clash is None else _clash(verdict.clash),
        "result": None if verdict.result is None else _result(verdict.result),
        "idle": None if verdict.idle is None else _idle(verdict.idle),
    }


def standing_json(standing: Standing) -> dict[str, Any]:
    """One row of an area's table."""
    requirement = standing.requirement
    return {
        **_requirement(requirement),
        "allowed": show_interval_like(neat(standing.allowed), requirement.quantity),
        "expected": None
        if standing.expected is None
        else show_interval_like(neat(standing.expected), requirement.quantity),
        "outcome": standing.outcome,
        "verdict": verdict_of(standing),
    }


def _clash(clash: Clash) -> dict[str, Any]:
    return {
        "requirements": [_requirement(each) for each in clash.members],
        "relations": [
            {"slug": each.slug, "statement": each.statement, "source": each.source}
            for each in clash.relations
        ],
        "moves": [
            {
                "at": each.member.path,
                "to": show_interval_like(each.to, each.member.quantity, inward=True),
            }
            for each in clash.moves
        ],
        "nominal_only": clash.nominal_only,
        "proved": clash.is_proof,
    }


def _result(check: ResultCheck) -> dict[str, Any]:
    samples = {each.variable: each.quantity for each in check.members}
    target = check.target
    return {
        "target": _requirement(target),
        "relation": check.relation.slug,
        "allowed": show_interval_like(check.allowed, target.quantity),
        "margin": None if check.margin is None else show_like(check.margin, target.quantity),
        "witness": {
            name: show_like(value, samples[name])
            for name, value in check.witness
            if name in samples
        },
        "gives": next(
            (
                show_against(value, target.quantity)
                for name, value in check.witness
                if name == target.variable
            ),
            None,
        ),
        "missing": check.missing or None,
        "tightenings": [
            {
                "at": each.member.path,
                "to": show_interval_like(each.to, each.member.quantity, inward=True),
            }
            for each in check.tightenings
        ],
    }


def _idle(idle: Idle) -> dict[str, Any]:
    return {
        "limit": _requirement(idle.requirement),
        "allowed": show_interval_like(neat(idle.allowed), idle.requirement.quantity),
        "because": [_requirement(each) for each in idle.because],
    }


def _requirement(requirement: Requirement) -> dict[str, str]:
    return {
        "path": requirement.path,
        "label": requirement.label,
        "written": requirement.written,
        "role": requirement.role,
    }
