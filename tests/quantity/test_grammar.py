"""Written values: what is read, what it means, and what is refused at which column."""

from __future__ import annotations

from fractions import Fraction

import pytest

from specwriter.quantity import Interval, ValueFault, both_systems, parse, show_like

INCH = Fraction("0.0254")
MM = Fraction(1, 1000)

READ = [
    ("1/8 in", "length", Interval(INCH / 8, INCH / 8)),
    ("1-1/2 in", "length", Interval(INCH * 3 / 2, INCH * 3 / 2)),
    ("1 1/2 in", "length", Interval(INCH * 3 / 2, INCH * 3 / 2)),
    ("0.095 in", "length", Interval(INCH * Fraction("0.095"), INCH * Fraction("0.095"))),
    ("0.090 in to 0.130 in", "length", Interval(INCH * Fraction("0.09"), INCH * Fraction("0.13"))),
    ("1/8 to 1/4 in", "length", Interval(INCH / 8, INCH / 4)),
    ("3/16 in ± 1/16 in", "length", Interval(INCH / 8, INCH / 4)),
    ("3/16 in +/- 1/16 in", "length", Interval(INCH / 8, INCH / 4)),
    ("1/4 in +1/16 in -0 in", "length", Interval(INCH / 4, INCH * 5 / 16)),
    ("1-1/2 in +0 in -1/8 in", "length", Interval(INCH * 11 / 8, INCH * 3 / 2)),
    ("at least 0.8 mm", "length", Interval(Fraction("0.8") * MM, None)),
    ("at most 1/16 in", "length", Interval(None, INCH / 16)),
    ("1/8 in, 3/16 in", "length", Interval(INCH / 8, INCH * 3 / 16)),
    ("24 ft", "length", Interval(Fraction("7.3152"), Fraction("7.3152"))),
    ("3 yd", "length", Interval(Fraction("2.7432"), Fraction("2.7432"))),
    ("0.1 mi", "length", Interval(Fraction("160.9344"), Fraction("160.9344"))),
    ("2 cm", "length", Interval(Fraction("0.02"), Fraction("0.02"))),
    ("1.5 km", "length", Interval(Fraction(1500), Fraction(1500))),
    ("1 m/km", "roughness", Interval(MM, MM)),
    ("63.36 in/mi", "roughness", Interval(MM, MM)),
    ("825 mm/km", "roughness", Interval(Fraction("0.000825"), Fraction("0.000825"))),
    ("9 SF", "area", Interval(Fraction("0.83612736"), Fraction("0.83612736"))),
    ("1 SY", "area", Interval(Fraction("0.83612736"), Fraction("0.83612736"))),
    ("1 yd2", "area", Interval(Fraction("0.83612736"), Fraction("0.83612736"))),
    ("10 m2", "area", Interval(Fraction(10), Fraction(10))),
    ("36 km/h", "speed", Interval(Fraction(10), Fraction(10))),
    ("95 percent", "percent", Interval(Fraction("0.95"), Fraction("0.95"))),
    ("95 %", "percent", Interval(Fraction("0.95"), Fraction("0.95"))),
    ("90 degrees", "angle", Interval(Fraction(90), Fraction(90))),
    ("101 dB(A)", "sound", Interval(Fraction(101), Fraction(101))),
    ("1 gal", "volume", Interval(Fraction("0.003785411784"), Fraction("0.003785411784"))),
    ("1 m3", "volume", Interval(Fraction(1), Fraction(1))),
    ("1 lb", "mass", Interval(Fraction("0.45359237"), Fraction("0.45359237"))),
    ("24 MPa", "pressure", Interval(Fraction(24_000_000), Fraction(24_000_000))),
    ("14 days", "time", Interval(Fraction(14 * 86400), Fraction(14 * 86400))),
    ("50 °F", "temperature", Interval(Fraction("283.15"), Fraction("283.15"))),
    ("-4 °C", "temperature", Interval(Fraction("269.15"), Fraction("269.15"))),
    ("36 mm/h", "rain", Interval(Fraction(1, 100000), Fraction(1, 100000))),
    (
        "16 per ft",
        "per_length",
        Interval(Fraction(16) / Fraction("0.3048"), Fraction(16) / Fraction("0.3048")),
    ),
    ("187 per m", "per_length", Interval(Fraction(187), Fraction(187))),
    ("120+00", "station", Interval(Fraction("3657.6"), Fraction("3657.6"))),
    ("1+200", "station", Interval(Fraction(1200), Fraction(1200))),
    ("2 percent", "slope", Interval(Fraction("0.02"), Fraction("0.02"))),
    ("1:48", "slope", Interval(Fraction(1, 48), Fraction(1, 48))),
    ("1/4 in per ft", "slope", Interval(Fraction(1, 48), Fraction(1, 48))),
    ("1/4 in/ft", "slope", Interval(Fraction(1, 48), Fraction(1, 48))),
    ("0.25 in per ft", "slope", Interval(Fraction(1, 48), Fraction(1, 48))),
    ("$600", "money", Interval(Fraction(600), Fraction(600))),
    ("$9/m2", "money_per_area", Interval(Fraction(9), Fraction(9))),
    ("10", "number", Interval(Fraction(10), Fraction(10))),
]


