"""What figures are computed from: values of the job with their places, or the lack of them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from specwriter.diagnostic import Evidence
from specwriter.model import Area, Job, Node
from specwriter.quantity import Interval, Quantity
from specwriter.trade import groove_geometry
from specwriter.worksheet.reach import reach

_WORDS = {
    "groove.per_foot": "grooves per foot",
    "groove.per_metre": "grooves per metre",
    "texture_depth.land_texture": "texture of the land",
    "texture_depth.at_least": "texture depth",
    "texture_depth.end_of_life_at_least": "texture depth at end of life",
    "blade.spacer": "spacer",
    "blade.core": "blade core",
    "blade.segment": "cutting segment",
    "coverage.feathering": "run-out of the cut",
    "coverage.share": "share covered",
    "coverage.window_width": "width of the window",
    "coverage.overlap": "overlap of passes",
    "equipment.head_width": "width of the head",
    "friction.at_least": "friction number",
    "friction.speed": "speed of the friction test",
    "noise.at_most": "noise limit",
    "noise.speed": "speed of the noise test",
    "removal.depth": "depth of removal",
    "smoothness.improvement": "improvement",
    "smoothness.limit": "smoothness limit",
    "existing_mri": "existing MRI",
    "existing_faulting": "existing faulting",
    "cover_to_steel": "cover to steel",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Given:
    """An input with its interval in base units, and the places in the job that it rests on."""

    name: str
    interval: Interval
    evidence: tuple[Evidence, ...]

    def as_one(self) -> Interval:
        """The interval, a one-sided limit being taken as the value that it names."""
        low, high = self.interval.low, self.interval.high
        return Interval(high if low is None else low, low if high is None else high)


@dataclass(frozen=True, slots=True, kw_only=True)
class Missing:
    """An input that the job does not state."""

    name: str


Input = Given | Missing


def words(path: str) -> str:
    """What an input is called: ``removal.depth`` is ``depth of removal``."""
    return _WORDS.get(path, path.replace(".", " ").replace("_", " "))


def of_area(area: Area, path: str) -> Input:
    """The value under a path below an area: ``groove.width``."""
    noun, _, key = path.partition(".")
    node: Any = getattr(area, noun)
    return _input(node, key, words(path))


def of_site(job: Job, key: str) -> Input:
    """The value under a key of the conditions: ``slab_thickness``."""
    return _input(job.conditions, key, words(key))


def of_node(node: Node, key: str, name: str) -> Input:
    """The value under a key of any noun of the job."""
    return _input(node, key, name)


def _input(node: Node | None, key: str, name: str) -> Input:
    value = getattr(node, key, None)
    if node is None or not isinstance(value, Quantity):
        return Missing(name=name)
    # A field may be named differently from its key, as 'start' for 'from'.
    path = node.path_to({"start": "from", "end": "to"}.get(key, key))
    evidence = Evidence(path=path, label=name, written=value.text)
    return Given(name=name, interval=value.interval, evidence=(evidence,))


READ_AS_BOTH = "the job gives one blade thickness, read as both the core and the cutting segment"


def only_thickness(area: Area, noun: str) -> Given | None:
    """The one thickness of blades that stands beside a spacer, where it is given alone."""
    core, segment = (of_area(area, f"{noun}.{key}") for key in ("core", "segment"))
    if isinstance(of_area(area, f"{noun}.spacer"), Missing):
        return None
    given = [each for each in (core, segment) if isinstance(each, Given)]
    return given[0] if len(given) == 1 else None


def first(inputs: Iterable[Input]) -> Input:
    """The first input that the job states; else the first of the missing ones."""
    listed = tuple(inputs)
    return next((each for each in listed if isinstance(each, Given)), listed[0])


def spacing(area: Area) -> Input:
    """Spacing of the grooves, stated or made from counts, lands or gaps."""
    return first(_spacings(area))


def _spacings(area: Area) -> Iterator[Input]:
    yield of_area(area, "groove.spacing")
    for count in ("groove.per_foot", "groove.per_metre"):
        stated = of_area(area, count)
        if isinstance(stated, Given) and Fraction(0) not in stated.interval:
            span = reach(lambda each: 1 / each, (stated.interval,))
            yield Given(name="groove spacing", interval=span, evidence=stated.evidence)
    width = of_area(area, "groove.width")
    for rest in ("land.width", "groove.clear_gap"):
        beside = of_area(area, rest)
        if isinstance(width, Given) and isinstance(beside, Given):
            span = reach(groove_geometry.spacing, (width.interval, beside.interval))
            evidence = (*width.evidence, *beside.evidence)
            yield Given(name="groove spacing", interval=span, evidence=evidence)


def depth(area: Area) -> Input:
    """Depth of the grooves; in a ground surface the height of the ridge is the same length."""
    return first((of_area(area, "groove.depth"), of_area(area, "ridge.height")))


def bottom(area: Area) -> Input:
    """Width at the bottom of the groove, the width itself where no other is stated."""
    return first((of_area(area, "groove.width_at_bottom"), of_area(area, "groove.width")))
