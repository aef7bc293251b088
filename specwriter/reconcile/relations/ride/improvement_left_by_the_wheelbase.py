"""The improvement that a machine leaves to be had where it rides over the waves."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal

from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.readers import ride
from specwriter.reconcile.readers.ride import IMPROVEMENT, ROUGHNESS
from specwriter.reconcile.relation import Function, Relation, Unassured
from specwriter.reconcile.roughness_of_parts import (
    MACHINE,
    ROUNDING,
    WAVELENGTH,
    WAVES_OF_THE_MACHINE,
    WHEELBASE,
    crossing,
    leaves_waves,
    waves_outside,
)
from specwriter.reconcile.stated_ride import most
from specwriter.trade.ride.grinder import WAVES, WHEELBASES, remaining

_OTHER = 0.05
"""Share of the roughness left that may be less, as is granted for the sum of the parts."""


def _signs(at: Mapping[str, Interval]) -> dict[str, int]:
    return {WAVELENGTH: -1, WHEELBASE: 1}


def _shape(bound: Literal["equal", "at_most"]) -> Function:
    def value(at: Mapping[str, Any]) -> Any:
        return 1 - (1 - _OTHER) * remaining(1 / float(at[WAVELENGTH]), float(at[WHEELBASE]))

    def wavelength(improvement: Any, at: Mapping[str, Any]) -> Any:
        share, base = (1 - float(improvement)) / (1 - _OTHER), float(at[WHEELBASE])
        return crossing(lambda wave: remaining(1 / wave, base) - share, *WAVES)

    def wheelbase(improvement: Any, at: Mapping[str, Any]) -> Any:
        share, wave = (1 - float(improvement)) / (1 - _OTHER), float(at[WAVELENGTH])
        return crossing(lambda base: share - remaining(1 / wave, base), *WHEELBASES)

    return Function(
        output=IMPROVEMENT,
        inputs=(WAVELENGTH, WHEELBASE),
        value=value,
        signs=_signs,
        inverses={WAVELENGTH: wavelength, WHEELBASE: wheelbase},
        scatter=ROUNDING,
        bound=bound,
    )


def _relation(judged: bool) -> Relation:
    """With ``judged`` the wheelbases that are allowed are looked at too; beside a limit of the
    index the roughness that they leave is looked at instead."""

    def applies(job: Job, area: Area) -> bool:
        alone = most(job, area, ROUGHNESS) is None
        return leaves_waves(job, area) and alone is judged

    def aside(job: Job, area: Area) -> str:
        asked = any(each.variable == IMPROVEMENT for each in ride.read(job, area))
        return waves_outside(job, area) if asked and judged else ""

    return Relation(
        slug="improvement-left-by-the-wheelbase",
        title="the wheelbase leaves more of the waves than the improvement allows",
        statement=(
            "improvement of the index is at most what a machine of this wheelbase takes of waves "
            "of this length"
        ),
        shape=_shape("at_most"),
        nominal=_shape("equal") if judged else None,
        why=(
            "A grinding machine goes up and down with waves longer than itself. Where most of the "
            "roughness is in such waves, an improvement in percent is a matter of its wheelbase, "
            "however rough the road was."
        ),
        source=MACHINE,
        validity=WAVES_OF_THE_MACHINE,
        kind="model",
        about=(IMPROVEMENT,),
        assures=_UNASSURED if judged else None,
        applies=applies,
        aside=aside,
    )


_UNASSURED = Unassured(
    slug="improvement-not-assured",
    title="the wheelbase that is allowed leaves more of the waves than the improvement allows",
)
RELATIONS = [_relation(judged) for judged in (True, False)]
