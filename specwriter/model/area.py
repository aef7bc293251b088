"""One textured area: which texture, where, and every requirement on it."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal

from specwriter.model.conditions import PlaceFacts
from specwriter.model.node import Node
from specwriter.model.results import (
    CrossSlope,
    Friction,
    Noise,
    Smoothness,
    Straightedge,
    Test,
    TextureDepth,
)
from specwriter.model.texture import (
    Blade,
    Coverage,
    Equipment,
    FlushGrind,
    Groove,
    Land,
    Removal,
    Ridge,
)
from specwriter.quantity import Quantity

Texture = Literal[
    "diamond_grinding",
    "longitudinal_grooving",
    "transverse_grooving",
    "next_generation_concrete_surface",
    "runway_grooving",
]
PlaceKind = Literal["roadway", "bridge_deck", "ramp", "shoulder", "runway", "taxiway"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Limits(Node):
    """One stretch of the area."""

    roadway: str | None = None
    start: Quantity | None = field(default=None, metadata={"key": "from"})
    end: Quantity | None = field(default=None, metadata={"key": "to"})
    width: Quantity | None = None
    lanes: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Statement(Node):
    """What another document of the same contract requires of an area."""

    document: str = field(metadata={"key": "in"})
    groove: Groove | None = None
    land: Land | None = None
    ridge: Ridge | None = None
    blade: Blade | None = None
    flush_grind: FlushGrind | None = None
    equipment: Equipment | None = None
    removal: Removal | None = None
    coverage: Coverage | None = None
    joint_match: Quantity | None = None
    cross_slope: CrossSlope | None = None
    smoothness: Smoothness | None = None
    straightedge: Straightedge | None = None
    texture_depth: TextureDepth | None = None
    friction: Friction | None = None
    noise: Noise | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Alternative(Node):
    """A pattern of grooves that the contractor may cut in place of that of the area."""

    name: str
    groove: Groove
    land: Land | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Area(Node):
    """A textured area; ``id`` is its key under ``areas``."""

    id: str
    texture: Texture
    place: PlaceKind
    name: str | None = None
    limits: tuple[Limits, ...] = ()
    conditions: PlaceFacts | None = None
    groove: Groove | None = None
    land: Land | None = None
    ridge: Ridge | None = None
    blade: Blade | None = None
    flush_grind: FlushGrind | None = None
    equipment: Equipment | None = None
    removal: Removal | None = None
    coverage: Coverage | None = None
    joint_match: Quantity | None = None
    edge_ridge: Quantity | None = None
    cross_slope: CrossSlope | None = None
    straightedge: Straightedge | None = None
    smoothness: Smoothness | None = None
    texture_depth: TextureDepth | None = None
    friction: Friction | None = None
    noise: Noise | None = None
    testing: dict[str, Test] = field(default_factory=dict)
    also_stated: tuple[Statement, ...] = ()
    alternatives: tuple[Alternative, ...] = ()
    maintenance: str | None = None
    pay_item: str | None = None
