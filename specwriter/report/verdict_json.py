"""Verdicts as JSON values: places by path, computed lengths in millimetres, wording as written."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from specwriter.quantity import UNITS, Interval, show, show_interval_like, show_like
from specwriter.reconcile import Verdict
from specwriter.reconcile.clash import Clash
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.verdict import ResultCheck


def verdict_json(verdict: Verdict) -> dict[str, Any]:
    """Keys ``area``, ``outcome`` and ``clash`` or ``result``."""
    return {
        "area": verdict.area,
        "outcome": verdict.outcome,
        "clash": None if verdict.clash is None else _clash(verdict.clash),
        "result": None if verdict.result is None else _result(verdict.result),
    }


def _clash(clash: Clash) -> dict[str, Any]:
    return {
        "requirements": [_requirement(each) for each in clash.members],
        "relations": [
            {"slug": each.slug, "statement": each.statement, "source": each.source}
            for each in clash.relations
        ],
        "moves": [
            {"at": each.member.path, "to": show_interval_like(each.to, each.member.quantity)}
            for each in clash.moves
        ],
        "nominal_only": clash.nominal_only,
    }


def _result(check: ResultCheck) -> dict[str, Any]:
    samples = {each.variable: each for each in check.members}
    return {
        "target": _requirement(check.target),
        "grooves": _interval(check.grooves),
        "total": _interval(check.total),
        "upper_bound": check.is_upper_bound,
        "witness": {
            name: show_like(value, samples[name].quantity)
            for name, value in check.witness
            if name in samples
        },
        "land_texture_needed": None if check.land_needed is None else _mm(check.land_needed),
        "tightenings": [
            {"at": each.member.path, "to": show_interval_like(each.to, each.member.quantity)}
            for each in check.tightenings
        ],
    }


def _requirement(requirement: Requirement) -> dict[str, str]:
    return {
        "path": requirement.path,
        "label": requirement.label,
        "written": requirement.quantity.text,
        "role": requirement.role,
    }


def _interval(interval: Interval) -> dict[str, str | None]:
    return {
        "low": None if interval.low is None else _mm(interval.low),
        "high": None if interval.high is None else _mm(interval.high),
    }


def _mm(value: Fraction) -> str:
    return show(value, UNITS["mm"], 3)
