"""Ends of the spacing of a random pattern: relations speak of its mean."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.requirement import Requirement, is_random, sources, stated
from specwriter.reconcile.variables import label

GREATEST = "groove.greatest_spacing"


def read(job: Job, area: Area) -> Iterator[Requirement]:
    """Both ends, where the spacing is a range and a share of it must be close."""
    for source in sources(area):
        groove = source.groove
        if groove is None or not is_random(source):
            continue
        for each in stated("groove.least_spacing", groove, "spacing", source):
            least, greatest = each.interval
            yield each.narrowed(Interval(least, least))
            most = replace(each, variable=GREATEST, label=label(GREATEST))
            yield most.narrowed(Interval(None, greatest))


def waits(job: Job, area: Area) -> Iterator[str]:
    """Nothing waits: without both there is nothing to compare."""
    return iter(())
