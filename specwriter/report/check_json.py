"""A check as JSON: for other programs, with keys that stay the same.

``format`` is 1 and grows when a key changes its meaning. Lines and columns count from 1, columns
in characters (code points).
"""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import asdict
from typing import Any

from specwriter.diagnostic import Evidence, Fault, Finding, Grade
from specwriter.report.carried import carried_json
from specwriter.report.check_text import summary
from specwriter.report.grouping import Told
from specwriter.report.result import CheckResult
from specwriter.report.sentences import CAUTION
from specwriter.report.unchecked import reason
from specwriter.report.verdict_json import standing_json, verdict_json
from specwriter.source import Source

FORMAT = 1


def check_json(results: Iterable[CheckResult]) -> str:
    """One JSON object with an entry for each job file, ending in a line break."""
    answer = {"format": FORMAT, "jobs": [_job(each) for each in results], "notice": CAUTION}
    return json.dumps(answer, indent=2, ensure_ascii=False) + "\n"


def _job(result: CheckResult) -> dict[str, Any]:
    source = result.source
    return {
        "file": source.file,
        "readable": result.job is not None,
        **({"document": carried_json(result.carried)} if result.carried else {}),
        "faults": [fault_json(each) for each in source.faults],
        "findings": [_told(each, source) for each in result.told],
        "accepted": [
            {
                "finding": _finding(each.finding, source),
                "because": each.entry.because,
                "by": each.entry.by,
                "on": each.entry.on,
                "until": each.entry.until,
            }
            for each in result.accepted
        ],
        "not_run": [{**asdict(each), "because": reason(each)} for each in result.not_run],
        "verdicts": [verdict_json(each) for each in result.verdicts],
        "tables": {
            area.area: [standing_json(each) for each in area.table] for area in result.areas
        },
        "defects": [asdict(each) for each in result.defects],
        "counts": {grade.value: _count(result, grade) for grade in Grade},
        "summary": summary(result) if result.job else f"{len(source.faults)} faults",
    }


def _count(result: CheckResult, grade: Grade) -> int:
    return sum(1 for each in result.told if each.finding.grade is grade)


def fault_json(fault: Fault) -> dict[str, Any]:
    """A reason why a file cannot be read, with its place."""
    place = fault.place
    return {
        "line": place.line,
        "column": place.column,
        "end": place.column + fault.width,
        "says": fault.says,
        "todo": fault.todo,
    }


def _told(told: Told, source: Source) -> dict[str, Any]:
    """A finding with all its areas; ``area`` is given where it is one."""
    area = told.areas[0] if len(told.areas) == 1 else None
    return {**_finding(told.finding, source), "area": area, "areas": list(told.areas)}


def _finding(finding: Finding, source: Source) -> dict[str, Any]:
    return {
        "slug": finding.slug,
        "grade": finding.grade.value,
        "basis": finding.basis,
        "area": finding.area,
        "title": finding.title,
        "places": [place_json(each, source) for each in finding.evidence],
        "says": finding.says,
        "settle": list(finding.settle),
        "sources": list(finding.sources),
    }


def place_json(each: Evidence, source: Source) -> dict[str, Any]:
    """A requirement with the place where it is written."""
    place = source.place(each.path, each.offset)
    return {
        "path": each.path,
        "label": each.label,
        "written": each.written,
        "line": place.line,
        "column": place.column,
        "end": place.column + len(each.written) - each.offset,
    }
