"""The sizes that requirements usually have, and those that the house calls usual."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from specwriter.diagnostic import Evidence
from specwriter.model import Area, Job
from specwriter.quantity import UNITS, Amount, Interval, Quantity, parse
from specwriter.rules.measures import Measure, measures
from specwriter.rules.rule import evidence, given
from specwriter.trade.friction_measure import read_measure

_OTHERS = {
    "in": ("mm", "ft"),
    "mm": ("in",),
    "ft": ("in", "m"),
    "m": ("ft",),
    "in/mi": ("m/km",),
    "m/km": ("in/mi",),
    "lb": ("ton", "t"),
    "kg": ("t",),
}
"""The units that are mistaken for the written one."""

_WRITTEN = {
    "groove.width": "2 mm to 13 mm",
    "groove.width_at_bottom": "2 mm to 10 mm",
    "groove.depth": "1 mm to 10 mm",
    "groove.depth_on_bridges": "1 mm to 10 mm",
    "groove.depth_over_loops": "1 mm to 6 mm",
    "groove.spacing": "4 mm to 150 mm",
    "groove.clear_gap": "1.5 mm to 146 mm",
    "groove.skew": "1 degrees to 30 degrees",
    "groove.alignment": "1/4 in to 3 in",
    "groove.alignment_over": "10 ft to 500 ft",
    "land.width": "1.5 mm to 146 mm",
    "ridge.height": "0.5 mm to 5 mm",
    "blade.segment": "2 mm to 7 mm",
    "blade.core": "2 mm to 7 mm",
    "blade.spacer": "0.7 mm to 40 mm",
    "flush_grind.segment": "2 mm to 7 mm",
    "flush_grind.core": "2 mm to 7 mm",
    "flush_grind.spacer": "0.5 mm to 4 mm",
    "flush_grind.land": "0.2 mm to 2 mm",
    "removal.depth": "1 mm to 25 mm",
    "removal.depth_per_pass": "1 mm to 25 mm",
    "removal.cover_after": "1 in to 6 in",
    "removal.thickness_after": "3 in to 24 in",
    "removal.reservoir_after": "1/4 in to 4 in",
    "removal.asphalt_after": "1/2 in to 24 in",
    "coverage.share": "50 percent to 100 percent",
    "coverage.window_width": "1 ft to 24 ft",
    "coverage.window_length": "5 ft to 1,000 ft",
    "coverage.passes": "1 to 20",
    "coverage.overlap": "6 mm to 250 mm",
    "coverage.unground_strip": "3 mm to 100 mm",
    "coverage.edge_offset": "1 in to 5.5 ft",
    "coverage.joint_offset": "1 in to 2 ft",
    "coverage.fixture_offset": "2 in to 6 ft",
    "coverage.cable_offset": "3 ft to 30 ft",
    "joint_match": "0.5 mm to 6 mm",
    "edge_ridge": "0.5 mm to 6 mm",
    "cross_slope.tolerance": "2 mm to 12 mm",
    "cross_slope.over": "3 ft to 25 ft",
    "straightedge.tolerance": "1.5 mm to 12 mm",
    "straightedge.length": "8 ft to 25 ft",
    "equipment.head_width": "1 ft to 8 ft",
    "equipment.wheelbase": "8 ft to 30 ft",
    "equipment.mass": "5,000 lb to 100,000 lb",
    "texture_depth.at_least": "0.2 mm to 3 mm",
    "texture_depth.at_most": "0.2 mm to 4 mm",
    "texture_depth.single_at_least": "0.2 mm to 3 mm",
    "texture_depth.end_of_life_at_least": "0.2 mm to 3 mm",
    "texture_depth.land_texture": "0.1 mm to 1.3 mm",
    "smoothness.limit": "0.3 m/km to 5 m/km",
    "smoothness.localized.limit": "1 m/km to 6 m/km",
    "smoothness.segment": "50 ft to 1 mi",
    "smoothness.sensor_width": "0.5 in to 8 in",
    "smoothness.runs": "1 to 10",
    "friction.speed": "20 mph to 60 mph",
    "friction.skid_number": "15 to 70",
    "noise.speed": "30 mph to 70 mph",
    "residue.setback": "10 ft to 300 ft",
    "trial_section.before": "1 days to 60 days",
}
"""Sizes that documents use: published for grooves, common practice without source for the rest.

