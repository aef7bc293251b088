"""What a change does to the findings: which appear, which vanish, which are said differently."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from specwriter.compare.change import AlteredFinding, Change
from specwriter.diagnostic import Finding

_Key = tuple[str, str, tuple[str, ...]]


@dataclass(frozen=True, slots=True, kw_only=True)
class Effect:
    """Findings of the new job alone, of the old job alone, and of both in different words."""

    appeared: tuple[Finding, ...]
    vanished: tuple[Finding, ...]
    altered: tuple[AlteredFinding, ...]


def effect(old: Iterable[Finding], new: Iterable[Finding], moves: Mapping[str, str]) -> Effect:
    """Matches findings by slug, area and the requirements involved.

    ``moves`` gives old path → new path where the same requirement stands elsewhere.
    """
    before = _by_key(old, moves)
    appeared, altered = [], []
    for finding in new:
        waiting = before.get(_key(finding, {}), [])
        if not waiting:
            appeared.append(finding)
            continue
        earlier = _take_nearest(waiting, finding)
        if _wording(earlier) != _wording(finding):
            altered.append(AlteredFinding(old=earlier, new=finding))
    vanished = [finding for waiting in before.values() for finding in waiting]
    return Effect(appeared=tuple(appeared), vanished=tuple(vanished), altered=tuple(altered))


def _by_key(findings: Iterable[Finding], moves: Mapping[str, str]) -> dict[_Key, list[Finding]]:
    found = defaultdict(list)
    for finding in findings:
        found[_key(finding, moves)].append(finding)
    return found


def _key(finding: Finding, moves: Mapping[str, str]) -> _Key:
    area = finding.area or ""
    paths = sorted(moved(evidence.path, moves) for evidence in finding.evidence)
    return finding.slug, moved(f"areas.{area}", moves), tuple(paths)


def moved(path: str, moves: Mapping[str, str]) -> str:
    """Where a path of the old job stands in the new one; the longest known part decides."""
    parts = path.split(".")
    for end in range(len(parts), 0, -1):
        if target := moves.get(".".join(parts[:end])):
            return ".".join([target, *parts[end:]])
    return path


def _take_nearest(waiting: list[Finding], finding: Finding) -> Finding:
    """The earlier finding with the same wording, else the first; it is used up."""
    same = [each for each in waiting if _wording(each) == _wording(finding)]
    earlier = (same or waiting)[0]
    waiting.remove(earlier)
    return earlier


def _wording(finding: Finding) -> tuple[str, str, str, tuple[str, ...]]:
    written = tuple(sorted(evidence.written for evidence in finding.evidence))
    return finding.grade.value, finding.title, finding.says, written


def changes_behind(finding: Finding, changes: Iterable[Change]) -> tuple[Change, ...]:
    """The changes of requirements that a finding rests on."""
    paths = [evidence.path for evidence in finding.evidence]
    return tuple(
        change
        for change in changes
        if any(
            side is not None and any(_overlap(side.path, path) for path in paths)
            for side in (change.old, change.new)
        )
    )


def _overlap(one: str, other: str) -> bool:
    """True when one path is the other or stands above it."""
    return f"{one}.".startswith(f"{other}.") or f"{other}.".startswith(f"{one}.")
