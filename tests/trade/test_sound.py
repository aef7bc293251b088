"""Noise at the source and elsewhere: offsets, corrections that disagree, and the tone."""

from __future__ import annotations

import pytest

from specwriter.trade import sound


def test_two_published_temperature_corrections_are_both_given_and_disagree() -> None:
    corrected = sound.at_20_degrees(100, 0).values()

    assert sorted(corrected) == pytest.approx([98.56, 99.46])


def test_at_twenty_degrees_nothing_is_corrected() -> None:
    assert set(sound.at_20_degrees(100, 20).values()) == {100}


@pytest.mark.parametrize("texture", sound.BANDS)
def test_a_band_runs_from_quiet_to_loud_and_owns_up_to_its_source(texture: str) -> None:
    band = sound.BANDS[texture]

    assert band.quietest < band.loudest
    assert "memory, unverified" in band.source


def test_a_roadside_level_carries_its_scatter() -> None:
    level, deviation = sound.roadside(100, 50)

    assert (level, deviation) == (71.5, 1.7)
