"""Ends of the spacing of a random pattern, beside the spacing that counts as close."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.requirement import Requirement, sources, stated


def read(job: Job, area: Area) -> Iterator[Requirement]:
    """Both ends, where the spacing is a range and a share of it must be close."""
    for source in sources(area):
        groove = source.groove
        if groove is None or groove.close_spacing is None or groove.spacing is None:
            continue
        for name, end in (("least", "low"), ("greatest", "high")):
            for each in stated(f"groove.{name}_spacing", groove, "spacing", source):
                value = getattr(each.interval, end)
                point = Interval(value, value)
                if value is not None and groove.spacing.form == "range":
                    yield replace(each, interval=point, reading=point)


def waits(job: Job, area: Area) -> Iterator[str]:
    """Nothing waits: without both there is nothing to compare."""
    return iter(())
