"""Two versions compared, as JSON: for review pipelines, with keys that stay the same."""

from __future__ import annotations

import json
from typing import Any

from specwriter.compare.amounts import AmountChange, Count
from specwriter.compare.text import Span
from specwriter.compare.text.changes import TextChange
from specwriter.compare.text.judgement import judge_text
from specwriter.report.compared import Compared, Version
from specwriter.report.comparison_json import comparison_json
from specwriter.report.versions_text import places, text_summary


def versions_json(compared: Compared) -> str:
    """The comparison as one JSON object; without jobs the keys of the requirements are absent."""
    answer: dict[str, Any] = {}
    if compared.comparison is not None:
        answer = json.loads(comparison_json(compared.comparison, *places(compared)))
        answer["amounts"] = [_amount(each) for each in compared.comparison.amounts]
        answer["verdicts"] = [
            {"area": each.area, "about": each.about, "old": each.old, "new": each.new}
            for each in compared.comparison.verdicts
        ]
    answer["versions"] = {"old": _version(compared.old), "new": _version(compared.new)}
    answer["text"] = {
        "changes": [_change(each) for each in compared.text_changes],
        "summary": text_summary(compared.text_changes),
    }
    return json.dumps(answer, indent=2, ensure_ascii=False) + "\n"


def _version(version: Version) -> dict[str, Any]:
    return {
        "file": version.name,
        "holds_job": version.checked is not None,
        "note": version.note,
        "edited_by_hand": [_change(each) for each in version.by_hand],
    }


def _amount(change: AmountChange) -> dict[str, Any]:
    return {
        "label": change.label,
        "old": _count(change.old),
        "new": _count(change.new),
        "difference": change.difference,
    }


def _count(count: Count | None) -> dict[str, Any] | None:
    if count is None:
        return None
    return {"written": count.text, "unit": count.unit, "basis": count.basis}


def _change(change: TextChange) -> dict[str, Any]:
    judged = judge_text(change)
    return {
        "kind": change.kind,
        "sense": judged.sense.value,
        "clause": change.clause,
        "new_clause": change.new_clause,
        "place": change.place,
        "old": change.old,
        "new": change.new,
        "words": [_span(span) for span in change.spans],
        "difference": judged.difference,
        "warning": judged.warning,
        "follows_a_number": change.follows,
    }


def _span(span: Span) -> dict[str, str]:
    return {"kind": span.kind, "text": span.text}
