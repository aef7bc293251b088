"""The properties that acceptance measures, each with the way it is measured."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from specwriter.model.node import Node
from specwriter.quantity import Quantity

Instrument = Literal[
    "inertial_profiler",
    "lightweight_profiler",
    "walking_profiler",
    "rod_and_level",
    "profilograph",
    "straightedge",
]

PROFILERS = ("inertial_profiler", "lightweight_profiler")
"""Instruments that carry a height sensor along the lane."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Tier(Node):
    """A share of the readings of a lot and the limit that these must meet."""

    share: Quantity
    limit: Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class Test(Node):
    """How one property is tested and what follows from the result."""

    __test__ = False

    method: str | None = None
    edition: str | None = None
    device: str | None = None
    where: str | None = None
    when: str | None = None
    by: Literal["contractor", "agency"] | None = None
    lot: str | None = None
    readings: Quantity | None = None
    statistic: Literal["each", "mean", "mean_and_each", "minimum", "maximum", "share"] | None = None
    share: Quantity | None = None
    tiers: tuple[Tier, ...] = ()
    remedy: str | None = None
    retest: str | None = None
    pay_effect: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Straightedge(Node):
    """A gap allowed under a straightedge of a given length."""

    length: Quantity | None = None
    tolerance: Quantity | None = None
    direction: Literal["longitudinal", "transverse", "both"] | None = None
    kind: Literal["resting", "rolling"] | None = None
    test: Test | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class CrossSlope(Node):
    """Planarity across the lane: a deviation over a length."""

    tolerance: Quantity | None = None
    over: Quantity | None = None
    test: Test | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class LocalizedRoughness(Node):
    """Roughness over a short base that must be corrected where it stands."""

    limit: Quantity | None = None
    base: Quantity | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class PayBand(Node):
    """One row of a smoothness pay schedule."""

    index: Quantity | None = None
    pay: Quantity | None = None
    action: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class PayAdjustment(Node):
    """A schedule that turns measured smoothness into money, or the statement that there is none."""

    schedule: Literal["none", "table"] | None = None
    index: Literal["IRI", "MRI", "HRI", "PI"] | None = None
    bands: tuple[PayBand, ...] = ()
    cap: Quantity | None = None
    after_correction: Literal["new_result", "no_bonus"] | None = None
    applies_to: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Smoothness(Node):
    """Ride quality: index and limit, and the instrument that is to measure it."""

    index: Literal["IRI", "MRI", "HRI", "PI"] | None = None
    limit: Quantity | None = None
    improvement: Quantity | None = None
    whichever: Literal["less_strict", "stricter"] | None = None
    blanking_band: Quantity | None = None
    instrument: Instrument | None = None
    simulated: bool | None = None
    sensor: Literal["point_laser", "wide_spot_laser", "line_laser"] | None = None
    sensor_width: Quantity | None = None
    wheel_paths: Literal["both", "left", "right", "one"] | None = None
    runs: Quantity | None = None
    segment: Quantity | None = None
    partial_segment: Quantity | None = None
    reported_to: Quantity | None = None
    localized: LocalizedRoughness | None = None
    measured: (
        Literal["before_texturing", "after_grinding", "after_grooving", "after_texturing"] | None
    ) = None
    exclusions: str | None = None
    certification: str | None = None
    agreement: Quantity | None = None
    pay_adjustment: PayAdjustment | None = None
    test: Test | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class TextureDepth(Node):
    """Mean texture depth (MTD), mean profile depth (MPD) or estimated texture depth (ETD)."""

    measure: Literal["MTD", "MPD", "ETD"] | None = None
    at_least: Quantity | None = None
    at_most: Quantity | None = None
    single_at_least: Quantity | None = None
    end_of_life_at_least: Quantity | None = None
    method: str | None = None
    edition: str | None = None
    surface: Literal["over_grooves", "between_grooves"] | None = None
    direction: Literal["along_lane", "across_lane", "circle"] | None = None
    land_texture: Quantity | None = None
    test: Test | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Friction(Node):
    """Friction number, with the device, tyre and speed that give it a meaning."""

    measure: str | None = None
    at_least: Quantity | None = None
    speed: Quantity | None = None
    tyre: Literal["ribbed", "smooth"] | None = None
    test: Test | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Noise(Node):
    """Tyre and pavement noise, at the source or at the roadside."""

    measure: Literal["OBSI", "roadside"] | None = None
    at_most: Quantity | None = None
    speed: Quantity | None = None
    age: str | None = None
    test: Test | None = None
