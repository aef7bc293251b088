"""Roughness of steps, curl and long waves together, over the smoothest surface between them."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from functools import reduce

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.trade.formula import Formula
from specwriter.trade.ride import curl, steps
from specwriter.trade.ride.grinder import WAVES, WHEELBASES, remaining
from specwriter.worksheet.figure import Line
from specwriter.worksheet.inputs import Given, Input, of_area, of_node, of_site
from specwriter.worksheet.scale import ROUGHNESS
from specwriter.worksheet.sheet import Sheet, areas, evidence_of

TITLE = "roughness of all that is allowed together"
FORMULA = Formula(
    text="roughness = (a^1.75 + b^1.75 + ...)^(1/1.75) over steps at all joints, curl, the long "
    "waves that the wheelbase leaves, or 30 in/mi (0.47 m/km) for the surface without them",
    source="project calculation with the quarter-car of ASTM E1926, the exponent fitted to random "
    "surfaces; 30 in/mi: common practice, no source",
    validity="equal steps and parabolic slabs, joints 10 ft to 40 ft apart, each part at the most "
    "that the job allows; within 4.5 percent",
)


def figures(job: Job) -> Iterator[Line]:
    """One line for each area that limits a roughness index, where it allows a part of one."""
    for area, sheet in areas(job):
        ride = area.smoothness
        if ride is None or ride.index == "PI" or ride.limit is None:
            continue
        parts = [(_given(needs), kind) for needs, kind in _parts(sheet.job, area)]
        parts = [(given, kind) for given, kind in parts if given]
        if outside := [kind for given, kind in parts if not _is_known(given, kind)]:
            yield sheet.waiting(TITLE, _KNOWN[outside[0]])
        elif parts:
            yield _line(sheet, parts)


_JOINTS = "joints are known here 10 ft to 40 ft apart only"
_KNOWN = {
    "steps": _JOINTS,
    "curl": _JOINTS,
    "waves": "waves are known here from 8 ft to 200 ft, wheelbases from 8 ft to 40 ft only",
}


def _given(needs: tuple[Input, ...]) -> list[Given]:
    """The inputs of a part, or none while one is missing."""
    given = [each for each in needs if isinstance(each, Given)]
    return given if len(given) == len(needs) else []


def _is_known(given: list[Given], kind: str) -> bool:
    ranges = [steps.JOINTS] if kind != "waves" else [WAVES, WHEELBASES]
    return all(
        end is None or low <= end <= high
        for each, (low, high) in zip(given[1:], ranges, strict=True)
        for end in each.interval
    )


def _parts(job: Job, area: Area) -> Iterator[tuple[tuple[Input, ...], str]]:
    """Inputs of each part of the roughness, and which part it is."""
    joints = of_site(job, "joint_spacing")
    yield (of_node(area, "joint_match", "step left at a joint"), joints), "steps"
    yield (of_site(job, "daily_curl"), joints), "curl"
    base, waves = of_area(area, "equipment.wheelbase"), of_site(job, "existing_wavelength")
    yield (of_site(job, "existing_mri"), waves, base), "waves"


def _line(sheet: Sheet, parts: list[tuple[list[Given], str]]) -> Line:
    found = [_roughness(given, kind) for given, kind in parts]
    has_waves = any(kind == "waves" for _, kind in parts)
    together = Fraction(reduce(steps.combined, found, 0.0 if has_waves else steps.SMOOTHEST))
    at = evidence_of(each for given, _ in parts for each in given)
    note = "of " + " and ".join(kind for _, kind in parts)
    return sheet.of_span(TITLE, FORMULA, ROUGHNESS, Interval(together, together), at, note)


def _roughness(given: list[Given], kind: str) -> float:
    most = [float(each.as_one().high or 0) for each in given]
    least = float(given[-1].as_one().low or 0)
    if kind == "waves":
        return most[0] * remaining(1 / most[1], least)
    per_unit = steps.saw_tooth(least) if kind == "steps" else curl.curl(least)
    return most[0] * per_unit
