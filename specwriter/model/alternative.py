"""The job as it stands where the contractor cuts an alternative pattern of grooves."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from specwriter.model.area import Alternative, Area
from specwriter.model.job import Job


def with_each_alternative(job: Job) -> Iterator[tuple[Job, Alternative]]:
    """The job once for each alternative, with no area but the one that has it."""
    for area in job.areas.values():
        for each in area.alternatives:
            yield replace(job, areas={area.id: _cut_as(area, each)}), each


def _cut_as(area: Area, other: Alternative) -> Area:
    """The area with the grooves of an alternative.

    The blade set of the area belongs to its own grooves, and so does what other documents say of
    them; the blades that may fail belong to the machine.
    """
    blade = area.blade and replace(area.blade, segment=None, core=None, spacer=None, per_head=None)
    return replace(
        area,
        groove=other.groove,
        land=other.land,
        blade=blade,
        also_stated=(),
        alternatives=(),
    )
