"""A required texture depth that is not assured, as a finding."""

from __future__ import annotations

from fractions import Fraction

from specwriter.diagnostic import Finding, Grade
from specwriter.quantity import UNITS, Interval, show, show_interval_like, show_like
from specwriter.reconcile.joint import NOT_ASSURED, OUT_OF_REACH
from specwriter.reconcile.requirement import LABELS
from specwriter.reconcile.verdict import Outcome, ResultCheck

_MM = UNITS["mm"]
SOURCE_GROUND = (
    "geometry: groove width x depth / spacing; on a ground surface an upper bound, because "
    "ridges break (common practice, no source)"
)


def result_finding(area: str, outcome: Outcome, check: ResultCheck) -> Finding:
    """Conflict when it is proved that no allowed choice passes, else a caution."""
    joint = OUT_OF_REACH if outcome == "impossible" else NOT_ASSURED
    return Finding(
        slug=joint.slug,
        grade=Grade.CONFLICT if joint is OUT_OF_REACH else Grade.CAUTION,
        basis="arithmetic",
        title=joint.title,
        area=area,
        evidence=tuple(each.evidence for each in (check.target, *check.members)),
        says=" ".join([_range_says(check), *_witness_says(check), *_land_says(check)]),
        settle=_settle(check),
        sources=(
            SOURCE_GROUND if check.is_upper_bound else joint.source,
            *filter(None, [check.converted]),
        ),
    )


def _mm(value: Fraction) -> str:
    return show(value, _MM, 2)


def _span(interval: Interval) -> str:
    low, high = interval.low or Fraction(0), interval.high
    if high is None:
        return f"{_mm(low)} or more"
    return _mm(low) if _mm(low) == _mm(high) else f"{_mm(low)} to {_mm(high)}"


def _range_says(check: ResultCheck) -> str:
    bound = "at most " if check.is_upper_bound else ""
    text = f"The grooves alone give {bound}{_span(check.grooves)}"
    if check.total.high is not None:
        text += f", grooves and lands together {bound}{_span(check.total)}"
    return f"{text}; the job asks for {check.target.quantity.text}{_as_mtd(check)}."


def _as_mtd(check: ResultCheck) -> str:
    if not check.converted:
        return ""
    return f", that is {_mm(check.target.interval.low or Fraction(0))} on the scale of the patch"


def _witness_says(check: ResultCheck) -> list[str]:
    if not check.witness:
        return []
    samples = {each.variable: each for each in check.members}
    parts = [
        f"{LABELS[name]} {show_like(value, samples[name].quantity)}"
        for name, value in check.witness
        if name in samples
    ]
    reached = _mm(check.total.low or Fraction(0))
    return [f"A contractor who cuts {', '.join(parts)} obeys every dimension and gets {reached}."]


def _land_says(check: ResultCheck) -> list[str]:
    if check.land_needed is None:
        return []
    return [
        f"The lands would have to add a texture of their own of {_mm(check.land_needed)}, "
        "which the job does not state."
    ]


def _settle(check: ResultCheck) -> tuple[str, ...]:
    ways = [
        f"{each.member.label} {show_interval_like(each.to, each.member.quantity)}"
        for each in check.tightenings
    ]
    if check.land_needed is not None:
        ways.append(
            f"state the texture of the land (land_texture), {_mm(check.land_needed)} or more"
        )
    ways.append("lower the texture depth that is asked for")
    return tuple(ways)
