"""The ridge of a ground surface stands as high as the groove is deep."""

from __future__ import annotations

from specwriter.model import Area, Job
from specwriter.reconcile.relation import Linear, Relation


def _is_ground(job: Job, area: Area) -> bool:
    return area.texture == "diamond_grinding"


RELATION = Relation(
    slug="ridge-height",
    title="ridge height and groove depth disagree",
    statement="ridge height above the bottom of the groove = groove depth",
    shape=Linear({"ridge.height": 1, "groove.depth": -1}),
    why=(
        "On a ground surface the ridge stands as high as the groove beside it is deep: "
        "it is one height, measured from two ends. Two figures for it fail each other."
    ),
    source="geometry: both are measured between the top of the land and the bottom of the groove",
    validity="diamond grinding",
    sentence="A groove {groove_depth} deep leaves a ridge of {found}, not of {ridge_height}.",
    applies=_is_ground,
    about=("ridge.height",),
)
