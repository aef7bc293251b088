"""Friction models: each is named, and one never continues the other."""

from __future__ import annotations

import pytest

from specwriter.trade import friction
from specwriter.trade.friction import SkidNumber, skid_number_at

KMH = 1.609344


def at_60_mph(number: SkidNumber, model: friction.SpeedModel) -> SkidNumber:
    return skid_number_at(number, 60 * KMH, model, mpd=0.4, mtd=0.52)


def test_a_number_from_one_model_is_not_passed_to_the_other() -> None:
    measured = SkidNumber(value=40, speed=40 * KMH)
    converted = at_60_mph(measured, "friction index")

    assert converted.model == "friction index"
    with pytest.raises(ValueError, match="friction index"):
        at_60_mph(converted, "exponential skid number")


def test_the_models_disagree_by_more_than_ten_at_a_low_texture() -> None:
    measured = SkidNumber(value=40, speed=40 * KMH)

    low, high = (at_60_mph(measured, model).value for model in friction_models())

    assert high - low > 10


def friction_models() -> tuple[friction.SpeedModel, friction.SpeedModel]:
    return ("friction index", "exponential skid number")


@pytest.mark.parametrize("mpd", [0.3, 0.8, 1.5])
@pytest.mark.parametrize("number", [25.0, 40.0, 55.0])
def test_the_pair_of_tyres_is_its_own_inverse(number: float, mpd: float) -> None:
    smooth = friction.number_of_other_tyre(number, 40 * KMH, mpd, "ribbed")

    assert friction.number_of_other_tyre(smooth, 40 * KMH, mpd, "smooth") == pytest.approx(number)
    assert smooth < number


def test_friction_at_60_kilometres_per_hour_is_the_index_itself() -> None:
    assert friction.speed_factor(60, 60, friction.speed_number(0.8)) == 1
