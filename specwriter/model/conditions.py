"""Facts of the site: not requirements, but what the requirements must live with."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from specwriter.model.node import Node
from specwriter.quantity import Quantity

Pavement = Literal[
    "jointed_plain_concrete",
    "jointed_reinforced_concrete",
    "continuously_reinforced_concrete",
    "bridge_deck_concrete",
    "airfield_concrete",
    "asphalt",
    "airfield_asphalt",
    "composite",
]


@dataclass(frozen=True, slots=True, kw_only=True)
class CoarseAggregate(Node):
    """What the blades must cut."""

    kind: str | None = None
    hardness: Literal["soft", "medium", "hard", "unknown"] | None = None
    polishing: bool | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class FineAggregate(Node):
    """The sand, which gives the lands their microtexture."""

    siliceous: Quantity | None = None
    insoluble_residue: Quantity | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class WorkWindow(Node):
    """Hours in which the work may go on."""

    days: str | None = None
    start: str | None = None
    end: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class PavementFacts(Node):
    """The pavement itself: these facts go with its kind."""

    pavement: Pavement | None = None
    new_pavement: bool | None = None
    pavement_age: Quantity | None = None
    slab_thickness: Quantity | None = None
    asphalt_thickness: Quantity | None = None
    overlay_thickness: Quantity | None = None
    joint_spacing: Quantity | None = None
    joint_reservoir_depth: Quantity | None = None
    cover_to_steel: Quantity | None = None
    coarse_aggregate: CoarseAggregate | None = None
    fine_aggregate: FineAggregate | None = None
    existing_mri: Quantity | None = None
    existing_faulting: Quantity | None = None
    existing_wavelength: Quantity | None = None
    daily_curl: Quantity | None = None
    existing_texture_depth: Quantity | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class PlaceFacts(PavementFacts):
    """What can differ from one area of a contract to the next."""

    posted_speed: Quantity | None = None
    daily_traffic: Quantity | None = None
    lane_width: Quantity | None = None
    cross_slope: Quantity | None = None
    grade: Quantity | None = None
    drainage_path: Quantity | None = None
    curbs: bool | None = None
    shoulder: Literal["concrete", "asphalt", "gravel", "none"] | None = None
    overhead_clearance: Quantity | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Conditions(PlaceFacts):
    """Pavement, traffic, drainage, neighbours and what lies in the way."""

    rainfall: Quantity | None = None
    drainage: Literal["open", "closed"] | None = None
    sensitive_waters: bool | None = None
    noise_sensitive_neighbours: bool | None = None
    live_traffic: bool | None = None
    night_work: bool | None = None
    work_windows: tuple[WorkWindow, ...] = ()
    repairs_before: bool | None = None
    joint_resealing: Literal["none", "existing", "this_contract"] | None = None
    loop_detectors: bool | None = None
    raised_markers: bool | None = None
    bridges_within: bool | None = None
    in_pavement_lights: bool | None = None
    arresting_gear: bool | None = None
    open_between_shifts: bool | None = None
    clear_within: Quantity | None = None
    two_wheelers: bool | None = None
    days_allowed: Quantity | None = None
