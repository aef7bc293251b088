"""Which properties of an area are accepted by a test, where their limits stand and where the test.

The table is the one that the document prints its requirements and tests from; a test holds the
two together. What each property owes its reader is a reading of the practice of reviewers
(common practice, no source), in line with the review checklist of FHWA HIAM-20, attachment 3,
2010, which asks whether an inspector can judge compliance from the text.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from specwriter.diagnostic import Evidence
from specwriter.model import Area
from specwriter.model.results import Test
from specwriter.quantity import Quantity

_Limit = tuple[str, str]
"""Keys below the area, and the name of the value."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Property:
    """A property: its limits, and its test, which stands at ``test`` below the area."""

    title: str
    limits: tuple[_Limit, ...]
    test: str
    on_request: bool = False
    """A test of the work itself, which only the job can ask for."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Required:
    """A property that an area requires or tests; ``limits`` are those that the job states."""

    title: str
    limits: tuple[Evidence, ...]
    test: Test | None
    test_path: str
    has_method: bool
    """The method stands at the property itself, or with its test."""

    @property
    def key(self) -> str:
        """Where the test stands below its area."""
        return self.test_path.split(".", 2)[-1]


WIDTH = ("groove.width", "groove width")
DEPTH = (
    ("groove.depth", "groove depth"),
    ("groove.depth_on_bridges", "groove depth on bridges"),
    ("groove.depth_over_loops", "groove depth over loops"),
)
SPACING = (
    ("groove.spacing", "groove spacing"),
    ("groove.clear_gap", "clear gap"),
    ("groove.per_foot", "grooves per foot"),
    ("groove.per_metre", "grooves per metre"),
)
LAND = ("land.width", "land width")
RIDGE = ("ridge.height", "ridge height")

GROUND = Property(
    title="ground texture",
    limits=(WIDTH, DEPTH[0], SPACING[0], *SPACING[2:], LAND, RIDGE),
    test="testing.texture",
)
FLUSH = Property(
    title="flush grind",
    limits=(("flush_grind.land", "land of the flush grind"),),
    test="testing.texture",
)
SAWN = (
    Property(title="groove width", limits=(WIDTH,), test="testing.groove_width"),
    Property(title="groove depth", limits=DEPTH, test="testing.groove_depth"),
    Property(title="groove spacing", limits=SPACING, test="testing.groove_spacing"),
    Property(title="land width", limits=(LAND,), test="testing.land_width", on_request=True),
    Property(title="ridge height", limits=(RIDGE,), test="testing.ridge_height"),
)
_STRIPS = (
    ("coverage.edge_offset", "strip at the edge"),
    ("coverage.joint_offset", "strip at joints"),
    ("coverage.fixture_offset", "strip at fixtures"),
    ("coverage.cable_offset", "strip at cables"),
)
_LEFT = (
    ("removal.depth", "removal"),
    ("removal.depth_per_pass", "removal in one pass"),
    ("removal.cover_after", "cover left"),
    ("removal.thickness_after", "thickness left"),
    ("removal.asphalt_after", "asphalt left"),
    ("removal.overlay_after", "overlay left"),
    ("removal.reservoir_after", "reservoir left"),
    ("removal.section_modulus_after", "section modulus left"),
)
_SHARE = ("coverage.share", "share to be textured")
_DEVIATION = ("cross_slope.tolerance", "tolerance of the cross slope")
_GAP = ("straightedge.tolerance", "tolerance under the straightedge")
_RIDE = (
    ("smoothness.limit", "smoothness limit"),
    ("smoothness.improvement", "improvement"),
    ("smoothness.localized.limit", "localized limit"),
)
_DEEP = (
    ("texture_depth.at_least", "texture depth"),
    ("texture_depth.at_most", "greatest texture depth"),
    ("texture_depth.single_at_least", "least single texture depth"),
)
COMMON = (
    Property(
        title="alignment", limits=(("groove.alignment", "alignment"),), test="testing.alignment"
    ),
    Property(
        title="failed blades",
        limits=(("blade.failed_allowed", "failed blades allowed"),),
        test="testing.blade",
        on_request=True,
    ),
    Property(title="coverage", limits=(_SHARE,), test="testing.coverage"),
    Property(title="strips left uncut", limits=_STRIPS, test="testing.offsets", on_request=True),
    Property(
        title="overlap",
        limits=(("coverage.overlap", "overlap"),),
        test="testing.overlap",
        on_request=True,
    ),
    Property(
        title="match at joints",
        limits=(("joint_match", "match at joints"),),
        test="testing.joint_match",
    ),
    Property(
        title="ridge at pass edges",
        limits=(("edge_ridge", "ridge at pass edges"),),
        test="testing.edge_ridge",
    ),
    Property(title="removal", limits=_LEFT, test="testing.removal", on_request=True),
    Property(title="cross slope", limits=(_DEVIATION,), test="cross_slope.test"),
    Property(title="straightedge", limits=(_GAP,), test="straightedge.test"),
    Property(title="smoothness", limits=_RIDE, test="smoothness.test"),
    Property(title="texture depth", limits=_DEEP, test="texture_depth.test"),
    Property(
        title="friction",
        limits=(("friction.at_least", "friction number"),),
        test="friction.test",
    ),
    Property(title="noise", limits=(("noise.at_most", "noise level"),), test="noise.test"),
)


def properties(area: Area) -> tuple[Property, ...]:
    """The properties that can be asked of an area.

    A ground texture is judged as a whole, a sawn one by each dimension of its grooves, one that
    is both by its grooves and the ground surface between them.
    """
    if area.texture == "diamond_grinding":
        return (GROUND, *COMMON)
    both = area.texture == "next_generation_concrete_surface"
    return (*((FLUSH,) if both else ()), *SAWN, *COMMON)


def required(area: Area) -> Iterator[Required]:
    """The properties that have a test, or that must have one because a limit is stated."""
    for each in properties(area):
        test = read(area, each.test)
        limits = tuple(stated(area, each))
        if test is not None or (limits and not each.on_request):
            owner = read(area, each.test.rpartition(".")[0])
            yield Required(
                title=each.title,
                limits=limits,
                test=test,
                test_path=f"{area.path}.{each.test}",
                has_method=bool(getattr(owner, "method", None)),
            )


def stated(area: Area, each: Property) -> Iterator[Evidence]:
    """The limits of a property that the job states."""
    for keys, name in each.limits:
        value = read(area, keys)
        if isinstance(value, Quantity):
            yield Evidence(path=f"{area.path}.{keys}", label=name, written=value.text)


def read(area: Area, keys: str) -> Any:
    """What stands at dotted keys below an area; ``None`` where something on the way is absent."""
    found: Any = area
    for key in keys.split("."):
        found = found.get(key) if isinstance(found, dict) else getattr(found, key, None)
    return found