The mass of 35,000 lb is Maryland 509's; skid numbers from 31 to 51 are NCHRP 37's (memory).
"""

_OF_ROADS = {
    "groove.width": "2 mm to 5 mm",
    "groove.depth": "1 mm to 7 mm",
    "groove.depth_on_bridges": "1 mm to 7 mm",
}
"""Sawn grooves of roads and decks: California DOT 42-2, 2015, and Ohio CMS 511.20, 2010, have
widths of 0.095 and 0.10 in and depths to 1/4 in; German guidance, second-hand, has 4 and 6 mm.
"""

_OF_TEXTURE = {
    "diamond_grinding": {
        "groove.depth": "1 mm to 5 mm",
        "groove.spacing": "4 mm to 8 mm",
        "land.width": "1.2 mm to 5 mm",
        "blade.spacer": "1.2 mm to 5 mm",
    },
    "longitudinal_grooving": {**_OF_ROADS, "groove.spacing": "10 mm to 40 mm"},
    "transverse_grooving": {**_OF_ROADS, "groove.spacing": "10 mm to 75 mm"},
    "next_generation_concrete_surface": {**_OF_ROADS, "groove.spacing": "10 mm to 20 mm"},
    "runway_grooving": {"groove.spacing": "20 mm to 150 mm"},
}
"""Sizes that differ from one texture to the next; spacing as the published sets have it."""

_COUNTS = ("number", "percent")
"""Kinds of value whose bounds have no room: they have no unit to be mistaken in."""

USUAL: dict[str, Interval] = {name: parse(text).interval for name, text in _WRITTEN.items()}

_BY_TEXTURE = {
    texture: {name: parse(text).interval for name, text in sizes.items()}
    for texture, sizes in _OF_TEXTURE.items()
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Size:
    """What is usual for one requirement; ``setting`` is the setting of the house that says so."""

    bounds: Interval
    room: int = 1
    """Factor to either side that is still called usual."""
    setting: Evidence | None = None

    def holds(self, base: Fraction) -> bool:
        """True for nothing at all and for what lies within the bounds and their room."""
        low, high = self.bounds.low, self.bounds.high
        above = low is None or base * self.room >= low
        return base == 0 or (above and (high is None or base <= high * self.room))


def sizes(job: Job) -> Iterator[tuple[Area | None, Measure, Size]]:
    """Each measure of the areas, of the residue and of the trial that has a usual size."""
    for area in job.areas.values():
        for each in measures(area):
            if size := _size_of(job, area, each):
                yield area, each, size
    for node, name in ((job.residue, "residue"), (job.trial_section, "trial_section")):
        for each in measures(node, name) if node else ():
            if size := _size_of(job, None, each):
                yield None, each, size


def other_unit(amount: Amount, size: Size) -> str | None:
    """The other unit in which the number is of the usual size, if there is one."""
    others = _OTHERS.get(amount.unit.symbol, ())
    return next((each for each in others if size.holds(UNITS[each].to_base(amount.value))), None)


def _size_of(job: Job, area: Area | None, measure: Measure) -> Size | None:
    """What is usual for the measure, or ``None`` where nobody has said."""
    name = _name(area, measure)
    for each in job.settings.usual if job.settings else ():
        if each.of == name and each.range.dimension == measure.value.dimension:
            return Size(
                bounds=each.range.interval, setting=evidence(each, "range", "setting usual")
            )
    own = _BY_TEXTURE.get(area.texture, {}) if area else {}
    bounds = own.get(name) or USUAL.get(name)
    room = 1 if measure.value.dimension in _COUNTS else 2
    return Size(bounds=bounds, room=room) if bounds else None


def _name(area: Area | None, measure: Measure) -> str:
    if area is None:
        return measure.name
    if measure.name.startswith("smoothness.") and given(area.smoothness).index == "PI":
        return f"{measure.name} of a profilograph" if "limit" in measure.name else measure.name
    if measure.name == "friction.at_least":
        named = read_measure(given(area.friction).measure)
        return f"friction.{named.kind.replace(' ', '_')}" if named else measure.name
    return measure.name


def bounds_of(value: Quantity) -> tuple[Fraction, ...]:
    """The sizes that a value names: both ends of a range, else the value without its tolerance."""
    amounts = value.amounts if value.form == "range" else value.amounts[:1]
    return tuple(each.base for each in amounts)
