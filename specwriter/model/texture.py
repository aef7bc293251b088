"""The cut itself: grooves, lands, blades, and the machine that carries them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from specwriter.model.node import Node
from specwriter.quantity import Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class Groove(Node):
    """Dimensions of the groove (kerf). ``spacing`` is centre to centre, ``clear_gap`` is not."""

    width: Quantity | None = None
    width_at_bottom: Quantity | None = None
    depth: Quantity | None = None
    depth_on_bridges: Quantity | None = None
    depth_over_loops: Quantity | None = None
    spacing: Quantity | None = None
    clear_gap: Quantity | None = None
    per_foot: Quantity | None = None
    per_metre: Quantity | None = None
    pattern: Literal["uniform", "random"] | None = None
    close_spacing: Quantity | None = None
    close_share: Quantity | None = None
    width_basis: Literal["cut_groove", "blade"] | None = None
    alignment: Quantity | None = None
    alignment_over: Quantity | None = None
    skew: Quantity | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Land(Node):
    """The uncut strip between two grooves."""

    width: Quantity | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Ridge(Node):
    """How far the land stands above the bottom of the groove in a ground surface."""

    height: Quantity | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Blade(Node):
    """Blade set of a cutting head: cutting segment, core and spacer are three thicknesses."""

    segment: Quantity | None = None
    core: Quantity | None = None
    spacer: Quantity | None = None
    per_head: Quantity | None = None
    failed_allowed: Quantity | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class FlushGrind(Node):
    """The ground surface between the grooves of a next generation concrete surface."""

    segment: Quantity | None = None
    core: Quantity | None = None
    spacer: Quantity | None = None
    land: Quantity | None = None
    operations: Literal["one", "two"] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Equipment(Node):
    """The machine: cutting width, wheelbase, mass."""

    head_width: Quantity | None = None
    wheelbase: Quantity | None = None
    mass: Quantity | None = None
    several_machines: bool | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Removal(Node):
    """How much concrete may go, and what must be left."""

    depth: Quantity | None = None
    depth_per_pass: Quantity | None = None
    cover_after: Quantity | None = None
    thickness_after: Quantity | None = None
    reservoir_after: Quantity | None = None
    asphalt_after: Quantity | None = None
    overlay_after: Quantity | None = None
    section_modulus_after: Quantity | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Coverage(Node):
    """How much of the area must be textured, judged in which window; passes and overlap."""

    share: Quantity | None = None
    window_width: Quantity | None = None
    window_length: Quantity | None = None
    passes: Quantity | None = None
    overlap: Quantity | None = None
    unground_strip: Quantity | None = None
    feathering: Quantity | None = None
    edge_offset: Quantity | None = None
    joint_offset: Quantity | None = None
    fixture_offset: Quantity | None = None
    cable_offset: Quantity | None = None
    pattern: Literal["full_lane", "centred_in_lane", "part_of_lane", "edge_to_edge"] | None = None
