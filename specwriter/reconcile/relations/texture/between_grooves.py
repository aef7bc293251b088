"""Texture depth measured between the grooves: that of the land and nothing else."""

from __future__ import annotations

from specwriter.model import Area, Job
from specwriter.reconcile.relation import Linear, Relation, Unassured


def _is_sawn(job: Job, area: Area) -> bool:
    return area.texture != "diamond_grinding"


RELATION = Relation(
    slug="land-texture-out-of-reach",
    title="the land does not have the texture depth that is asked for between the grooves",
    statement="texture depth between the grooves = texture of the land",
    shape=Linear({"texture_depth.between_grooves": 1, "texture_depth.land_texture": -1}),
    why=(
        "Between the grooves there is only the land, with the texture that it was "
        "given when it was cast or ground. No groove beside it makes it rougher."
    ),
    source="geometry: a reading that leaves the grooves out reads the land",
    validity="sawn grooves, measured on the strips between them",
    applies=_is_sawn,
    assures=Unassured(
        slug="land-texture-not-assured",
        title="the land may have less texture than is asked for between the grooves",
    ),
)
