"""Wrong arithmetic that is in circulation, and what shows that it is wrong.

Each trap is a slip that was met in print or in a public implementation: a number in the unit of
another form, a soft conversion, the wrong thickness in a sum.
"""

from __future__ import annotations

from fractions import Fraction

import pytest

from specwriter.quantity import UNITS, parse
from specwriter.trade import film, groove_geometry, hydroplaning, removal, texture_depth

F = Fraction


def test_millimetres_in_the_inch_form_of_the_film_give_a_film_below_the_texture() -> None:
    """A public implementation labels the inputs of the inch form with millimetres."""
    inputs = (0.8, 7.3, 50.0, 0.02)

    assert film.film_1979_inch(*inputs) < 0
    assert film.film_1979(*inputs) == pytest.approx(0.97, abs=0.01)
    as_inches = (0.8 * 25.4, 7.3 * 0.3048, 50 * 25.4, 0.02)
    assert set(film.outside_1979(*as_inches)) >= {"texture", "rain"}


@pytest.mark.parametrize("texture", [0.3, 0.8, 1.2])
def test_both_forms_of_the_film_agree_within_the_printed_rounding(texture: float) -> None:
    si = film.film_1979(texture, 7.3, 50, 0.02)
    inch = film.film_1979_inch(texture / 25.4, 7.3 / 0.3048, 50 / 25.4, 0.02) * 25.4

    assert si + texture == pytest.approx(inch + texture, rel=0.0013)


@pytest.mark.parametrize("pressure", [165.0, 220.0, 2.4])
def test_a_tyre_pressure_in_another_unit_is_refused(pressure: float) -> None:
    """An abstract prints 16.75 kPa beside 24 psi, which is 165 kPa; car tyres stand at 2.4 bar."""
    with pytest.raises(ValueError, match="psi"):
        hydroplaning.speed_1979(0.08, 0.03, pressure, 3, 10)


def test_nine_times_the_root_of_psi_is_knots_and_not_miles_per_hour() -> None:
    """One set of study notes prints it as mph; 36 psi gives 54.0 kt, which is 62.1 mph."""
    knots = hydroplaning.speed_nasa_knots(36)

    assert knots == pytest.approx(54.0)
    assert hydroplaning.speed_nasa_mph(36) == pytest.approx(knots * 1.852 / 1.609344, rel=0.001)
    assert hydroplaning.speed_nasa_mph(36) > 1.14 * knots


def test_the_metric_factor_of_the_flooded_speed_takes_kilopascals() -> None:
    """A course note prints 6.34 √p with p in psi."""
    kilopascals = float(UNITS["kPa"].from_base(UNITS["psi"].to_base(F(32))))
    right = hydroplaning.speed_nasa_mph(32) * 1.609344

    assert hydroplaning.speed_nasa_kmh(kilopascals) == pytest.approx(right, rel=0.002)
    assert hydroplaning.speed_nasa_kmh(32) < right / 2


def test_the_printed_speed_at_40_psi_is_not_what_the_relation_gives() -> None:
    """The worked example that prints 58.5 at 32 psi prints 65.43 at 40."""
    assert hydroplaning.speed_nasa_mph(40) == pytest.approx(65.46, abs=0.005)
    assert abs(hydroplaning.speed_nasa_mph(40) - 65.43) > 0.02


def test_segment_and_spacer_do_not_make_the_spacing() -> None:
    """Everyday talk adds the cutting segment to the spacer: 8.5 percent too few grooves."""
    segment, core, spacer = F("0.125"), F("0.105"), F("0.110")
    right = groove_geometry.pitch_of_blades(core, spacer)
    slip = groove_geometry.pitch_of_blades(segment, spacer)

    assert right == segment + groove_geometry.land_of_blades(segment, core, spacer)
    assert float(12 / slip) == pytest.approx(51.1, abs=0.05)
    assert float(12 / right) == pytest.approx(55.8, abs=0.05)


def test_a_clear_gap_read_as_a_spacing_overstates_the_texture() -> None:
    """A press record of 2007 gives 3 cm between grooves of 6 mm."""
    gap, width = F(32), F(6)
    right = texture_depth.groove_share(width, width, F(6), groove_geometry.spacing(width, gap))
    slip = texture_depth.groove_share(width, width, F(6), F(30))

    assert float(right) == pytest.approx(0.947, abs=0.001)
    assert float(slip) == pytest.approx(1.2)


def test_a_residue_of_twenty_cubic_feet_is_the_true_number_of_cubic_yards() -> None:
    """A trade article (memory, unverified) prints 20 cubic feet and 3,000 lb for 50,000 ft²."""
    volume = removal.volume(F(50000), F(1, 8) / 12)

    assert float(volume) == pytest.approx(520.8, abs=0.1)
    assert float(volume / 27) == pytest.approx(19.3, abs=0.05)
    assert removal.mass(volume, F(150)) == 78125


SOFT = [
    ("12 ft", "3.6 m", "Ohio CMS 257, 2010"),
    ("0.10 in", "3 mm", "Ohio CMS 511.20, 2010"),
    ("0.15 in", "4 mm", "Ohio CMS 511.20, 2010"),
    ("3/8 in", "10 mm", "Ohio CMS 511.20, 2010"),
    ("778 ft", "240 m", "Iowa 2317, 2008"),
    ("250 ft", "75 m", "Iowa Construction Manual 12.41, 2008"),
    ("1/16 in", "2 mm", "UFC 3-260-02, 2001"),
    ("8 in", "220 mm", "Connecticut item 0406314A, undated"),
]


@pytest.mark.parametrize(("written", "printed", "source"), SOFT)
def test_a_soft_conversion_is_not_the_same_value(written: str, printed: str, source: str) -> None:
    exact, soft = (parse(text).amounts[0].base for text in (written, printed))

    assert abs(soft / exact - 1) > F("0.01"), source


def test_a_depth_can_pass_the_metric_band_and_fail_the_inch_band_of_one_document() -> None:
    """UFC 3-260-02, 2001: 6 mm ± 2 mm beside 1/4 in ± 1/16 in."""
    measured = parse("4.2 mm").amounts[0].base

    assert measured in parse("6 mm ± 2 mm").interval
    assert measured not in parse("1/4 in ± 1/16 in").interval


def test_the_constant_of_the_kinematic_wave_is_36_and_its_rounding_is_harmless() -> None:
    """Manning's equation for a sheet, from first principles in SI, against the printed 36.1."""
    n, path, rain, slope = 0.03, 7.3, 50.0, 0.02
    flow = rain / 3.6e6 * path
    depth = (n * flow / slope**0.5) ** 0.6 * 1000

    assert film.film_1998(0, path, rain, slope, n) == pytest.approx(depth, rel=0.002)
