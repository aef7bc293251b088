"""Findings of one check that are settled in one way, told once for all areas and pay items."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from specwriter.diagnostic import Finding, Grade


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """What a report tells once: the finding in the words for all its areas, and those areas."""

    finding: Finding
    areas: tuple[str, ...]


def grouped(findings: Iterable[Finding]) -> list[Told]:
    """Each finding once, at the place of the first that was made, with all its areas.

    Findings that differ in nothing but the area are one. So are those of one check that are settled
    in the same way, with what is said of each; only a conflict keeps its own arithmetic for itself.
    """
    found: dict[tuple[object, ...], list[Finding]] = {}
    for each in findings:
        says = each.says if each.grade is Grade.CONFLICT else ""
        alike = (each.slug, each.grade, each.title, says, each.settle, each.area is None)
        found.setdefault(alike, []).append(each)
    return [_together(some) for some in found.values()]


def _together(some: list[Finding]) -> Told:
    first = some[0]
    areas = tuple(dict.fromkeys(each.area for each in some if each.area))
    several = f"{', '.join(areas[:-1])} and {areas[-1]}" if areas[1:] else first.area
    evidence = dict.fromkeys(piece for each in some for piece in each.evidence)
    told = replace(first, area=several, says=_says(some), evidence=tuple(evidence))
    return Told(finding=told, areas=areas)


def _says(some: list[Finding]) -> str:
    """One sentence where all say the same, else what is said of each area or pay item."""
    said = dict.fromkeys(each.says for each in some)
    if len(said) == 1 or len({each.area for each in some}) == 1:
        return " ".join(said)
    by_area: dict[str | None, list[str]] = {}
    for each in some:
        by_area.setdefault(each.area, []).append(each.says)
    return " ".join(f"{area}: {' '.join(says)}" for area, says in by_area.items())
