"""A friction index that the other limits of the same surface do not give.

Looks at
    A limit on the friction index beside limits on the dynamic friction at 20 km/h and on the
    MPD, in the area or in another document.

Why it matters
    The index is computed from the other two. Where both just meet their limits and the index
    does not, a surface passes its two tests and fails the number that was made from them.

Conflict
    areas.mainline.friction: {measure: F60, at_least: at least 0.40}
    areas.mainline.texture_depth: {measure: MPD, at_least: at least 0.8 mm, direction: circle}
    areas.mainline.also_stated:
      - {in: plans, friction: {measure: DFT, at_least: at least 0.40, speed: 20 km/h}}

Settled
    areas.mainline.friction: {measure: F60, at_least: at least 0.25}
    areas.mainline.texture_depth: {measure: MPD, at_least: at least 0.8 mm, direction: circle}
    areas.mainline.also_stated:
      - {in: plans, friction: {measure: DFT, at_least: at least 0.40, speed: 20 km/h}}

How to settle it
    Lower the limit on the index, or raise the limits that it is computed from.

Sources
    ASTM E1960, coefficients from memory, unverified: F60 = 0.081 + 0.732 DFT20 exp(-40 / Sp)
    international harmonisation experiment, 1995, second-hand: Sp = 14.2 + 89.7 MPD
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Job
from specwriter.model.results import Friction
from specwriter.quantity import parse
from specwriter.rules.rule import Rule, evidence, given
from specwriter.trade.friction import f60_of_dft
from specwriter.trade.friction_measure import read_measure

RULE = Rule(
    title="the friction index does not follow from its parts",
    grade=Grade.CAUTION,
    basis="published",
    needs=("friction.measure", "texture_depth.at_least", "also_stated"),
)

_SLOW = parse("19 km/h to 21 km/h").interval
_HAIR = 0.005
"""Half the last place in which an index is written."""


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose index is above that of a surface that just passes."""
    for area in job.areas.values():
        depth = given(area.texture_depth)
        limits = [given(area.friction), *(each.friction for each in area.also_stated)]
        index, slow = (_limit(limits, kind) for kind in ("friction index", "dynamic friction"))
        if depth.measure != "MPD" or index is None or slow is None:
            continue
        profile = float(given(depth.at_least).amounts[0].base) * 1000
        reached = f60_of_dft(float(given(slow.at_least).amounts[0].value), profile)
        if float(given(index.at_least).amounts[0].value) <= reached + _HAIR:
            continue
        says = (
            f"A surface with a dynamic friction of {slow.at_least} at 20 km/h and an MPD of "
            f"{depth.at_least} has an index of {reached:.2f}; {index.at_least} is asked for."
        )
        at = [*_at(index), *_at(slow), evidence(depth, "at_least", "profile depth")]
        settle = (f"an index of at most {reached:.2f}", "raise the other two limits")
        yield RULE.finding(area, says, at, settle)


def _limit(limits: list[Friction | None], kind: str) -> Friction | None:
    """The first limit of a kind; dynamic friction only at 20 km/h or where no speed is given."""
    for each in limits:
        measure = read_measure(each.measure) if each is not None else None
        if each is None or measure is None or measure.kind != kind or each.at_least is None:
            continue
        if kind == "friction index" or each.speed is None:
            return each
        if not each.speed.interval.meet(_SLOW).is_empty:
            return each
    return None


def _at(limit: Friction) -> Iterator[Evidence]:
    yield evidence(limit, "at_least", given(limit.measure))
