"""Which properties of an area are accepted by a test, and where their limits and tests stand."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Any

from specwriter.assemble.view import View, job_view

_Limit = tuple[str, str]
"""Words before a value, and its keys below the area. Words that begin with a space carry on."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Property:
    """A property: its limits, and its test, which stands at ``test`` below the area.

    ``method`` is the noun that names method and edition where that is not the test.
    """

    title: str
    limits: tuple[_Limit, ...]
    test: str
    method: str = ""
    measure: str = ""
    """Where the index or measure stands that gives the limit its meaning."""
    required: str = ""
    """What is required where no value of the job says it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Required:
    """A property that an area requires or tests."""

    order: int
    title: str
    area: View
    limits: tuple[tuple[str, Any], ...]
    """Words before a value, and the value."""
    test: View
    owner: View
    required: str = ""


_WIDTH = ("", "groove.width")
_DEPTH = (
    ("", "groove.depth"),
    ("on bridges ", "groove.depth_on_bridges"),
    ("over loops ", "groove.depth_over_loops"),
)
_SPACING = (
    ("", "groove.spacing"),
    ("close spacings ", "groove.close_share"),
    ("close means ", "groove.close_spacing"),
    ("clear gap ", "groove.clear_gap"),
    ("", "groove.per_foot"),
    ("", "groove.per_metre"),
)
_REMOVAL = (
    ("", "removal.depth"),
    ("in one pass ", "removal.depth_per_pass"),
    ("cover left ", "removal.cover_after"),
    ("slab left ", "removal.thickness_after"),
    ("asphalt left ", "removal.asphalt_after"),
    ("overlay left ", "removal.overlay_after"),
    ("reservoir left ", "removal.reservoir_after"),
    ("section modulus left ", "removal.section_modulus_after"),
)
_LAND, _RIDGE = ("", "land.width"), ("", "ridge.height")

_GROUND = Property(
    title="Ground texture",
    limits=(
        ("groove width ", "groove.width"),
        ("groove depth ", "groove.depth"),
        ("spacing ", "groove.spacing"),
        ("grooves ", "groove.per_foot"),
        ("grooves ", "groove.per_metre"),
        ("land width ", "land.width"),
        ("ridge height ", "ridge.height"),
    ),
    test="testing.texture",
)
_FLUSH = Property(
    title="Flush grind", limits=(("land ", "flush_grind.land"),), test="testing.texture"
)
"""The surface between the grooves; the grooves themselves are judged one dimension at a time."""
_CUT = (
    Property(title="Groove width", limits=(_WIDTH,), test="testing.groove_width"),
    Property(title="Groove depth", limits=_DEPTH, test="testing.groove_depth"),
    Property(title="Groove spacing", limits=_SPACING, test="testing.groove_spacing"),
    Property(title="Land width", limits=(_LAND,), test="testing.land_width"),
    Property(title="Ridge height", limits=(_RIDGE,), test="testing.ridge_height"),
)
_COMMON = (
    Property(
        title="Alignment",
        limits=(("", "groove.alignment"), (" over ", "groove.alignment_over")),
        test="testing.alignment",
    ),
    Property(
        title="Blades",
        limits=(
            ("blade segment ", "blade.segment"),
            ("core ", "blade.core"),
            ("spacer ", "blade.spacer"),
            ("failed ", "blade.failed_allowed"),
        ),
        test="testing.blade",
    ),
    Property(
        title="Coverage",
        limits=(
            ("", "coverage.share"),
            ("window width ", "coverage.window_width"),
            ("window length ", "coverage.window_length"),
        ),
        test="testing.coverage",
    ),
    Property(
        title="Strips left uncut",
        limits=(
            ("edge ", "coverage.edge_offset"),
            ("joint ", "coverage.joint_offset"),
            ("fixture ", "coverage.fixture_offset"),
            ("cable ", "coverage.cable_offset"),
        ),
        test="testing.offsets",
    ),
    Property(title="Overlap", limits=(("", "coverage.overlap"),), test="testing.overlap"),
    Property(title="Match at joints", limits=(("", "joint_match"),), test="testing.joint_match"),
    Property(title="Ridge at pass edges", limits=(("", "edge_ridge"),), test="testing.edge_ridge"),
    Property(title="Removal", limits=_REMOVAL, test="testing.removal"),
    Property(
        title="Cross slope",
        limits=(("", "cross_slope.tolerance"), (" over ", "cross_slope.over")),
        test="cross_slope.test",
    ),
    Property(
        title="Straightedge",
        limits=(
            ("", "straightedge.tolerance"),
            (" under a straightedge of ", "straightedge.length"),
        ),
        test="straightedge.test",
    ),
    Property(
        title="Smoothness",
        limits=(
            ("", "smoothness.limit"),
            ("improvement ", "smoothness.improvement"),
            ("localized ", "smoothness.localized.limit"),
            (" over a base of ", "smoothness.localized.base"),
        ),
        test="smoothness.test",
        measure="smoothness.index",
    ),
    Property(
        title="Texture depth",
        limits=(
            ("", "texture_depth.at_least"),
            ("", "texture_depth.at_most"),
            ("single reading ", "texture_depth.single_at_least"),
        ),
        test="texture_depth.test",
        method="texture_depth",
        measure="texture_depth.measure",
    ),
    Property(
        title="Friction",
        limits=(("", "friction.at_least"), (" at ", "friction.speed")),
        test="friction.test",
        measure="friction.measure",
    ),
    Property(
        title="Noise",
        limits=(("", "noise.at_most"), (" at ", "noise.speed")),
        test="noise.test",
        measure="noise.measure",
    ),
    Property(title="Residue", limits=(("pH ", "residue.ph"),), test="testing.residue"),
    Property(
        title="Damage",
        limits=(),
        test="testing.damage",
        required="none that comes from the work",
    ),
)
_ON_REQUEST = (
    "testing.blade",
    "testing.offsets",
    "testing.overlap",
    "testing.removal",
    "testing.residue",
    "testing.land_width",
)
"""Tests of the work itself, which only the job can ask for (common practice, no source)."""


def required_properties(area: View) -> Iterator[Required]:
    """The properties of an area that have a test, or that must have one."""
    flush = area.read("texture") == "next_generation_concrete_surface"
    for order, item in enumerate((_FLUSH if flush else _GROUND, *_CUT, *_COMMON)):
        limits = (*_stated(item.limits, area), *_of_alternatives(item, area))
        test: View = read(area, item.test)
        if test or (limits and not _is_optional(item, area)):
            owner = read(area, item.method) if item.method else test
            yield Required(
                order=order,
                title=_title(item, area),
                area=area,
                limits=limits,
                test=test,
                owner=owner,
                required=item.required,
            )


def _stated(limits: Iterable[_Limit], noun: View) -> Iterator[tuple[str, Any]]:
    return ((lead, found) for lead, keys in limits if (found := read(noun, keys)))


def _of_alternatives(item: Property, area: View) -> Iterator[tuple[str, Any]]:
    """Limits on the grooves of each alternative, with its name before them."""
    cut = tuple(each for each in item.limits if each[1].startswith(("groove.", "land.")))
    for other in area.read("alternatives"):
        for lead, found in _stated(cut, other):
            yield lead if lead.startswith(" ") else f"{other.read('name')}: {lead}", found


def read(area: View, keys: str) -> Any:
    """What stands at dotted keys below an area, or below the job for the residue."""
    found: Any = job_view(area.job) if keys.startswith("residue.") else area
    for key in keys.split("."):
        found = found.read(key)
    return found


def _title(item: Property, area: View) -> str:
    measure = read(area, item.measure) if item.measure else None
    return f"{item.title} ({measure})" if measure else item.title


def _is_optional(item: Property, area: View) -> bool:
    """A ground texture is judged as a whole, a sawn one by each dimension of its grooves."""
    ground = area.read("texture") == "diamond_grinding"
    by_itself = item in _CUT if ground else item is _GROUND
    return by_itself or item.test in _ON_REQUEST