@pytest.mark.parametrize(("text", "dimension", "interval"), READ)
def test_a_written_value_allows_exactly_what_it_says(
    text: str, dimension: str, interval: Interval
) -> None:
    quantity = parse(text, dimension)

    assert quantity.interval == interval
    assert str(quantity) == text


REFUSED = [
    ("", "length", "there is no value here", 0),
    ("0.75", "length", "'0.75' has no unit", 0),
    ("3/16 inn", "length", "'inn' is not a unit", 5),
    ("about 1/8 in", "length", "'about' gives no tolerance", 0),
    ("max 1/8 in", "length", "'max' leaves the end of the limit open", 0),
    ("½ in", "length", "'½' is not read", 0),
    ("1/0 in", "length", "a fraction cannot have 0 below the line", 0),
    ("1/8 in to 5 mph", "length", "'1/8 in to 5 mph' mixes a length and a speed", 0),
    ("19 mm", "roughness", "'19 mm' is a length", 0),
    ("1/4 in +1/16 in", "length", "the tolerance has an upper part only", 15),
    ("in", "length", "a number is missing before 'in'", 0),
]


@pytest.mark.parametrize(("text", "dimension", "says", "column"), REFUSED)
def test_a_value_that_cannot_be_read_is_refused_at_its_column(
    text: str, dimension: str, says: str, column: int
) -> None:
    with pytest.raises(ValueFault) as caught:
        parse(text, dimension)

    assert caught.value.says == says
    assert caught.value.column == column


PRINTED = [
    ("1/8 in", "1/8 in (3.2 mm)"),
    ("0.095 in ± 0.005 in", "0.095 in ± 0.005 in (2.41 mm ± 0.13 mm)"),
    ("at most 60 in/mi", "at most 60 in/mi (at most 0.95 m/km)"),
    ("24 ft", "24 ft (7.3 m)"),
    ("528 ft", "528 ft (160.9 m)"),
    ("35,000 lb", "35,000 lb (15,900 kg)"),
    ("28,160 SY", "28,160 SY (23,545 m2)"),
    ("0.8 mm", "0.8 mm (0.031 in)"),
    ("19 mm", "19 mm (0.75 in)"),
    ("53 to 57 per ft", "53 to 57 per ft (174 to 187 per m)"),
    ("95 percent", "95 percent"),
    ("$3 per SY", "$3 per SY ($3.59/m2)"),
]


@pytest.mark.parametrize(("text", "printed"), PRINTED)
def test_a_value_prints_as_written_with_the_other_system_beside_it(text: str, printed: str) -> None:
    assert both_systems(parse(text)) == printed


LIKE = [
    (INCH * 5 / 8, "3/4 in", "5/8 in"),
    (INCH * 3 / 2, "1 in", "1-1/2 in"),
    (INCH * Fraction("0.09"), "0.110 in", "0.090 in"),
    (INCH * Fraction("0.1005"), "0.105 in", "0.1005 in"),
    (Fraction(19) * MM, "20 mm", "19 mm"),
    (Fraction("15.9") * MM, "16 mm", "15.9 mm"),
    (Fraction(187), "57 per ft", "57 per ft"),
]


@pytest.mark.parametrize(("base", "sample", "printed"), LIKE)
def test_a_computed_amount_is_written_the_way_its_sample_is(
    base: Fraction, sample: str, printed: str
) -> None:
    assert show_like(base, parse(sample)) == printed


READINGS = [
    ("19 mm", Interval(Fraction("18.75") * MM, Fraction("19.25") * MM)),
    ("15.9 mm", Interval(Fraction("15.85") * MM, Fraction("15.95") * MM)),
    ("3/4 in", Interval(INCH * 3 / 4, INCH * 3 / 4)),
    ("1 in", Interval(INCH, INCH)),
    ("0.655 in", Interval(INCH * Fraction("0.6545"), INCH * Fraction("0.6555"))),
    ("0.1 in", Interval(INCH * Fraction("0.095"), INCH * Fraction("0.105"))),
    ("187 per m", Interval(Fraction("186.5"), Fraction("187.5"))),
]


@pytest.mark.parametrize(("text", "reading"), READINGS)
def test_the_rounding_of_a_written_number_is_granted_within_bounds(
    text: str, reading: Interval
) -> None:
    assert parse(text).reading == reading
