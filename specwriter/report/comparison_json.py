"""A comparison as JSON: for review pipelines, with keys that stay the same."""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import Any

from specwriter.compare import Change, Comparison, Sense, Side, changes_behind
from specwriter.diagnostic import Finding, Place
from specwriter.report.comparison_text import NOTICE, summary

PlaceOf = Callable[[str], Place]
"""Path → where it stands in a job file."""


def comparison_json(comparison: Comparison, old_place: PlaceOf, new_place: PlaceOf) -> str:
    """The comparison as one JSON object, ending in a line break.

    Lines and columns count from 1. ``counts`` holds every sense, so that a missing key never
    has to be told from a zero.
    """
    answer = {
        "counts": {sense.value: comparison.count(sense) for sense in Sense},
        "changes": [_change(change, old_place, new_place) for change in comparison.changes],
        "findings": {
            "appeared": [
                {**_finding(each, new_place), "touched_by": _behind(each, comparison)}
                for each in comparison.appeared
            ],
            "vanished": [
                {**_finding(each, old_place), "touched_by": _behind(each, comparison)}
                for each in comparison.vanished
            ],
            "altered": [
                {"old": _finding(each.old, old_place), "new": _finding(each.new, new_place)}
                for each in comparison.altered
            ],
        },
        "remarks": list(comparison.remarks),
        "summary": summary(comparison),
        "notice": NOTICE,
    }
    return json.dumps(answer, indent=2, ensure_ascii=False) + "\n"


def _change(change: Change, old_place: PlaceOf, new_place: PlaceOf) -> dict[str, Any]:
    return {
        "sense": change.sense.value,
        "label": change.label,
        "area": change.area,
        "old": _side(change.old, old_place),
        "new": _side(change.new, new_place),
        "difference": change.difference,
        "warning": change.warning,
        "bears": change.bears,
        "because": change.because,
        "source": change.source,
    }


def _behind(finding: Finding, comparison: Comparison) -> list[int]:
    """Positions, from 0, in ``changes``."""
    behind = changes_behind(finding, comparison.changes)
    return [index for index, each in enumerate(comparison.changes) if each in behind]


def _side(side: Side | None, place_of: PlaceOf) -> dict[str, Any] | None:
    if side is None:
        return None
    return {"path": side.path, "written": side.written, **_place(place_of(side.path))}


def _place(place: Place) -> dict[str, Any]:
    return {"file": place.file, "line": place.line, "column": place.column}


def _finding(finding: Finding, place_of: PlaceOf) -> dict[str, Any]:
    return {
        "slug": finding.slug,
        "grade": finding.grade.value,
        "basis": finding.basis,
        "area": finding.area,
        "title": finding.title,
        "says": finding.says,
        "evidence": [
            {
                "path": each.path,
                "label": each.label,
                "written": each.written,
                **_place(place_of(each.path)),
            }
            for each in finding.evidence
        ],
    }
