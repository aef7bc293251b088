"""What a change does to the verdicts: those that appear, vanish or turn into others."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from specwriter.compare.findings import moved
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.verdict import Verdict


@dataclass(frozen=True, slots=True, kw_only=True)
class VerdictChange:
    """What is said of one result or clash before and after; empty where nothing is said."""

    area: str
    about: str
    old: str
    new: str


def verdict_changes(
    old: Iterable[Verdict], new: Iterable[Verdict], moves: Mapping[str, str]
) -> tuple[VerdictChange, ...]:
    """Verdicts on the same requirements with another outcome, in the order of the new job."""
    was = {_key(each, moves): each for each in old}
    now = {_key(each, {}): each for each in new}
    keys = [*now, *(key for key in was if key not in now)]
    return tuple(
        VerdictChange(
            area=(now.get(key) or was[key]).area,
            about=_about(now.get(key) or was[key]),
            old=was[key].outcome if key in was else "",
            new=now[key].outcome if key in now else "",
        )
        for key in keys
        if (key in was) != (key in now) or was[key].outcome != now[key].outcome
    )


def _key(verdict: Verdict, moves: Mapping[str, str]) -> tuple[str, str, tuple[str, ...]]:
    area = moved(f"areas.{verdict.area}", moves)
    paths = tuple(sorted(moved(each.path, moves) for each in _members(verdict)))
    return "idle" if verdict.idle else "", area, paths


def _members(verdict: Verdict) -> tuple[Requirement, ...]:
    """The requirement that is judged, or those that clash."""
    if verdict.result:
        return (verdict.result.target,)
    if verdict.idle:
        return (verdict.idle.requirement,)
    return verdict.clash.members if verdict.clash else ()


def _about(verdict: Verdict) -> str:
    return ", ".join(each.label for each in _members(verdict))
