"""Each area with its texture depth; only for rules that need ``texture_depth``."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Area, Job
from specwriter.model.results import TextureDepth
from specwriter.rules.rule import given

GROOVED = (
    "longitudinal_grooving",
    "transverse_grooving",
    "runway_grooving",
    "next_generation_concrete_surface",
)
"""Textures with lands wide enough to be measured apart from the grooves."""


def depths(job: Job) -> Iterator[tuple[Area, TextureDepth]]:
    """Each area with its texture depth requirement."""
    for area in job.areas.values():
        yield area, given(area.texture_depth)
