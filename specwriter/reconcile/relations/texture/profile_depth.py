"""Mean profile depth against the texture depth of the patch, by the edition of the method."""

from __future__ import annotations

from collections.abc import Callable

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.readers.texture_depth import scale
from specwriter.reconcile.relation import Linear, Relation, Unassured
from specwriter.reconcile.relations.texture import WHY
from specwriter.reconcile.requirement import sources
from specwriter.trade.texture_depth import CONVERSION_SOURCES, LINES, Conversion


def _applies(name: str) -> Callable[[Job, Area], bool]:
    def applies(job: Job, area: Area) -> bool:
        depths = (each.texture_depth for each in sources(area))
        return any(depth is not None and scale(depth) == name for depth in depths)

    return applies


def _relation(slug: str, name: str, words: str, conversion: Conversion) -> Relation:
    slope, offset = LINES[conversion]
    shift = offset / 1000
    return Relation(
        slug=slug,
        title="profile depth and the depth of the grooves do not go together",
        statement=f"texture depth of the patch = {words}",
        shape=Linear({name: -slope, "texture_depth": 1}, Interval(shift, shift)),
        why=WHY,
        source=CONVERSION_SOURCES[conversion],
        validity=(
            "the named edition only: the editions disagree; a profile across grooves depends on "
            "the direction in which it is taken"
        ),
        kind="model",
        applies=_applies(name),
        assures=Unassured(
            slug="profile-depth-not-assured",
            title="the dimensions do not assure the profile depth",
        ),
    )


RELATIONS = [
    _relation(
        "profile-depth-by-older-edition",
        "texture_depth.mpd_by_older_edition",
        "0.2 mm + 0.8 x profile depth (editions before 2019)",
        "0.2 + 0.8 MPD",
    ),
    _relation(
        "profile-depth-by-edition-of-2019",
        "texture_depth.mpd_by_edition_of_2019",
        "1.1 x profile depth (edition of 2019)",
        "1.1 MPD",
    ),
    _relation(
        "profile-depth-by-circular-track",
        "texture_depth.mpd_by_circular_track",
        "0.069 mm + 0.947 x profile depth (circular track; from memory, unverified)",
        "0.069 + 0.947 MPD",
    ),
]
