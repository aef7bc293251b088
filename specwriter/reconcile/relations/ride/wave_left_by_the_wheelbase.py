"""Long waves that the machine rides over and leaves."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.relation import Function, Relation
from specwriter.reconcile.roughness_of_parts import (
    EXISTING,
    LONG_WAVES,
    MACHINE,
    ROUNDING,
    WAVELENGTH,
    WAVES_OF_THE_MACHINE,
    WHEELBASE,
    crossing,
    has_waves,
    waves_outside,
)
from specwriter.trade.ride.grinder import WAVES, WHEELBASES, remaining


def _value(at: Mapping[str, Any]) -> Any:
    return float(at[EXISTING]) * remaining(1 / float(at[WAVELENGTH]), float(at[WHEELBASE]))


def _signs(at: Mapping[str, Interval]) -> dict[str, int]:
    return {EXISTING: 1, WAVELENGTH: 1, WHEELBASE: -1}


def _existing(left: Any, at: Mapping[str, Any]) -> Any:
    return float(left) / remaining(1 / float(at[WAVELENGTH]), float(at[WHEELBASE]))


def _wavelength(left: Any, at: Mapping[str, Any]) -> Any:
    share, base = float(left) / float(at[EXISTING]), float(at[WHEELBASE])
    return crossing(lambda wave: remaining(1 / wave, base) - share, *WAVES)


def _wheelbase(left: Any, at: Mapping[str, Any]) -> Any:
    share, wave = float(left) / float(at[EXISTING]), float(at[WAVELENGTH])
    return crossing(lambda base: share - remaining(1 / wave, base), *WHEELBASES)


def _shape(bound: Any) -> Function:
    return Function(
        output=LONG_WAVES,
        inputs=(EXISTING, WAVELENGTH, WHEELBASE),
        value=_value,
        signs=_signs,
        inverses={EXISTING: _existing, WAVELENGTH: _wavelength, WHEELBASE: _wheelbase},
        scatter=ROUNDING,
        bound=bound,
    )


def _aside(job: Job, area: Area) -> str:
    return waves_outside(job, area) if job.conditions.existing_mri is not None else ""


RELATION = Relation(
    slug="wave-left-by-the-wheelbase",
    title="the wheelbase leaves too much of the existing waves",
    statement=(
        "roughness of the long waves left = existing MRI x the share that a machine of this "
        "wheelbase leaves of waves of this length"
    ),
    shape=_shape("at_least"),
    nominal=_shape("equal"),
    why=(
        "A grinding machine rides on the surface that it cuts. It goes up and down "
        "with waves longer than itself and leaves them in the road, however often it "
        "comes back."
    ),
    source=MACHINE,
    validity=WAVES_OF_THE_MACHINE,
    kind="model",
    applies=has_waves,
    aside=_aside,
)
