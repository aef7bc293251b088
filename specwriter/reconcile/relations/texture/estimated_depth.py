"""Texture depth that is estimated from a profile stands for the depth of the patch."""

from __future__ import annotations

from specwriter.model import Area, Job
from specwriter.reconcile.readers.texture_depth import scale
from specwriter.reconcile.relation import Linear, Relation, Unassured
from specwriter.reconcile.relations.texture import WHY
from specwriter.reconcile.requirement import sources


def _applies(job: Job, area: Area) -> bool:
    depths = (each.texture_depth for each in sources(area))
    return any(each is not None and scale(each) == "texture_depth.estimated" for each in depths)


def _relation(estimated: str, patch: str) -> Relation:
    return Relation(
        slug="estimated-depth",
        title="estimated texture depth and the depth of the grooves do not go together",
        statement="estimated texture depth (ETD) stands for the texture depth of the patch",
        shape=Linear({estimated: 1, patch: -1}),
        why=WHY,
        source=(
            "ASTM E1845-15 and ISO 13473-1: the profile depth (MPD) is put on the scale of the "
            "patch by a line that was fitted to it"
        ),
        validity=(
            "an estimate: its line was fitted to other surfaces, and on grooves it may lie above "
            "or below the depth of the patch"
        ),
        kind="model",
        applies=_applies,
        assures=Unassured(
            slug="estimated-depth-not-assured",
            title="the dimensions do not assure the estimated texture depth",
        ),
    )


RELATIONS = [
    _relation("texture_depth.estimated", "texture_depth"),
    _relation("texture_depth.estimated_single", "texture_depth.single"),
]
