"""Grooves are cut into the surface that is there: the land keeps the texture that it has."""

from __future__ import annotations

from specwriter.model import Area, Job
from specwriter.reconcile.cutting import is_ground
from specwriter.reconcile.relation import Linear, Relation
from specwriter.reconcile.relations.texture import WHY
from specwriter.reconcile.requirement import sources


def _applies(job: Job, area: Area) -> bool:
    """Where nothing is ground, and nobody states the texture of the land itself."""
    depths = [each.texture_depth for each in sources(area) if each.texture_depth is not None]
    return not is_ground(area) and all(each.land_texture is None for each in depths)


RELATION = Relation(
    slug="land-keeps-its-texture",
    title="the surface between the grooves is as it was",
    statement="texture of the land = existing texture depth, where nothing but grooves is cut",
    shape=Linear({"texture_depth.land_texture": 1, "conditions.existing_texture_depth": -1}),
    why=WHY,
    source=(
        "common practice, no source: a saw that cuts grooves leaves the surface between them as "
        "it is"
    ),
    validity=(
        "textures that are sawn into the surface, not ground; the existing depth is a mean, and "
        "differs from place to place"
    ),
    kind="model",
    applies=_applies,
)
