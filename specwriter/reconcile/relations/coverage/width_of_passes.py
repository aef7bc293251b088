"""The width that so many passes of a head cover, side by side."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from fractions import Fraction
from typing import Any

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.relation import Function, Linear, Relation
from specwriter.reconcile.relations.coverage import WHY
from specwriter.reconcile.requirement import sources

REACH = "coverage.reach"
PASSES, HEAD = "coverage.passes", "equipment.head_width"
OVERLAP, STRIP = "coverage.overlap", "coverage.unground_strip"


def _shape(strips: bool) -> Function:
    """The width covered: each pass after the first adds the head, less what ``lost`` says."""

    def lost(at: Mapping[str, Any]) -> Any:
        return at[OVERLAP] - at[STRIP] if strips else at[OVERLAP]

    def value(at: Mapping[str, Any]) -> Any:
        # One pass has nothing beside it, whatever is not known of overlaps and strips.
        if at[PASSES] == 1:
            return at[HEAD]
        return at[HEAD] + (at[PASSES] - 1) * (at[HEAD] - lost(at))

    def passes(reach: Any, at: Mapping[str, Any]) -> Any:
        return 1 + (reach - at[HEAD]) / (at[HEAD] - lost(at))

    def head(reach: Any, at: Mapping[str, Any]) -> Any:
        if at[PASSES] == 1:
            return reach
        return (reach + (at[PASSES] - 1) * lost(at)) / at[PASSES]

    def overlap(reach: Any, at: Mapping[str, Any]) -> Any:
        return at[HEAD] + (at[STRIP] if strips else 0) - (reach - at[HEAD]) / (at[PASSES] - 1)

    def strip(reach: Any, at: Mapping[str, Any]) -> Any:
        return (reach - at[HEAD]) / (at[PASSES] - 1) - at[HEAD] + at[OVERLAP]

    inverses = {PASSES: passes, HEAD: head, OVERLAP: overlap}
    return Function(
        output=REACH,
        inputs=(PASSES, HEAD, OVERLAP, *((STRIP,) if strips else ())),
        value=value,
        signs=_signs,
        inverses=inverses | ({STRIP: strip} if strips else {}),
    )


def _signs(at: Mapping[str, Interval]) -> dict[str, int | None]:
    passes, overlap, head = at[PASSES].low, at[OVERLAP].high, at[HEAD].low
    several = passes is not None and passes >= 1
    grows = overlap is not None and head is not None and head >= overlap
    sign = int(several)
    found: dict[str, int | None] = {PASSES: int(grows), HEAD: sign, OVERLAP: -sign}
    return found | ({STRIP: sign} if STRIP in at else {})


def _applies(strips: bool) -> Callable[[Job, Area], bool]:
    def applies(job: Job, area: Area) -> bool:
        stated = [each.coverage for each in sources(area) if each.coverage is not None]
        if not any(each.passes is not None for each in stated):
            return False
        return any(each.unground_strip is not None for each in stated) is strips

    return applies


def _relation(strips: bool) -> Relation:
    strip = " and strips between" if strips else ""
    return Relation(
        slug="width-of-passes",
        title="the passes do not cover the lane",
        statement=(
            "width covered = passes x width of the head - (passes - 1) x overlap"
            + (" + (passes - 1) x strip left unground" if strips else "")
        ),
        shape=_shape(strips),
        why=WHY,
        source="geometry of strips side by side",
        validity=f"passes of one head, with equal overlaps{strip}",
        applies=_applies(strips),
    )


def _is_stated(job: Job, area: Area) -> bool:
    return _applies(False)(job, area) or _applies(True)(job, area)


_ONE = Relation(
    slug="width-of-passes",
    title="fewer passes than one",
    statement="a lane takes one pass at least",
    shape=Linear({PASSES: 1}, Interval(Fraction(1), None)),
    why=WHY,
    source="meaning of the word",
    applies=_is_stated,
)

RELATIONS = [_relation(False), _relation(True), _ONE]
