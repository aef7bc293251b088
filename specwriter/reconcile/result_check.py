"""A required texture depth held against everything the dimensions allow.

The depth is monotone in each variable while the others stay, so its extremes lie at corners of
the allowed box; a corner counts only when a complete choice of dimensions takes it.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from fractions import Fraction
from itertools import product

from specwriter.model import Area
from specwriter.quantity import Interval
from specwriter.reconcile.propagate import box_of, propagate
from specwriter.reconcile.relation import ANY, Relation
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.solve import connected, is_reached
from specwriter.reconcile.verdict import Outcome, ResultCheck, Tightening
from specwriter.trade.texture_depth import groove_share, land_texture_needed, texture_depth

GROOVE = ("groove.width", "groove.depth", "groove.spacing")
BOTTOM = "groove.width_at_bottom"
LAND = "texture_depth.land_texture"
Point = Mapping[str, Fraction]


def check_result(
    area: Area,
    target: Requirement,
    requirements: Sequence[Requirement],
    relations: Sequence[Relation],
    converted: str = "",
) -> tuple[Outcome, ResultCheck] | None:
    """The outcome for one target, or ``None`` where the dimensions leave the depth open."""
    corners = list(_corners(requirements, relations))
    if not corners or target.interval.low is None:
        return None
    ground = area.texture == "diamond_grinding"
    goal = target.interval.low
    land = next((each for each in requirements if each.variable == LAND), None)
    known = land is not None and land.interval.high is not None
    shares = [_share(each) for each in corners]
    totals = [_total(each) for each in corners]
    worst = corners[totals.index(min(totals))]
    check = ResultCheck(
        target=target,
        grooves=Interval(min(shares), max(shares)),
        total=Interval(min(totals), max(totals) if known else None),
        members=_members(requirements),
        is_upper_bound=ground,
        converted=converted,
    )
    if known and max(totals) < (target.reading.low or goal):
        outcome: Outcome = "impossible" if not converted else "not assured"
        return outcome, replace(check, witness=tuple(worst.items()))
    if min(totals) >= goal and not ground:
        return "assured", check
    if ground and (min(totals) >= goal or (max(totals) >= goal and not known)):
        return "not decided", check
    return "not assured", replace(
        check,
        witness=tuple(worst.items()),
        land_needed=None if known else _land_needed(worst, goal),
        tightenings=_tightenings(requirements, relations, worst, goal),
    )


def _members(requirements: Sequence[Requirement]) -> tuple[Requirement, ...]:
    used = (*GROOVE, "groove.per_foot", "groove.per_metre", BOTTOM, LAND)
    return tuple(each for each in requirements if each.variable in used)


def _share(point: Point) -> Fraction:
    width, depth, spacing = (point[name] for name in GROOVE)
    return groove_share(width, point.get(BOTTOM, width), depth, spacing)


def _total(point: Point) -> Fraction:
    width, depth, spacing = (point[name] for name in GROOVE)
    land = point.get(LAND, Fraction(0))
    return texture_depth(width, point.get(BOTTOM, width), depth, spacing, land)


def _land_needed(point: Point, goal: Fraction) -> Fraction | None:
    kerf = point["groove.width"] / point["groove.spacing"]
    return land_texture_needed(_share(point), kerf, goal) if kerf < 1 else None


def _corners(requirements: Sequence[Requirement], relations: Sequence[Relation]) -> Iterator[Point]:
    """Corners of the allowed box that some complete choice of dimensions takes."""
    used = connected(requirements, relations)
    box = propagate(box_of(requirements, exact=True), used)
    if box is None:
        return
    names = [*GROOVE, *(name for name in (BOTTOM, LAND) if _is_stated(name, requirements))]
    ends = [_ends(box.get(name, ANY)) for name in names]
    if any(not each for each in ends):
        return
    for values in product(*ends):
        point = dict(zip(names, values, strict=True))
        if is_reached(point, requirements, relations):
            yield point


def _is_stated(name: str, requirements: Sequence[Requirement]) -> bool:
    return any(each.variable == name for each in requirements)


def _ends(interval: Interval) -> tuple[Fraction, ...]:
    if interval.low is None or (interval.high is None and not interval.low):
        return ()
    if interval.high is None or interval.is_point:
        return (interval.low,)
    return (interval.low, interval.high) if interval.low else (interval.high, interval.high / 1000)


def _tightenings(
    requirements: Sequence[Requirement], relations: Sequence[Relation], worst: Point, goal: Fraction
) -> tuple[Tightening, ...]:
    """For each range: the end to which it alone would have to be moved."""
    found = []
    for each in requirements:
        needed = _needed(each, worst, goal)
        if needed is None:
            continue
        held = each.interval.meet(needed)
        if held.is_empty:
            held = needed
        rest = [one for one in requirements if one is not each]
        changed = [*rest, each.narrowed(held)]
        totals = [_total(point) for point in _corners(changed, relations)]
        if totals and min(totals) >= goal:
            found.append(Tightening(member=each, to=held))
    return tuple(found)


def _needed(requirement: Requirement, worst: Point, goal: Fraction) -> Interval | None:
    """What one variable must be so that the worst corner, else unchanged, reaches the goal."""
    width, depth, spacing = (worst[name] for name in GROOVE)
    bottom, land = worst.get(BOTTOM, width), worst.get(LAND, Fraction(0))
    mean = (width + bottom) / 2
    lands = (1 - width / spacing) * land
    if requirement.variable == "groove.depth" and mean:
        return Interval((goal - lands) * spacing / mean, None)
    if requirement.variable == "groove.spacing" and goal > land:
        return Interval(None, (mean * depth - width * land) / (goal - land))
    if requirement.variable == LAND and width < spacing:
        return Interval(land_texture_needed(_share(worst), width / spacing, goal), None)
    if requirement.variable == "groove.width" and bottom == width and depth > land:
        return Interval((goal - land) * spacing / (depth - land), None)
    return None
