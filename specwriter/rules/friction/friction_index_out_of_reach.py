"""A friction index that the other limits of the same surface do not give.

Looks at
    A limit on the friction index beside limits on the MPD and on the dynamic friction at 20 km/h,
    or on a skid number with its tyre and speed, in the area or in another document.

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
    harmonisation experiment, 1995, from memory, unverified: F60 of a locked wheel, within 8 numbers
    international harmonisation experiment, 1995, second-hand: Sp = 14.2 + 89.7 MPD
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from specwriter.diagnostic import Evidence, Finding, Grade
from specwriter.model import Area, Job
from specwriter.model.area import Statement
from specwriter.model.results import Friction, TextureDepth
from specwriter.quantity import parse
from specwriter.rules.rule import Rule, evidence, given
from specwriter.trade.friction import SCATTER_OF_TYRES, f60_of_dft, f60_of_skid_number
from specwriter.trade.friction_measure import read_measure

RULE = Rule(
    title="the friction index does not follow from its parts",
    grade=Grade.CAUTION,
    basis="published",
    needs=("friction.measure", "also_stated"),
)

_SLOW = parse("19 km/h to 21 km/h").interval
_KMH, _KMH_PER_MPH = 3.6, 1.609344
_HAIR = 0.005
"""Half the last place in which an index is written."""


@dataclass(frozen=True, slots=True, kw_only=True)
class _Part:
    """A limit from which an index follows, what it is called, and the index at most."""

    limit: Friction
    words: str
    index: float
    granted: float = 0.0


def check(job: Job) -> Iterator[Finding]:
    """One finding for each area whose index is above that of a surface that just passes."""
    for area in job.areas.values():
        limits = [each.friction for each in _sources(area) if each.friction is not None]
        index = next((each for each in limits if _kind(each) == "friction index"), None)
        depth = _profile(area)
        if index is None or index.at_least is None or depth is None:
            continue
        part = next((each for one in limits for each in _parts(one, depth)), None)
        asked = float(index.at_least.amounts[0].value)
        if part is None or asked <= part.index + part.granted + _HAIR:
            continue
        says = (
            f"A surface with a {part.words} and an MPD of {depth.at_least} has an index of "
            f"{part.index:.2f}; {index.at_least} is asked for."
        )
        at = [*_at(index), *_at(part.limit), evidence(depth, "at_least", "profile depth")]
        settle = (f"an index of at most {part.index:.2f}", "raise the other two limits")
        yield RULE.finding(area, says, at, settle)


def _sources(area: Area) -> tuple[Area | Statement, ...]:
    return (area, *area.also_stated)


def _profile(area: Area) -> TextureDepth | None:
    depths = (each.texture_depth for each in _sources(area))
    mpd = (each for each in depths if each is not None and each.measure == "MPD")
    return next((each for each in mpd if each.at_least is not None), None)


def _kind(limit: Friction) -> str:
    measure = read_measure(limit.measure)
    return measure.kind if measure else ""


def _parts(limit: Friction, depth: TextureDepth) -> Iterator[_Part]:
    """The index that goes with a limit; dynamic friction only at 20 km/h or at no speed."""
    if limit.at_least is None:
        return
    mpd = float(given(depth.at_least).amounts[0].base) * 1000
    number = float(limit.at_least.amounts[0].value)
    if _kind(limit) == "dynamic friction":
        if limit.speed is None or not limit.speed.interval.meet(_SLOW).is_empty:
            words = f"dynamic friction of {limit.at_least} at 20 km/h"
            yield _Part(limit=limit, words=words, index=f60_of_dft(number, mpd))
    elif _kind(limit) == "skid number":
        yield from _of_locked_wheel(limit, number, mpd)


def _of_locked_wheel(limit: Friction, number: float, mpd: float) -> Iterator[_Part]:
    named = read_measure(limit.measure)
    tyre = limit.tyre or (named.tyre if named else None)
    speed = float(limit.speed.amounts[0].base) * _KMH if limit.speed else None
    if speed is None and named is not None and named.speed == 40:
        speed = 40 * _KMH_PER_MPH
    if tyre is None or speed is None:
        return
    index, more = (
        f60_of_skid_number(each, speed, mpd, tyre) for each in (number, number + SCATTER_OF_TYRES)
    )
    words = f"skid number of {limit.at_least} with the {tyre} tyre"
    yield _Part(limit=limit, words=words, index=index, granted=more - index)


def _at(limit: Friction) -> Iterator[Evidence]:
    yield evidence(limit, "at_least", given(limit.measure))
