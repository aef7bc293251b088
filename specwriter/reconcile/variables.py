"""Every quantity that a contract may fix in an area, under the name that relations use.

A name that is a key of the job (``groove.width``) is read there; ``conditions.<key>`` is a fact of
the site. Names that are none (``texture_depth``) are read by a reader under ``readers/`` or are
only computed. Lengths in metres, roughness as a slope, counts per metre, shares from 0 to 1.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Role = Literal["dimension", "result", "condition", "computed"]
Bare = Literal["as_written", "at_most", "at_least"]


@dataclass(frozen=True, slots=True)
class Variable:
    """What a quantity is called, who fixes it, and how it is read.

    ``bare`` says how a number without a limit word is meant: a cap, a least value, or just that
    number. ``unit`` is the one in which a computed value is shown where nothing was written.
    """

    label: str
    role: Role = "dimension"
    bare: Bare = "as_written"
    unit: str = "mm"
    whole: bool = False


def _result(label: str, bare: Bare, unit: str = "mm") -> Variable:
    return Variable(label, "result", bare, unit)


def _fact(label: str, unit: str = "mm") -> Variable:
    return Variable(label, "condition", unit=unit)


def _computed(label: str, unit: str = "mm") -> Variable:
    return Variable(label, "computed", unit=unit)


VARIABLES: dict[str, Variable] = {
    "groove.spacing": Variable("groove spacing"),
    "groove.least_spacing": _fact("least spacing of the random pattern"),
    "groove.greatest_spacing": Variable("greatest spacing of the random pattern"),
    "groove.close_spacing": Variable("close spacing", bare="at_most"),
    "groove.close_share": Variable("share of close spacings", bare="at_least", unit="percent"),
    "groove.per_foot": Variable("grooves per foot", unit="per ft"),
    "groove.per_metre": Variable("grooves per metre", unit="per m"),
    "groove.width": Variable("groove width"),
    "groove.width_at_bottom": Variable("groove width at the bottom"),
    "groove.depth": Variable("groove depth"),
    "groove.clear_gap": Variable("clear gap"),
    "land.width": Variable("land width"),
    "ridge.height": Variable("ridge height"),
    "blade.segment": Variable("cutting segment"),
    "blade.core": Variable("blade core"),
    "blade.spacer": Variable("spacer"),
    "blade.per_head": Variable("blades per head", unit="", whole=True),
    "blade.failed_allowed": Variable("failed blades allowed", bare="at_most", unit="", whole=True),
    "flush_grind.segment": Variable("cutting segment of the flush grind"),
    "flush_grind.core": Variable("blade core of the flush grind"),
    "flush_grind.spacer": Variable("spacer of the flush grind"),
    "flush_grind.land": Variable("land of the flush grind"),
    "equipment.head_width": Variable("width of the cutting head", unit="m"),
    "equipment.wheelbase": Variable("wheelbase", unit="m"),
    "removal.depth": Variable("depth of removal", bare="at_most"),
    "removal.depth_per_pass": Variable("depth of removal in one pass", bare="at_most"),
    "coverage.overlap": Variable("overlap of passes", bare="at_most"),
    "coverage.passes": Variable("passes", unit="", whole=True),
    "coverage.unground_strip": Variable("strip left unground", bare="at_most"),
    "coverage.edge_offset": Variable("distance left at the edge"),
    "coverage.window_width": Variable("width of the coverage window", unit="m"),
    "run_out.length": Variable("run-out of the cut (feathering)"),
    "run_out.straightedge": _fact("length of the straightedge", "m"),
    "conditions.lane_width": _fact("lane width", "m"),
    "conditions.cover_to_steel": _fact("cover to steel"),
    "conditions.slab_thickness": _fact("slab thickness"),
    "conditions.asphalt_thickness": _fact("asphalt thickness"),
    "conditions.overlay_thickness": _fact("overlay thickness"),
    "conditions.joint_reservoir_depth": _fact("depth of the joint reservoir"),
    "conditions.joint_spacing": _fact("joint spacing", "m"),
    "conditions.existing_faulting": _fact("existing faulting"),
    "conditions.existing_mri": _fact("existing MRI", "m/km"),
    "conditions.existing_wavelength": _fact("wavelength of the existing roughness", "m"),
    "conditions.existing_texture_depth": _fact("existing texture depth"),
    "conditions.daily_curl": _fact("daily curl"),
    "wet.texture": _fact("texture that holds water"),
    "wet.path": _fact("path of the water", "m"),
    "wet.rain": _fact("rain", "mm/h"),
    "wet.cross_slope": _fact("cross slope", "percent"),
    "wet.grade": _fact("grade", "percent"),
    "texture_depth.land_texture": _fact("texture of the land"),
    "joint_match": _result("step left at a joint", "at_most"),
    "coverage.share": _result("share of the area textured", "at_least", "percent"),
    "removal.cover_after": _result("cover to steel after cutting", "at_least"),
    "removal.thickness_after": _result("slab thickness after cutting", "at_least"),
    "removal.reservoir_after": _result("joint reservoir after cutting", "at_least"),
    "removal.asphalt_after": _result("asphalt thickness after cutting", "at_least"),
    "removal.overlay_after": _result("overlay thickness after cutting", "at_least"),
    "removal.section_modulus_after": _result("section modulus left", "at_least", "percent"),
    "texture_depth": _result("texture depth", "at_least"),
    "texture_depth.single": _result("texture depth, single test", "at_least"),
    "texture_depth.estimated": _result("estimated texture depth", "at_least"),
    "texture_depth.estimated_single": _result("estimated texture depth, single test", "at_least"),
    "texture_depth.mpd_by_older_edition": _result("profile depth", "at_least"),
    "texture_depth.mpd_by_edition_of_2019": _result("profile depth", "at_least"),
    "texture_depth.mpd_by_circular_track": _result("profile depth", "at_least"),
    "texture_depth.named_patch": _result("texture depth of the patch", "as_written"),
    "texture_depth.named_profile": _result("profile depth that is asked for", "as_written"),
    "texture_depth.initial": _fact("initial texture depth"),
    "texture_depth.end_of_life": _result("texture depth at end of life", "at_least"),
    "texture_depth.between_grooves": _result("texture depth between the grooves", "at_least"),
    "wet.onset_speed": _result("wet onset speed (posted speed)", "at_least", "km/h"),
    "friction.ribbed": _result("friction limit, ribbed tyre", "as_written", ""),
    "friction.smooth": _result("friction limit, smooth tyre", "as_written", ""),
    "friction.ribbed_elsewhere": _result(
        "friction limit, ribbed tyre, other speed", "as_written", ""
    ),
    "friction.smooth_elsewhere": _result(
        "friction limit, smooth tyre, other speed", "as_written", ""
    ),
    "friction.other_speed": _fact("speed of the friction test", "km/h"),
    "friction.profile_depth": _fact("profile depth of the surface"),
    "ride.roughness": _result("roughness index", "at_most", "in/mi"),
    "ride.half_car": _result("half-car index", "at_most", "in/mi"),
    "ride.improvement": _result("improvement of the index", "at_least", "percent"),
    "ride.localized": _result("localized roughness", "at_most", "in/mi"),
    "ride.localized_base": _fact("base of the localized limit", "m"),
    "ride.bump": _result("bump under the template", "at_most"),
    "ride.profile_index_0_0": _result("profile index without blanking", "at_most", "in/mi"),
    "ride.profile_index_0_1": _result("profile index, 0.1 in band", "at_most", "in/mi"),
    "ride.profile_index_0_2": _result("profile index, 0.2 in band", "at_most", "in/mi"),
    "noise.test_speed": _fact("speed of the noise test", "km/h"),
    "noise.source": _result("noise beside the tyre (OBSI)", "at_most", "dB(A)"),
    "noise.source_aged": _result("noise beside the tyre (OBSI), aged", "at_most", "dB(A)"),
    "noise.roadside_25": _result("noise at the roadside, 25 ft", "at_most", "dB(A)"),
    "noise.roadside_50": _result("noise at the roadside, 50 ft", "at_most", "dB(A)"),
    "straightedge.tolerance": _result("gap under the straightedge", "at_most"),
    "ride.long_waves": _computed("roughness of the long waves left", "in/mi"),
    "coverage.reach": _computed("width that the passes cover", "m"),
}
"""Plain words for every variable; requirements are collected and listed in this order."""


ORDER = {name: place for place, name in enumerate(VARIABLES)}
"""The place of each variable in that order."""


def label(name: str) -> str:
    """What a variable is called."""
    return VARIABLES[name].label


def is_outcome(name: str) -> bool:
    """True for what follows from the rest: a result, or a value that is only computed."""
    return name in VARIABLES and VARIABLES[name].role in ("result", "computed")


def is_whole(name: str) -> bool:
    """True for a count, which has no values between whole numbers."""
    return name in VARIABLES and VARIABLES[name].whole
