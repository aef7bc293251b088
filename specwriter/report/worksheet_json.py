"""A worksheet as JSON: for other programs, with keys that stay the same.

``format`` is 1 and grows when a key changes its meaning. ``low`` and ``high`` bound a figure in
``unit``; both are ``null`` where its value is words, one where that end is open.
"""

from __future__ import annotations

import json
from dataclasses import asdict
from fractions import Fraction
from typing import Any

from specwriter.report.check_json import fault_json, place_json
from specwriter.report.worksheet_result import WorksheetResult
from specwriter.report.worksheet_text import NOTICE
from specwriter.source import Source
from specwriter.worksheet import Figure

FORMAT = 1


def worksheet_json(result: WorksheetResult) -> str:
    """One JSON object, ending in a line break."""
    sheet, source = result.worksheet, result.source
    answer = {
        "format": FORMAT,
        "file": source.file,
        "readable": sheet is not None,
        "faults": [fault_json(each) for each in source.faults],
        "figures": [_figure(each, source) for each in sheet.figures] if sheet else [],
        "waiting": [asdict(each) for each in sheet.waiting] if sheet else [],
        "defects": [asdict(each) for each in sheet.broken] if sheet else [],
        "notice": NOTICE,
    }
    return json.dumps(answer, indent=2, ensure_ascii=False) + "\n"


def _figure(figure: Figure, source: Source) -> dict[str, Any]:
    return {
        "slug": figure.slug,
        "area": figure.area,
        "alternative": figure.alternative,
        "title": figure.title,
        "value": figure.value,
        "low": _number(figure.low),
        "high": _number(figure.high),
        "unit": figure.unit,
        "formula": figure.formula,
        "inputs": [place_json(each, source) for each in figure.inputs],
        "source": figure.source,
        "validity": figure.validity,
        "note": figure.note,
    }


def _number(end: Fraction | None) -> float | None:
    return None if end is None else round(float(end), 9)
