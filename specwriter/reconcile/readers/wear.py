"""Texture depth at the start and at the end of life, on the scale of the patch.

The initial limit is a lower limit: the surface that is looked at is the one that just meets it.
It stands under a name of its own, so that the end of life asks nothing of the dimensions where
such a limit stands between them.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.readers.texture_depth import PATCH_SCALE, scale
from specwriter.reconcile.requirement import Requirement, sources, stated


def read(job: Job, area: Area) -> Iterator[Requirement]:
    """The first initial limit, and every limit at the end of life."""
    depths = [each.texture_depth for each in sources(area) if each.texture_depth is not None]
    depths = [each for each in depths if scale(each) in PATCH_SCALE]
    if not any(each.end_of_life_at_least for each in depths):
        return
    for depth in depths:
        yield from stated("texture_depth.end_of_life", depth, "end_of_life_at_least")
    for depth in (each for each in depths if each.at_least is not None):
        for each in stated("texture_depth.initial", depth, "at_least"):
            low = each.interval.low if each.interval.low is not None else each.interval.high
            yield replace(each, interval=Interval(low, low), reading=Interval(low, low))
        return


def waits(job: Job, area: Area) -> Iterator[str]:
    """Why a limit at the end of life cannot be read."""
    depth = area.texture_depth
    if depth is not None and depth.end_of_life_at_least and scale(depth) not in PATCH_SCALE:
        yield "the published loss is one of patch depth (MTD) over grooves and lands"
