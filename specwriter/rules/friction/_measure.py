"""Each area with its friction and the measure that it names."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Area, Job
from specwriter.model.results import Friction
from specwriter.rules.rule import given
from specwriter.trade.friction_measure import Measure, read_measure


def frictions(job: Job) -> Iterator[tuple[Area, Friction, Measure]]:
    """Each area with its friction and the known measure; only for rules that need the measure."""
    for area in job.areas.values():
        friction = given(area.friction)
        if measure := read_measure(friction.measure):
            yield area, friction, measure
