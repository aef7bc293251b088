"""A limit of profile depth beside one of patch depth, each as the number it names.

Two lower limits on one surface exclude nothing; what can be compared is whether they ask for the
same texture.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.readers.texture_depth import PATCH_SCALE, scale
from specwriter.reconcile.requirement import Requirement, sources, stated

PATCH, PROFILE = "texture_depth.named_patch", "texture_depth.named_profile"


def read(job: Job, area: Area) -> Iterator[Requirement]:
    """The first limit of each kind, where both are stated over the grooves."""
    found: dict[str, Requirement] = {}
    for source in sources(area):
        depth = source.texture_depth
        kind = None if depth is None else scale(depth)
        if depth is None or kind in (None, "texture_depth.between_grooves"):
            continue
        name = PATCH if kind in PATCH_SCALE else PROFILE
        for each in stated(name, depth, "at_least", source):
            low = each.interval.low
            found.setdefault(name, replace(each, interval=Interval(low, low)))
    if len(found) == 2:
        yield from (replace(each, reading=each.interval) for each in found.values())


def waits(job: Job, area: Area) -> Iterator[str]:
    """Nothing waits: a limit that cannot be read is reported with the texture depth."""
    return iter(())
