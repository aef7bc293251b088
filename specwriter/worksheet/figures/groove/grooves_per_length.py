"""Number of grooves in a length."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Job
from specwriter.trade.formula import identity
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import spacing
from specwriter.worksheet.scale import COUNT
from specwriter.worksheet.sheet import areas

FORMULA = identity("grooves per length = length / spacing")


def figures(job: Job) -> Iterator[Line]:
    """Grooves per foot and per metre."""
    for area, sheet in areas(job):
        yield sheet.figure(
            "grooves per length", FORMULA, COUNT, (spacing(area),), lambda pitch: 1 / pitch
        )
