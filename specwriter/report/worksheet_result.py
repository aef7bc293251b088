"""The worksheet of one job file; every form of the report is made from it."""

from __future__ import annotations

from dataclasses import dataclass

from specwriter.source import Source
from specwriter.worksheet import Worksheet


@dataclass(frozen=True, slots=True, kw_only=True)
class WorksheetResult:
    """``worksheet`` is ``None`` when the source has faults."""

    source: Source
    worksheet: Worksheet | None = None
