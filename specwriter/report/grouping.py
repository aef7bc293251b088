"""Findings that say the same of several areas, told once."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from specwriter.diagnostic import Finding


def grouped(findings: Iterable[Finding]) -> list[Finding]:
    """Each finding once, at the place of the first area it was made for, with all its areas."""
    found: dict[tuple[object, ...], list[Finding]] = {}
    for each in findings:
        alike = (each.slug, each.grade, each.title, each.says, each.settle, each.area is None)
        found.setdefault(alike, []).append(each)
    return [_together(some) for some in found.values()]


def _together(some: list[Finding]) -> Finding:
    first = some[0]
    areas = list(dict.fromkeys(each.area or "" for each in some))
    several = f"{', '.join(areas[:-1])} and {areas[-1]}"
    evidence = dict.fromkeys(piece for each in some for piece in each.evidence)
    return replace(first, area=several if areas[1:] else first.area, evidence=tuple(evidence))
