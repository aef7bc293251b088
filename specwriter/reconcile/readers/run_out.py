"""The run-out of a cut and the straightedge that is laid over it, where both are stated.

Both stand under names of their own: two lengths of one straightedge ask for two tests, and are no
contradiction.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from specwriter.model import Area, Job
from specwriter.reconcile.requirement import Requirement, stated

RUN_OUT, EDGE = "run_out.length", "run_out.straightedge"

_LEFT_OUT = re.compile(r"\b(?:except|excluding|not|outside|away)\b", re.IGNORECASE)


def read(job: Job, area: Area) -> Iterator[Requirement]:
    """Both lengths of the area, unless its test leaves places out."""
    edge, coverage = area.straightedge, area.coverage
    if edge is None or coverage is None or coverage.feathering is None:
        return
    if edge.test is not None and _LEFT_OUT.search(edge.test.where or ""):
        return
    yield from stated(RUN_OUT, coverage, "feathering")
    yield from stated(EDGE, edge, "length")


def waits(job: Job, area: Area) -> Iterator[str]:
    """Nothing waits: without both there is nothing to compare."""
    return iter(())
