"""Texture depth: mean and single, over or between the grooves, on the scale of its method."""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model import Area, Job
from specwriter.model.results import TextureDepth
from specwriter.reconcile.requirement import Requirement, sources, stated
from specwriter.trade.texture_depth import Conversion, conversion_of

SCALES: dict[Conversion, str] = {
    "0.2 + 0.8 MPD": "texture_depth.mpd_by_older_edition",
    "1.1 MPD": "texture_depth.mpd_by_edition_of_2019",
    "0.069 + 0.947 MPD": "texture_depth.mpd_by_circular_track",
}
"""Conversion → the variable of a profile depth that is converted so."""

PATCH_SCALE = ("texture_depth", "texture_depth.estimated")
"""Variables on the scale of the patch: measured by it, or estimated from a profile."""

SINGLE = dict(
    zip(PATCH_SCALE, ("texture_depth.single", "texture_depth.estimated_single"), strict=True)
)
"""Variable of the mean → that of a single test."""


def read(job: Job, area: Area) -> Iterator[Requirement]:
    """The limits of the area, and of other documents."""
    for source in sources(area):
        depth = source.texture_depth
        if depth is None:
            continue
        mean = scale(depth)
        if mean:
            yield from stated(mean, depth, "at_least", source)
            yield from stated(mean, depth, "at_most", source, bare="at_most")
        if mean in SINGLE:
            yield from stated(SINGLE[mean], depth, "single_at_least", source)


def waits(job: Job, area: Area) -> Iterator[str]:
    """Why a limit that the job states cannot be read."""
    for source in sources(area):
        depth = source.texture_depth
        if depth is not None and (depth.at_least or depth.at_most) and scale(depth) is None:
            yield "no method and edition says how profile depth (MPD) becomes texture depth"


def scale(depth: TextureDepth) -> str | None:
    """The variable that the limits speak of; ``None`` where no edition says what MPD means."""
    if depth.surface == "between_grooves":
        return "texture_depth.between_grooves"
    if depth.measure != "MPD":
        return "texture_depth.estimated" if depth.measure == "ETD" else "texture_depth"
    conversion = conversion_of(depth.method or "", depth.edition or "")
    return None if conversion is None else SCALES[conversion]
